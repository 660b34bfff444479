package hobside.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The talk as Markdown, for a printer or a web page. Signs that Markdown reads as marks are escaped. */
public final class MarkdownScript {

    private MarkdownScript() {}

    public static String of(Talk talk) {
        List<String> lines = new ArrayList<>();
        lines.add("# " + escaped(talk.title()));
        lines.add("");
        talk.about().forEach(words -> lines.addAll(List.of(escaped(words), "")));
        talk.sections().forEach(section -> section(section, lines));
        return String.join("\n", lines) + "\n";
    }

    private static void section(Talk.Section section, List<String> lines) {
        lines.add("## " + escaped(section.heading()));
        lines.add("");
        boolean list = section.heading().equals("What is needed");
        for (Cue cue : section.cues()) {
            if (list && cue.kind() != Cue.Kind.TAKE_CARE) {
                lines.add("- [ ] " + escaped(cue.words()));
            } else {
                lines.add("");
                lines.add("**" + cue.kind().word() + ":** " + escaped(cue.words()));
            }
        }
        lines.add("");
        section.board().ifPresent(board -> board(board, lines));
    }

    private static void board(Talk.Board board, List<String> lines) {
        lines.add("| The board: " + escaped(board.caption()).toLowerCase(Locale.ROOT) + ", a serve | now | since the start |");
        lines.add("|---|---:|---:|");
        for (Talk.Board.Line line : board.lines()) {
            lines.add("| " + escaped(line.label()) + " | " + escaped(line.now()) + " | " + escaped(line.moved()) + " |");
        }
        lines.add("");
    }

    private static String escaped(String text) {
        return text.replaceAll("([\\\\`*_{}\\[\\]<>#|])", "\\\\$1");
    }
}
