package hobside.talk;

import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The talk as Markdown, for a printer or a web page. Signs that Markdown reads as marks are escaped. */
public final class MarkdownScript {

    private MarkdownScript() {}

    public static String of(Talk talk, Words words) {
        List<String> lines = new ArrayList<>();
        lines.add("# " + escaped(talk.title()));
        lines.add("");
        talk.about().forEach(line -> lines.addAll(List.of(escaped(line), "")));
        talk.sections().forEach(section -> section(section, words, lines));
        return String.join("\n", lines) + "\n";
    }

    private static void section(Talk.Section section, Words words, List<String> lines) {
        lines.add("## " + escaped(section.heading()));
        lines.add("");
        boolean list = section.part() == Talk.Part.BENCH;
        for (Cue cue : section.cues()) {
            if (list && cue.kind() != Cue.Kind.TAKE_CARE) {
                lines.add("- [ ] " + escaped(cue.words()));
            } else {
                lines.add("");
                lines.add("**" + words.say("talk.cue." + cue.kind().word()) + ":** " + escaped(cue.words()));
            }
        }
        lines.add("");
        section.board().ifPresent(board -> board(board, words, lines));
    }

    private static void board(Talk.Board board, Words words, List<String> lines) {
        lines.add("| " + escaped(words.say("talk.board.title", Map.of("caption", board.caption().toLowerCase(Locale.ROOT)))) + " | " + words.say("talk.board.now")
                + " | " + words.say("talk.board.since") + " |");
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
