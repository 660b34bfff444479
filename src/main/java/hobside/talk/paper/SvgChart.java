package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A chart as a drawing inside a page: a grey bar a step, the range as a whisker over it, and the figures in rows below. Lengths are in
 * units of the drawing, which is as wide as the page.
 */
final class SvgChart {

    private static final double WIDE = 700;
    private static final double LEFT = 96;
    private static final double TOP = 34;

    /** The height of the highest end of a whisker. */
    static final double TALL = 190;

    private static final double ROW = 19;
    private static final double LARGEST_TYPE = 14;

    private final Block.Chart chart;
    private final double slot;
    private final double type;
    private final List<String> lines = new ArrayList<>();

    private SvgChart(Block.Chart chart) {
        this.chart = chart;
        this.slot = (WIDE - LEFT) / Math.max(1, chart.points().size());
        this.type = Math.min(LARGEST_TYPE, slot / 5.4);
    }

    static List<String> lines(Block.Chart chart) {
        SvgChart svg = new SvgChart(chart);
        svg.draw();
        return svg.lines;
    }

    private void draw() {
        int rows = 2 + chart.head().under().size();
        double tall = TOP + TALL + 14 + ROW * (rows + 1);
        lines.add("<figure>");
        lines.add("<figcaption><strong>" + HtmlSheet.escaped(chart.head().title()) + "</strong></figcaption>");
        lines.add("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"chart-title chart-told\" viewBox=\"0 0 "
                + number(WIDE) + " " + number(tall) + "\" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"" + number(type) + "\">");
        lines.add("<title id=\"chart-title\">" + HtmlSheet.escaped(chart.head().title()) + "</title>");
        lines.add("<desc id=\"chart-told\">" + HtmlSheet.escaped(chart.head().told()) + "</desc>");
        names();
        for (int i = 0; i < chart.points().size(); i++) {
            bar(chart.points().get(i), LEFT + slot * i + slot / 2);
        }
        double foot = TOP + TALL;
        lines.add("<line x1=\"" + number(LEFT) + "\" y1=\"" + number(foot) + "\" x2=\"" + number(WIDE) + "\" y2=\"" + number(foot) + "\" stroke=\"#000\" stroke-width=\"2\"/>");
        lines.add("</svg>");
        lines.add("</figure>");
    }

    private double foot(int row) {
        return TOP + TALL + 6 + ROW * (row + 1);
    }

    private void names() {
        text(0, foot(2), chart.head().range(), "start", false);
        for (int i = 0; i < chart.head().under().size(); i++) {
            text(0, foot(3 + i), chart.head().under().get(i), "start", false);
        }
    }

    private double high(double value) {
        return chart.highest() <= 0 ? 0 : Math.max(0, value) / chart.highest() * TALL;
    }

    private void bar(Block.Chart.Point point, double middle) {
        double wide = Math.min(58, slot * 0.6);
        double tall = high(point.value().typical());
        lines.add("<rect class=\"bar\" x=\"" + number(middle - wide / 2) + "\" y=\"" + number(TOP + TALL - tall) + "\" width=\"" + number(wide)
                + "\" height=\"" + number(tall) + "\" fill=\"#c8c8c8\" stroke=\"#000\" stroke-width=\"1.5\"/>");
        double top = TOP + TALL - high(point.value().high());
        if (!point.value().isExact()) {
            double low = TOP + TALL - high(point.value().low());
            whisker(middle, top, low);
        }
        text(middle, Math.min(top, TOP + TALL - tall) - 8, point.figure().typical(), "middle", true);
        List<String> label = Folded.lines(point.label(), Math.max(4, (int) (slot / (type * 0.56))));
        for (int i = 0; i < Math.min(2, label.size()); i++) {
            text(middle, foot(i) - (label.size() == 1 ? 0 : 2), label.get(i), "middle", false);
        }
        text(middle, foot(2), point.figure().range().isEmpty() ? "–" : point.figure().range(), "middle", false);
        for (int i = 0; i < point.under().size(); i++) {
            text(middle, foot(3 + i), point.under().get(i), "middle", false);
        }
    }

    private void whisker(double middle, double top, double low) {
        lines.add("<path class=\"range\" d=\"M" + number(middle) + " " + number(low) + "V" + number(top) + "M" + number(middle - 7) + " " + number(low) + "h14M"
                + number(middle - 7) + " " + number(top) + "h14\" fill=\"none\" stroke=\"#000\" stroke-width=\"2\"/>");
    }

    private void text(double x, double y, String words, String anchor, boolean strong) {
        lines.add("<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" text-anchor=\"" + anchor + "\"" + (strong ? " font-weight=\"bold\"" : "") + ">"
                + HtmlSheet.escaped(words) + "</text>");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
