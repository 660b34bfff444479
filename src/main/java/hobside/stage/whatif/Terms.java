package hobside.stage.whatif;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The words of a question, brought to what they have in common: small letters, no accents, the usual endings off. The same endings
 * come off in every language: a stem need not be a word, it only has to be the same stem.
 */
final class Terms {

    /** Longer input than this is not a question but an accident. */
    private static final int MOST = 400;

    private static final int SHORTEST_STEM = 4;

    private static final List<String> ENDINGS = List.of("ing", "ed", "er", "es", "s");

    private Terms() {}

    /** The stems in their order. */
    static List<String> of(String text) {
        List<String> stems = new ArrayList<>();
        for (String word : words(text)) {
            stems.add(stem(word));
        }
        return stems;
    }

    /** The bare words in their order. */
    static List<String> words(String text) {
        String cut = text.length() > MOST ? text.substring(0, MOST) : text;
        String plain = Normalizer.normalize(cut, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        for (int i = 0; i <= plain.length(); i++) {
            char each = i < plain.length() ? plain.charAt(i) : ' ';
            if (Character.isLetterOrDigit(each)) {
                word.append(each);
            } else if (Character.getType(each) != Character.NON_SPACING_MARK && each != '\'' && each != '’' && word.length() > 0) {
                words.add(word.toString());
                word.setLength(0);
            }
        }
        return words;
    }

    static String stem(String word) {
        String stem = word;
        for (String ending : ENDINGS) {
            if (stem.endsWith(ending) && stem.length() - ending.length() >= SHORTEST_STEM - 1 && !stem.endsWith("ss")) {
                stem = stem.substring(0, stem.length() - ending.length());
                break;
            }
        }
        boolean vowel = !stem.isEmpty() && "aeoy".indexOf(stem.charAt(stem.length() - 1)) >= 0;
        return vowel && stem.length() > SHORTEST_STEM ? stem.substring(0, stem.length() - 1) : stem;
    }
}
