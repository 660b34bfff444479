package hobside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/** Text laid out in columns: shortened with an ellipsis, or wrapped at spaces. Widths are display columns. */
public final class Lines {

    private Lines() {}

    /** The text, cut to a width; a cut text ends in an ellipsis. */
    public static String fit(String text, int width) {
        if (TextWidth.of(text) <= width) {
            return text;
        }
        StringBuilder cut = new StringBuilder();
        int wide = 0;
        for (int i = 0; i < text.length(); i++) {
            int more = TextWidth.of(String.valueOf(text.charAt(i)));
            if (wide + more > width - 1) {
                break;
            }
            wide += more;
            cut.append(text.charAt(i));
        }
        return width < 1 ? "" : cut.toString().stripTrailing() + Glyphs.ELLIPSIS;
    }

    /** The text in lines no wider than a width; a word that is wider is cut. */
    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        StringTokenizer words = new StringTokenizer(text, " \t\n\u000b\f\r");
        while (words.hasMoreTokens()) {
            String word = words.nextToken();
            if (line.length() > 0 && TextWidth.of(line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(fit(word, width));
        }
        lines.add(line.toString());
        return lines;
    }

    /** The first row to show of a list so that the cursor stays in sight, a little before the end where there is more to come. */
    public static int firstShown(int cursor, int size, int rows) {
        int first = Math.max(0, cursor - rows + 2);
        return Math.max(0, Math.min(first, size - rows));
    }
}
