package hobside.screen.letters;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The large letters, one to five dots wide and five high. Capitals only: with five dots they are read more surely than small letters.
 * Above the five rows stands one for accents; a letter that bears one is four dots high, so that the two stay apart.
 */
final class Font {

    /** Rows of dots of a letter without an accent. */
    static final int TALL = 5;
    /** Rows of dots with that of the accents above. */
    static final int ALL = TALL + 1;

    /** Sign and shape in turn; rows of dots from the top. */
    private static final String[] LETTERS = {
        "A", ".#.|#.#|###|#.#|#.#", "B", "##.|#.#|##.|#.#|##.", "C", ".##|#..|#..|#..|.##", "D", "##.|#.#|#.#|#.#|##.",
        "E", "###|#..|##.|#..|###", "F", "###|#..|##.|#..|#..", "G", ".###|#...|#.##|#..#|.###", "H", "#.#|#.#|###|#.#|#.#",
        "I", "#|#|#|#|#", "J", "..#|..#|..#|#.#|.#.", "K", "#..#|#.#.|##..|#.#.|#..#", "L", "#..|#..|#..|#..|###",
        "M", "#...#|##.##|#.#.#|#...#|#...#", "N", "#..#|##.#|#.##|#..#|#..#", "O", ".##.|#..#|#..#|#..#|.##.", "P", "##.|#.#|##.|#..|#..",
        "Q", ".##.|#..#|#..#|#.##|.###", "R", "##.|#.#|##.|#.#|#.#", "S", ".##|#..|.#.|..#|##.", "T", "###|.#.|.#.|.#.|.#.",
        "U", "#..#|#..#|#..#|#..#|.##.", "V", "#.#|#.#|#.#|#.#|.#.", "W", "#...#|#...#|#.#.#|##.##|#...#", "X", "#.#|#.#|.#.|#.#|#.#",
        "Y", "#.#|#.#|.#.|.#.|.#.", "Z", "###|..#|.#.|#..|###",
        "0", "###|#.#|#.#|#.#|###", "1", "##.|.#.|.#.|.#.|###", "2", "###|..#|###|#..|###", "3", "###|..#|.##|..#|###",
        "4", "#.#|#.#|###|..#|..#", "5", "###|#..|###|..#|###", "6", "###|#..|###|#.#|###", "7", "###|..#|..#|.#.|.#.",
        "8", "###|#.#|###|#.#|###", "9", "###|#.#|###|..#|###",
        ".", ".|.|.|.|#", ",", "..|..|..|.#|#.", ":", ".|#|.|#|.", ";", "..|.#|..|.#|#.", "!", "#|#|#|.|#", "?", "##.|..#|.#.|...|.#.",
        "'", "#|#|.|.|.", "\"", "#.#|#.#|...|...|...", "-", "..|..|##|..|..", "–", "...|...|###|...|...", "—", "....|....|####|....|....",
        "%", "#...#|...#.|..#..|.#...|#...#", "/", "..#|..#|.#.|#..|#..", "(", ".#|#.|#.|#.|.#", ")", "#.|.#|.#|.#|#.",
        "¿", ".#.|...|.#.|#..|.##", "¡", "#|.|#|#|#", "+", "...|.#.|###|.#.|...", "=", "...|###|...|###|...", "×", "...|#.#|.#.|#.#|...",
        "°", "##|##|..|..|..", "&", ".#..|#.#.|.#.#|#.#.|.#.#", "$", ".####|#.#..|.###.|..#.#|####.", "£", ".##|#..|##.|#..|###",
        "€", ".##|#..|##.|#..|.##", " ", "..|..|..|..|.."
    };

    /** Letters with an accent: the accent, a row left free, and a letter of four rows. */
    private static final String[] ACCENTED = {
        "Á", "..#|...|.#.|#.#|###|#.#", "É", "..#|...|###|##.|#..|###", "Í", ".#|..|#.|#.|#.|#.", "Ó", "..#.|....|.##.|#..#|#..#|.##.",
        "Ú", "..#.|....|#..#|#..#|#..#|.##.", "Ü", "#..#|....|#..#|#..#|#..#|.##.", "Ñ", ".###|....|#..#|##.#|#.##|#..#",
        "Ä", "#.#|...|.#.|#.#|###|#.#", "Ö", "#..#|....|.##.|#..#|#..#|.##.", "À", "#..|...|.#.|#.#|###|#.#", "È", "#..|...|###|##.|#..|###",
        "Ê", ".#.|...|###|##.|#..|###"
    };

    /** What is written in other signs, sign and words in turn. */
    private static final String[] WRITTEN_AS = {
        "½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅓", " 1/3", "⅔", " 2/3", "’", "'", "‘", "'", "“", "\"", "”", "\"", "„", "\"", "«", "\"", "»", "\"",
        "−", "–", "…", "...", "‑", "-", "\u00a0", " ", "Ç", "C"
    };

    private static final Map<Character, String[]> SHAPES = shapes();

    private Font() {}

    private static Map<Character, String[]> shapes() {
        Map<Character, String[]> shapes = new HashMap<>();
        for (int i = 0; i < LETTERS.length; i += 2) {
            String blank = ".".repeat(LETTERS[i + 1].indexOf('|'));
            shapes.put(LETTERS[i].charAt(0), (blank + "|" + LETTERS[i + 1]).split("\\|"));
        }
        for (int i = 0; i < ACCENTED.length; i += 2) {
            shapes.put(ACCENTED[i].charAt(0), ACCENTED[i + 1].split("\\|"));
        }
        return shapes;
    }

    /** The text in the signs that the letters are kept under. */
    static String spelt(String text) {
        String spelt = Normalizer.normalize(text, Normalizer.Form.NFC).toUpperCase(Locale.ROOT);
        for (int i = 0; i < WRITTEN_AS.length; i += 2) {
            spelt = spelt.replace(WRITTEN_AS[i], WRITTEN_AS[i + 1]);
        }
        return spelt.strip();
    }

    /** The rows of dots of a sign, that of the accents first; empty when there is no such letter. */
    static Optional<String[]> shape(char sign) {
        return Optional.ofNullable(SHAPES.get(sign));
    }
}
