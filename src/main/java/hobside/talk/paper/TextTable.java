package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;

/** Tables and boards as plain text. */
final class TextTable {

    private static final int GAP = 2;

    private TextTable() {}

    /** Figures stand at the right of their columns; words are folded into the room that is left. */
    static List<String> lines(Block.Table table, int width) {
        int[] wide = widths(table, width);
        List<String> lines = new ArrayList<>(row(table, table.head(), wide));
        lines.add("-".repeat(Math.min(width, sum(wide) + GAP * (wide.length - 1))));
        table.rows().forEach(cells -> lines.addAll(row(table, cells, wide)));
        return lines;
    }

    private static int[] widths(Block.Table table, int width) {
        int[] wide = new int[table.head().size()];
        for (int i = 0; i < wide.length; i++) {
            int column = i;
            int longest = table.rows().stream().mapToInt(cells -> cells.get(column).length()).max().orElse(0);
            wide[i] = Math.max(longest, table.head().get(i).length());
        }
        int room = width - GAP * (wide.length - 1);
        while (sum(wide) > room) {
            wide[widest(wide)]--;
        }
        return wide;
    }

    private static int sum(int[] wide) {
        int sum = 0;
        for (int each : wide) {
            sum += each;
        }
        return sum;
    }

    private static int widest(int[] wide) {
        int best = 0;
        for (int i = 1; i < wide.length; i++) {
            best = wide[i] > wide[best] ? i : best;
        }
        return best;
    }

    private static List<String> row(Block.Table table, List<String> cells, int[] wide) {
        List<List<String>> folded = new ArrayList<>();
        int height = 0;
        for (int i = 0; i < wide.length; i++) {
            folded.add(Folded.lines(cells.get(i), wide[i]));
            height = Math.max(height, folded.get(i).size());
        }
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < height; at++) {
            lines.add(line(table, folded, wide, at));
        }
        return lines;
    }

    private static String line(Block.Table table, List<List<String>> folded, int[] wide, int at) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < wide.length; i++) {
            String cell = at < folded.get(i).size() ? folded.get(i).get(at) : "";
            line.append(i == 0 ? "" : " ".repeat(GAP));
            line.append(table.isFigure(i) ? Folded.right(cell, wide[i]) : Folded.padded(cell, wide[i]));
        }
        return line.toString().stripTrailing();
    }

    private static final int NARROW = TextSheet.SHEET - 4;

    static List<String> board(Block.Board board, int width) {
        List<String> lines = new ArrayList<>();
        String head = "  +-- " + board.head().title() + " ";
        String cut = head.length() > width - 3 ? head.substring(0, width - 3) : head;
        lines.add(cut + "-".repeat(width - 3 - cut.length()) + "+");
        for (Block.Board.Line line : board.lines()) {
            String row = "  |  " + Folded.padded(line.label(), width < NARROW ? 16 : 26) + Folded.padded(line.now(), 24) + line.moved();
            lines.add(Folded.padded(row.length() > width - 3 ? row.substring(0, width - 3) : row, width - 3) + "|");
        }
        lines.add("  +" + "-".repeat(width - 6) + "+");
        return lines;
    }
}
