package hobside.talk;

import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The talk as plain text, as wide as a sheet, to be read from a sheet at the hob. */
public final class TextScript {

    /** The width of a sheet. */
    public static final int SHEET = 80;

    private static final int LEAST = 50;
    private static final int INDENT = 11;

    private final int width;
    private final Words words;
    private final List<String> lines = new ArrayList<>();

    private TextScript(int width, Words words) {
        this.width = width;
        this.words = words;
    }

    public static String of(Talk talk, Words words) {
        return of(talk, words, SHEET);
    }

    /** The same for a screen of another width, 50 columns at the least. */
    public static String of(Talk talk, Words words, int width) {
        TextScript script = new TextScript(Math.max(LEAST, width), words);
        script.write(talk);
        return String.join("\n", script.lines) + "\n";
    }

    private void write(Talk talk) {
        lines.addAll(Wrapped.lines(talk.title().toUpperCase(Locale.ROOT), width));
        lines.add("=".repeat(Math.min(width, talk.title().length())));
        talk.about().forEach(words -> lines.addAll(Wrapped.lines(words, width)));
        talk.sections().forEach(this::section);
    }

    private void section(Talk.Section section) {
        lines.add("");
        lines.add("");
        lines.addAll(Wrapped.lines(section.heading().toUpperCase(Locale.ROOT), width));
        lines.add("-".repeat(width));
        boolean list = section.part() == Talk.Part.BENCH;
        for (Cue cue : section.cues()) {
            if (list && cue.kind() != Cue.Kind.TAKE_CARE) {
                hanging("  [ ] ", cue.words());
            } else {
                lines.add("");
                hanging(label(cue.kind()), cue.words());
            }
        }
        section.board().ifPresent(this::board);
    }

    private String label(Cue.Kind kind) {
        String word = words.say("talk.cue." + kind.word()).toUpperCase(Locale.ROOT);
        return word + " ".repeat(Math.max(1, INDENT - word.length()));
    }

    private void hanging(String label, String words) {
        String front = label;
        for (String line : Wrapped.lines(words, width - label.length())) {
            lines.add(front + line);
            front = " ".repeat(label.length());
        }
    }

    private void board(Talk.Board board) {
        lines.add("");
        String head = "  +-- " + words.say("talk.board.title", Map.of("caption", board.caption().toLowerCase(Locale.ROOT))) + " ";
        lines.add(head + "-".repeat(width - 3 - head.length()) + "+");
        for (Talk.Board.Line line : board.lines()) {
            String row = "  |  " + padded(line.label(), width < SHEET - 4 ? 16 : 26) + padded(line.now(), 24) + line.moved();
            lines.add(padded(row.length() > width - 3 ? row.substring(0, width - 3) : row, width - 3) + "|");
        }
        lines.add("  +" + "-".repeat(width - 6) + "+");
    }

    private static String padded(String text, int width) {
        return text.length() >= width ? text : text + " ".repeat(width - text.length());
    }
}
