package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;

/** A sheet as Markdown, for a web page or a printer. Signs that Markdown or HTML read as marks are escaped. */
public final class MarkdownSheet {

    private final List<String> lines = new ArrayList<>();

    private MarkdownSheet() {}

    public static String of(Sheet sheet) {
        MarkdownSheet markdown = new MarkdownSheet();
        markdown.apart("# " + escaped(sheet.title()));
        sheet.blocks().forEach(markdown::write);
        return String.join("\n", markdown.lines).stripTrailing() + "\n";
    }

    private void apart(String... more) {
        lines.addAll(List.of(more));
        lines.add("");
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            apart("## " + escaped(heading.words()));
        } else if (block instanceof Block.Paragraph paragraph) {
            apart(atStart(paragraph.words()));
        } else if (block instanceof Block.CueLine cue) {
            String remark = cue.remark().isEmpty() ? "" : " *(" + escaped(cue.remark()) + ")*";
            apart("**" + escaped(cue.mark().label()) + ":** " + escaped(cue.words()) + remark);
        } else if (block instanceof Block.Checks checks) {
            apart(checks.items().stream().map(item -> "- [ ] " + atStart(item)).toArray(String[]::new));
        } else if (block instanceof Block.Lines list) {
            apart(list.items().stream().map(item -> "- " + atStart(item)).toArray(String[]::new));
        } else {
            framed(block);
        }
    }

    private void framed(Block block) {
        if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Board board) {
            table(new Block.Table(List.of(board.head().title(), board.head().now(), board.head().since()),
                    board.lines().stream().map(line -> List.of(line.label(), line.now(), line.moved())).toList(), 2));
        } else if (block instanceof Block.Chart chart) {
            apart("**" + escaped(chart.head().title()) + "**");
            apart(atStart(chart.head().told()));
            table(TextChart.under(chart));
        } else if (block instanceof Block.Box box) {
            String title = box.title().isEmpty() ? "" : "**" + escaped(box.title()) + "** ";
            apart("> " + title + String.join("  \n> ", box.lines().stream().map(MarkdownSheet::atStart).toList()));
        }
    }

    private void table(Block.Table table) {
        lines.add(row(table.head()));
        StringBuilder rule = new StringBuilder("|");
        for (int i = 0; i < table.head().size(); i++) {
            rule.append(table.isFigure(i) ? "---:|" : "---|");
        }
        lines.add(rule.toString());
        table.rows().forEach(cells -> lines.add(row(cells)));
        lines.add("");
    }

    private static String row(List<String> cells) {
        return "| " + String.join(" | ", cells.stream().map(MarkdownSheet::escaped).toList()) + " |";
    }

    private static String escaped(String text) {
        return text.replaceAll("([\\\\`*_{}\\[\\]<>#|~&])", "\\\\$1");
    }

    /** At the start of a line, a hyphen, a plus, an equals sign or a number with a point would begin a list or underline a heading. */
    private static String atStart(String text) {
        return escaped(text.strip()).replaceFirst("^([-+=])", "\\\\$1").replaceFirst("^(\\d+)([.)])", "$1\\\\$2");
    }
}
