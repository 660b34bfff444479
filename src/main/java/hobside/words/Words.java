package hobside.words;

import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * All sentences of one language, by key. A sentence has gaps, such as {@code {food}}, that are filled when it is said;
 * {@code {Food}} is the same with a capital letter.
 */
public final class Words {

    private static final Pattern GAP = Pattern.compile("\\{([A-Za-z][A-Za-z0-9-]*)\\}");

    private final Language language;
    private final Map<String, String> sentences;

    private Words(Language language, Map<String, String> sentences) {
        this.language = language;
        this.sentences = Map.copyOf(sentences);
    }

    /** The words of the language with this code; rules of the language stand among them. */
    public static Words of(String code, Map<String, String> sentences) {
        return new Words(Language.of(code, sentences), sentences);
    }

    public Language language() {
        return language;
    }

    /** Every key, sorted. */
    public Set<String> keys() {
        return new TreeSet<>(sentences.keySet());
    }

    /** The sentence of a key as it stands in the file, if it is there. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(sentences.get(key));
    }

    /** The sentence of a key. A key that no file has is a fault of the program. */
    public String say(String key) {
        return say(key, Map.of());
    }

    /** The same with its gaps filled. Throws when the key is not known or a gap stays open. */
    public String say(String key, Map<String, String> gaps) {
        String sentence = find(key).orElseThrow(() -> new IllegalArgumentException("no words for \"" + key + "\" in " + language.code()));
        return filled(sentence, gap -> Optional.of(Optional.ofNullable(gaps.get(gap))
                .orElseThrow(() -> new IllegalArgumentException("nothing to fill {" + gap + "} of \"" + key + "\" with"))));
    }

    /** The form of a sentence that goes with a number: {@code key.one}, {@code key.other} ... */
    public String count(String key, String number, Map<String, String> gaps) {
        String form = key + "." + language.form(number);
        return say(sentences.containsKey(form) ? form : key + ".other", gaps);
    }

    /** A text with those gaps filled that are known; the others stay as they were typed. */
    public String filled(String text, Function<String, Optional<String>> known) {
        Matcher matcher = GAP.matcher(text);
        String done = matcher.replaceAll(found -> Matcher.quoteReplacement(one(found.group(1), known).orElse(found.group())));
        return language.contracted(done);
    }

    private static Optional<String> one(String gap, Function<String, Optional<String>> known) {
        if (!Character.isUpperCase(gap.charAt(0))) {
            return known.apply(gap);
        }
        return known.apply(Character.toLowerCase(gap.charAt(0)) + gap.substring(1)).map(Words::capital);
    }

    /** The names of the gaps in a text, sorted, without regard to capitals. */
    public static Set<String> gaps(String text) {
        Set<String> gaps = new TreeSet<>();
        Matcher matcher = GAP.matcher(text);
        while (matcher.find()) {
            gaps.add(Character.toLowerCase(matcher.group(1).charAt(0)) + matcher.group(1).substring(1));
        }
        return gaps;
    }

    /** With a capital letter in front. */
    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
