package hobside.talk.plain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The usual forms of a word, good enough to find it again: utilise, utilises, utilised, utilising. Forms that nobody says do no
 * harm, since nobody says them. Of several words the first or the last takes the ending.
 */
final class Inflections {

    private Inflections() {}

    static Set<List<String>> of(String phrase, Language language) {
        List<String> words = List.of(phrase.toLowerCase(Locale.ROOT).replace('’', '\'').strip().split("\\s+"));
        Set<List<String>> forms = new LinkedHashSet<>();
        for (int at : new int[] {0, words.size() - 1}) {
            for (String form : forms(words.get(at), language)) {
                List<String> changed = new ArrayList<>(words);
                changed.set(at, form);
                forms.add(List.copyOf(changed));
            }
        }
        return forms;
    }

    private static List<String> forms(String word, Language language) {
        return switch (language) {
            case ENGLISH -> english(word);
            case SPANISH -> spanish(word);
        };
    }

    /** Both spellings of words in -ise: utilise, utilize. */
    private static List<String> english(String word) {
        if (!word.endsWith("ise")) {
            return oneSpelling(word);
        }
        List<String> forms = new ArrayList<>(oneSpelling(word));
        forms.addAll(oneSpelling(word.substring(0, word.length() - 3) + "ize"));
        return forms;
    }

    private static List<String> oneSpelling(String word) {
        String last = word.substring(word.length() - 1);
        if (word.endsWith("e")) {
            String stem = word.substring(0, word.length() - 1);
            return List.of(word, word + "s", word + "d", stem + "ing");
        }
        if (word.matches(".*[^aeiou]y")) {
            String stem = word.substring(0, word.length() - 1);
            return List.of(word, stem + "ies", stem + "ied", word + "ing");
        }
        if (word.matches(".*(s|x|z|ch|sh)")) {
            return List.of(word, word + "es", word + "ed", word + "ing");
        }
        return List.of(word, word + "s", word + "ed", word + "ing", word + last + "ed", word + last + "ing", word + "'s");
    }

    private static List<String> spanish(String word) {
        String stem = word.substring(0, Math.max(0, word.length() - 2));
        if (word.endsWith("ar")) {
            return with(word, stem, "a", "as", "an", "amos", "o", "e", "en", "emos", "ó", "ado", "ada", "ados", "adas", "ando", "arlo", "arla", "aremos");
        }
        if (word.endsWith("er") || word.endsWith("ir")) {
            return with(word, stem, "e", "es", "en", "emos", "imos", "o", "a", "an", "amos", "ió", "ido", "ida", "idos", "idas", "iendo");
        }
        if (word.endsWith("o") || word.endsWith("a")) {
            return with(word, word.substring(0, word.length() - 1), "o", "a", "os", "as");
        }
        return word.endsWith("ón") ? List.of(word, stem + "ones") : List.of(word, word + "s", word + "es");
    }

    private static List<String> with(String word, String stem, String... endings) {
        List<String> forms = new ArrayList<>(List.of(word));
        for (String ending : endings) {
            forms.add(stem + ending);
        }
        return forms;
    }
}
