package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A sheet as plain text, to be read at the hob or on any terminal. */
public final class TextSheet {

    /** The width of a sheet. */
    public static final int SHEET = 80;

    private static final int LEAST = 50;
    private static final int INDENT = 11;

    private final int width;
    private boolean large = true;
    private final List<String> lines = new ArrayList<>();

    private TextSheet(int width) {
        this.width = width;
    }

    public static String of(Sheet sheet) {
        return of(sheet, SHEET);
    }

    /** The same for a screen of another width, 50 columns at the least. */
    public static String of(Sheet sheet, int width) {
        TextSheet text = new TextSheet(Math.max(LEAST, width));
        text.write(sheet);
        return String.join("\n", text.lines) + "\n";
    }

    private void write(Sheet sheet) {
        List<String> title = Folded.lines(sheet.title().toUpperCase(Locale.ROOT), width);
        lines.addAll(title);
        lines.add("=".repeat(title.stream().mapToInt(String::length).max().orElse(1)));
        large = sheet.front().look() == Sheet.Look.LARGE;
        Block before = null;
        for (Block block : sheet.blocks()) {
            if (isApart(before, block)) {
                lines.add("");
            }
            lines.addAll(block instanceof Block.Heading && large ? List.of("") : List.of());
            write(block);
            before = block instanceof Block.PageBreak ? before : block;
        }
    }

    /** Paragraphs in a row, a list under its heading and the like stand without an empty line between them. */
    private static boolean isApart(Block before, Block block) {
        if (block instanceof Block.PageBreak || before == null) {
            return false;
        }
        boolean first = before instanceof Block.Heading && !(block instanceof Block.CueLine || block instanceof Block.Board);
        return !first && !(before instanceof Block.Paragraph && block instanceof Block.Paragraph);
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            lines.addAll(Folded.lines(heading.words().toUpperCase(Locale.ROOT), width));
            lines.addAll(large ? List.of("-".repeat(width)) : List.of());
        } else if (block instanceof Block.Paragraph paragraph) {
            lines.addAll(Folded.lines(paragraph.words(), width));
        } else if (block instanceof Block.CueLine cue) {
            cue(cue);
        } else if (block instanceof Block.Checks checks) {
            checks(checks);
        } else if (block instanceof Block.Lines list) {
            list.items().forEach(item -> hanging("  - ", item, width));
        } else {
            framed(block);
        }
    }

    private void framed(Block block) {
        if (block instanceof Block.Table table) {
            lines.addAll(TextTable.lines(table, width));
        } else if (block instanceof Block.Board board) {
            lines.addAll(TextTable.board(board, width));
        } else if (block instanceof Block.Chart chart) {
            lines.addAll(TextChart.lines(chart, width));
        } else if (block instanceof Block.Box box) {
            box(box);
        }
    }

    private void cue(Block.CueLine cue) {
        String word = Folded.lines(cue.mark().label().toUpperCase(Locale.ROOT), width / 3).get(0);
        String remark = cue.remark().isEmpty() ? "" : " [" + cue.remark() + "]";
        hanging(Folded.padded(word, Math.max(INDENT, word.length() + 1)), cue.words() + remark, width);
    }

    private void hanging(String label, String words, int wide) {
        String front = label;
        for (String line : Folded.lines(words, wide - label.length())) {
            lines.add(front + line);
            front = " ".repeat(label.length());
        }
    }

    private void checks(Block.Checks checks) {
        if (!checks.twoColumns() || width < SHEET) {
            checks.items().forEach(item -> hanging("  [ ] ", item, width));
            return;
        }
        int half = (checks.items().size() + 1) / 2;
        for (int row = 0; row < half; row++) {
            String other = row + half < checks.items().size() ? checks.items().get(row + half) : "";
            beside(checks.items().get(row), other);
        }
    }

    private void beside(String left, String right) {
        int column = width / 2;
        List<String> one = Folded.lines(left, column - 6);
        List<String> two = Folded.lines(right, column - 5);
        for (int i = 0; i < Math.max(one.size(), two.size()); i++) {
            String front = i == 0 ? "[ ] " : "    ";
            String start = i < one.size() ? front + one.get(i) : "";
            String end = i < two.size() && !right.isEmpty() ? front + two.get(i) : "";
            lines.add((Folded.padded(start, column) + end).stripTrailing());
        }
    }

    private void box(Block.Box box) {
        String head = box.title().isEmpty() ? "+-" : "+-- " + box.title() + " ";
        lines.add(head + "-".repeat(Math.max(0, width - 1 - head.length())) + "+");
        for (String each : box.lines()) {
            Folded.lines(each, width - 4).forEach(line -> lines.add("| " + Folded.padded(line, width - 4) + " |"));
        }
        lines.add("+" + "-".repeat(width - 2) + "+");
    }
}
