package hobside.talk.check;

import java.util.ArrayList;
import java.util.List;

/**
 * One sentence of the words under check, in small letters, with its place in them.
 *
 * @param from where it begins in the whole
 * @param small the sentence in small letters, letter for letter as long as the original
 * @param before the sentence before it, in small letters; empty for the first
 */
record Sentence(int from, String small, String before) {

    /** Words without a stop are cut into pieces, so that the time to check them grows no faster than they do. */
    private static final int LONGEST = 500;

    static List<Sentence> of(String words) {
        String small = small(words);
        List<Sentence> sentences = new ArrayList<>();
        String before = "";
        int from = 0;
        for (int i = 0; i < small.length(); i++) {
            if (ends(small, i) || i - from > LONGEST && small.charAt(i) == ' ' || i - from > 2 * LONGEST) {
                String sentence = small.substring(from, i + 1);
                sentences.add(new Sentence(from, sentence, before));
                before = sentence;
                from = i + 1;
            }
        }
        return sentences;
    }

    /** Character by character, so that places stay the same; curly apostrophes, dashes and hard spaces become plain ones. */
    private static String small(String words) {
        StringBuilder small = new StringBuilder(words.length());
        for (int i = 0; i < words.length(); i++) {
            small.append(switch (words.charAt(i)) {
                case '’', '‘' -> '\'';
                case '\u00A0', '\u202F', '\n', '\t' -> ' ';
                case '‑', '–' -> '-';
                default -> Character.toLowerCase(words.charAt(i));
            });
        }
        return small.toString();
    }

    private static boolean ends(String small, int at) {
        boolean stop = ".!?".indexOf(small.charAt(at)) >= 0;
        return at == small.length() - 1 || stop && small.charAt(at + 1) == ' ';
    }

    boolean has(String word) {
        return small.contains(word);
    }

    /** What stands in the same clause before a place: since the last comma, colon, semicolon or "but". */
    String clauseBefore(int at) {
        int from = Math.max(0, at - 60);
        for (int i = at - 1; i > from; i--) {
            if (",;:".indexOf(small.charAt(i)) >= 0 || small.startsWith(" but ", i)) {
                return small.substring(i, at);
            }
        }
        return small.substring(from, at);
    }
}
