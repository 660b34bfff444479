package hobside.talk.paper;

import hobside.measure.Range;
import java.util.List;

/** One thing on a sheet, below the one before it. Its words are clean, see {@link Clean}. */
public sealed interface Block
        permits Block.Heading, Block.Paragraph, Block.CueLine, Block.Checks, Block.Lines, Block.Table, Block.Board, Block.Chart, Block.Box,
                Block.PageBreak {

    /** Begins a part of the sheet; what follows up to the next heading is kept together where there is room. */
    record Heading(String words) implements Block {

        public Heading {
            words = Clean.text(words);
        }
    }

    record Paragraph(String words) implements Block {

        public Paragraph {
            words = Clean.text(words);
        }
    }

    /** One cue: what the presenter does with its words, and a remark such as "may be left out", empty when there is none. */
    record CueLine(Mark mark, String words, String remark) implements Block {

        /** The word in front of a cue, and the kind by which a sheet gives it its shape, such as {@code take-care}. */
        public record Mark(String kind, String label) {}

        public CueLine {
            mark = new Mark(mark.kind(), Clean.text(mark.label()));
            words = Clean.text(words);
            remark = Clean.text(remark);
        }
    }

    /** A list to tick off; in two columns where it may be. */
    record Checks(List<String> items, boolean twoColumns) implements Block {

        public Checks {
            items = Clean.all(items);
        }
    }

    record Lines(List<String> items) implements Block {

        public Lines {
            items = Clean.all(items);
        }
    }

    /**
     * A table with a head. Every row has as many cells as the head.
     *
     * @param figures how many columns at the right hold figures
     */
    record Table(List<String> head, List<List<String>> rows, int figures) implements Block {

        public Table {
            head = Clean.all(head);
            rows = rows.stream().map(Clean::all).toList();
            for (List<String> row : rows) {
                if (row.size() != head.size()) {
                    throw new IllegalArgumentException("a row of " + row.size() + " cells in a table of " + head.size());
                }
            }
        }

        boolean isFigure(int column) {
            return column >= head.size() - figures;
        }
    }

    /** The running total as it is written on the board. */
    record Board(Board.Head head, List<Line> lines) implements Block {

        /** What stands over the board and its two columns. */
        public record Head(String title, String now, String since) {}

        /** A label, the figure now, and how it has moved; empty when it has not. */
        public record Line(String label, String now, String moved) {}

        public Board {
            head = new Board.Head(Clean.text(head.title()), Clean.text(head.now()), Clean.text(head.since()));
            lines = lines.stream().map(line -> new Line(Clean.text(line.label()), Clean.text(line.now()), Clean.text(line.moved()))).toList();
        }
    }

    /** Bars of one figure step by step, each with its range and the figures that stand under it. */
    record Chart(Chart.Head head, List<Point> points) implements Block {

        /**
         * What the chart shows.
         *
         * @param told the same in sentences, for those who do not see it
         * @param range what the range of a bar is called
         * @param under what the figures under the bars are called
         */
        public record Head(String title, String told, String range, List<String> under) {}

        /**
         * One bar.
         *
         * @param value its height with the low and the high end
         * @param figure the height as it is written, and its range as written; the range may be empty
         * @param under one figure for each of the names of the head
         */
        public record Point(String label, Range value, Figure figure, List<String> under) {}

        /** A figure and its range as they are written. */
        public record Figure(String typical, String range) {}

        public Chart {
            head = new Chart.Head(Clean.text(head.title()), Clean.text(head.told()), Clean.text(head.range()), Clean.all(head.under()));
            points = points.stream().map(Chart::clean).toList();
        }

        private static Point clean(Point point) {
            Figure figure = new Figure(Clean.text(point.figure().typical()), Clean.text(point.figure().range()));
            return new Point(Clean.text(point.label()), point.value(), figure, Clean.all(point.under()));
        }

        /** The height of the highest end. */
        double highest() {
            return points.stream().mapToDouble(point -> point.value().high()).max().orElse(0);
        }
    }

    /** Something that must not be overlooked, with a frame around it; its title may be empty. */
    record Box(String title, List<String> lines, boolean large) implements Block {

        public Box {
            title = Clean.text(title);
            lines = Clean.all(lines);
        }
    }

    /** What follows begins on a new page where there are pages. */
    record PageBreak() implements Block {}
}
