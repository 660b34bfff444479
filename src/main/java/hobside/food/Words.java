package hobside.food;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Splits text into words for the search: small letters and digits, accents dropped. */
final class Words {

    /** Longer input than this is not a search but an accident. */
    private static final int MOST = 200;

    private Words() {}

    static List<String> of(String text) {
        String plain = folded(text.length() > MOST ? text.substring(0, MOST) : text);
        List<String> words = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= plain.length(); i++) {
            boolean inside = i < plain.length() && Character.isLetterOrDigit(plain.charAt(i));
            if (inside && start < 0) {
                start = i;
            } else if (!inside && start >= 0) {
                words.add(plain.substring(start, i));
                start = -1;
            }
        }
        return words;
    }

    /** The normaliser is asked only when there is an accent: loading it costs more than all the rest. */
    private static String folded(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        boolean ascii = text.chars().allMatch(each -> each < 0x80);
        String parted = ascii ? text : Normalizer.normalize(text, Normalizer.Form.NFD);
        for (int i = 0; i < parted.length(); i++) {
            char each = parted.charAt(i);
            if (Character.getType(each) != Character.NON_SPACING_MARK && each != '\'' && each != '’') {
                plain.append(Character.toLowerCase(each));
            }
        }
        return ascii ? plain.toString() : plain.toString().replace("ß", "ss").replace("ø", "o").replace("œ", "oe").replace("æ", "ae");
    }
}
