package hobside.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The talk as plain text, 80 columns wide, to be read from a sheet at the hob. */
public final class TextScript {

    private static final int WIDTH = 80;
    private static final int INDENT = 11;

    private TextScript() {}

    public static String of(Talk talk) {
        List<String> lines = new ArrayList<>();
        lines.add(talk.title().toUpperCase(Locale.ROOT));
        lines.add("=".repeat(Math.min(WIDTH, talk.title().length())));
        talk.about().forEach(words -> lines.addAll(Wrapped.lines(words, WIDTH)));
        talk.sections().forEach(section -> section(section, lines));
        return String.join("\n", lines) + "\n";
    }

    private static void section(Talk.Section section, List<String> lines) {
        lines.add("");
        lines.add("");
        lines.addAll(Wrapped.lines(section.heading().toUpperCase(Locale.ROOT), WIDTH));
        lines.add("-".repeat(WIDTH));
        boolean list = section.heading().equals("What is needed");
        for (Cue cue : section.cues()) {
            if (list && cue.kind() != Cue.Kind.TAKE_CARE) {
                hanging("  [ ] ", cue.words(), lines);
            } else {
                lines.add("");
                hanging(label(cue.kind()), cue.words(), lines);
            }
        }
        section.board().ifPresent(board -> board(board, lines));
    }

    private static String label(Cue.Kind kind) {
        String word = kind.word().toUpperCase(Locale.ROOT);
        return word + " ".repeat(INDENT - word.length());
    }

    private static void hanging(String label, String words, List<String> lines) {
        String front = label;
        for (String line : Wrapped.lines(words, WIDTH - label.length())) {
            lines.add(front + line);
            front = " ".repeat(label.length());
        }
    }

    private static void board(Talk.Board board, List<String> lines) {
        lines.add("");
        String head = "  +-- The board: " + board.caption().toLowerCase(Locale.ROOT) + ", a serve ";
        lines.add(head + "-".repeat(WIDTH - 3 - head.length()) + "+");
        for (Talk.Board.Line line : board.lines()) {
            String row = "  |  " + padded(line.label(), 26) + padded(line.now(), 24) + line.moved();
            lines.add(padded(row, WIDTH - 3) + "|");
        }
        lines.add("  +" + "-".repeat(WIDTH - 6) + "+");
    }

    private static String padded(String text, int width) {
        return text.length() >= width ? text : text + " ".repeat(width - text.length());
    }
}
