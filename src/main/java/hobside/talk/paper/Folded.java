package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;

/** Text folded into lines at spaces; a word that is longer than a line is cut. */
final class Folded {

    private Folded() {}

    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
            while (line.length() > width) {
                lines.add(line.substring(0, width));
                line.delete(0, width);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    static String padded(String text, int width) {
        return text.length() >= width ? text : text + " ".repeat(width - text.length());
    }

    static String right(String text, int width) {
        return text.length() >= width ? text : " ".repeat(width - text.length()) + text;
    }
}
