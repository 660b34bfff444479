package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;

/** A chart as plain text: a bar of signs a step, with its figures beside and under it. */
final class TextChart {

    private TextChart() {}

    static List<String> lines(Block.Chart chart, int width) {
        List<String> lines = new ArrayList<>(Folded.lines(chart.head().title(), width));
        int label = Math.min(width / 3, chart.points().stream().mapToInt(point -> point.label().length()).max().orElse(0));
        int figure = Math.min(width / 3, chart.points().stream().mapToInt(point -> point.figure().typical().length()).max().orElse(0));
        int room = width - label - figure - 4;
        for (Block.Chart.Point point : chart.points()) {
            List<String> folded = Folded.lines(point.label(), label);
            String bar = "#".repeat(length(chart, point, room));
            String written = Folded.lines(point.figure().typical(), figure).get(0);
            lines.add((Folded.padded(folded.get(0), label) + "  " + Folded.padded(bar, room) + "  " + Folded.right(written, figure)).stripTrailing());
            lines.addAll(folded.subList(1, folded.size()));
        }
        lines.add("");
        lines.addAll(TextTable.lines(under(chart), width));
        return lines;
    }

    private static int length(Block.Chart chart, Block.Chart.Point point, int room) {
        double highest = chart.points().stream().mapToDouble(each -> each.value().typical()).max().orElse(0);
        return highest <= 0 ? 0 : (int) Math.round(room * Math.max(0, point.value().typical()) / highest);
    }

    /** The figures of the chart as a table. */
    static Block.Table under(Block.Chart chart) {
        List<String> head = new ArrayList<>(List.of("", chart.head().range()));
        head.addAll(chart.head().under());
        List<List<String>> rows = new ArrayList<>();
        for (Block.Chart.Point point : chart.points()) {
            List<String> row = new ArrayList<>(List.of(point.label(), point.figure().range().isEmpty() ? "–" : point.figure().range()));
            row.addAll(point.under());
            rows.add(row);
        }
        return new Block.Table(head, rows, head.size() - 1);
    }
}
