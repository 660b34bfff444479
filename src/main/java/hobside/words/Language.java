package hobside.words;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a language writes numbers and chooses plurals, as its own file of words says: {@code language.name}, {@code
 * language.decimal}, {@code language.thousands}, {@code language.plural.one} and so on, {@code language.contractions}.
 * Its code is the one of two letters in ISO 639-1, such as {@code en} or {@code es}.
 */
public final class Language {

    private static final String PLURAL = "language.plural.";
    private static final String OTHER = "other";

    private final String code;
    private final String name;
    private final String decimal;
    private final String thousands;
    private final Map<String, PluralRule> plurals = new LinkedHashMap<>();
    private final Map<String, String> contractions = new LinkedHashMap<>();

    private Language(String code, Map<String, String> sentences) {
        this.code = code;
        this.name = sentences.getOrDefault("language.name", code);
        this.decimal = sentences.getOrDefault("language.decimal", ".");
        this.thousands = sentences.getOrDefault("language.thousands", ",");
        sentences.forEach((key, rule) -> {
            if (key.startsWith(PLURAL)) {
                plurals.put(key.substring(PLURAL.length()), PluralRule.parse(rule));
            }
        });
        for (String pair : sentences.getOrDefault("language.contractions", "").split(";")) {
            int arrow = pair.indexOf('>');
            if (arrow > 0) {
                contractions.put(" " + pair.substring(0, arrow).strip() + " ", " " + pair.substring(arrow + 1).strip() + " ");
            }
        }
    }

    static Language of(String code, Map<String, String> sentences) {
        return new Language(code, sentences);
    }

    public String code() {
        return code;
    }

    /** The language's name for itself, such as "español". */
    public String name() {
        return name;
    }

    /** The form a number takes: {@code one}, {@code few}, {@code many} ... or {@code other}. */
    String form(String number) {
        return plurals.entrySet().stream().filter(entry -> entry.getValue().holds(number)).map(Map.Entry::getKey).findFirst().orElse(OTHER);
    }

    /** A number written in plain digits with a point, such as 2890 or 7.4, as this language writes it: "2,890", "7,4". */
    public String number(String plain) {
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        StringBuilder text = new StringBuilder(whole);
        int first = whole.startsWith("-") || whole.startsWith("−") ? 1 : 0;
        for (int at = whole.length() - 3; at > first; at -= 3) {
            text.insert(at, thousands);
        }
        return point < 0 ? text.toString() : text + decimal + plain.substring(point + 1);
    }

    /** Words that grow together where they meet, such as "de el" into "del". */
    String contracted(String text) {
        String done = text;
        for (Map.Entry<String, String> pair : contractions.entrySet()) {
            done = done.replace(pair.getKey(), pair.getValue());
        }
        return done;
    }
}
