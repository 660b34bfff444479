package hobside.screen.advice;

import hobside.advice.Point;
import hobside.ledger.Figure;
import hobside.measure.Range;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.talk.Written;
import java.util.List;

/** The frontier drawn in characters: saturated fat upwards, cost to the right; each point bears its number of changes. */
final class FrontierPane {

    private static final int AXIS = 8;
    private static final int BELOW = 7;

    private final List<Point> points;
    private final AdviceScreen advice;
    private final Frame frame;

    private FrontierPane(AdviceScreen advice, Frame frame) {
        this.points = advice.answers().frontier();
        this.advice = advice;
        this.frame = frame;
    }

    static void draw(AdviceScreen advice, Frame frame) {
        FrontierPane pane = new FrontierPane(advice, frame);
        if (pane.points.isEmpty()) {
            frame.put(1, 3, "No change is left that helps within these limits.", Style.PLAIN);
            return;
        }
        pane.axes();
        pane.points();
        pane.chosen();
    }

    private int rows() {
        return frame.height() - BELOW;
    }

    private double most(boolean cost) {
        return points.stream().mapToDouble(point -> cost ? point.cost() : point.fasat()).max().orElse(1);
    }

    private double least(boolean cost) {
        return points.stream().mapToDouble(point -> cost ? point.cost() : point.fasat()).min().orElse(0);
    }

    private int row(Point point) {
        double span = most(false) - least(false);
        return span == 0 ? 1 : 1 + (int) Math.round((most(false) - point.fasat()) / span * (rows() - 3));
    }

    private int column(Point point) {
        double span = most(true) - least(true);
        return AXIS + 1 + (span == 0 ? 0 : (int) Math.round((point.cost() - least(true)) / span * (frame.width() - AXIS - 4)));
    }

    private void axes() {
        frame.put(0, 1, "g a serve", Style.QUIET);
        frame.vertical(AXIS, 1, rows() - 2);
        frame.horizontal(rows() - 1, AXIS, frame.width() - 2);
        frame.putRight(1, AXIS - 1, Written.number(most(false)), Style.QUIET);
        frame.putRight(rows() - 2, AXIS - 1, Written.number(least(false)), Style.QUIET);
        frame.put(rows(), AXIS, coins(least(true)), Style.QUIET);
        frame.putRight(rows(), frame.width() - 1, "cost a serve " + coins(most(true)), Style.QUIET);
    }

    private String coins(double minor) {
        var currency = advice.bench().desk().study().books().prices().currency();
        return Written.money(new Figure(Range.exactly(minor), false), currency);
    }

    private void points() {
        for (int i = 0; i < points.size(); i++) {
            if (i != advice.spot().row()) {
                put(points.get(i), Style.PLAIN);
            }
        }
        put(points.get(Math.min(advice.spot().row(), points.size() - 1)), Style.CURSOR);
    }

    private void put(Point point, Style style) {
        String sign = point.changes() > 9 ? String.valueOf(Glyphs.BULLET) : Integer.toString(point.changes());
        frame.put(row(point), column(point), style == Style.CURSOR ? "[" + sign + "]" : " " + sign + " ", style);
    }

    /** The plan of the point one stands on. */
    private void chosen() {
        Point point = points.get(Math.min(advice.spot().row(), points.size() - 1));
        Frame below = frame.part(new Area(rows() + 1, 0, frame.height() - rows() - 1, frame.width()));
        String where = "Point " + (Math.min(advice.spot().row(), points.size() - 1) + 1) + " of " + points.size() + ": " + point.changes()
                + (point.changes() == 1 ? " change" : " changes");
        String keys = "; Left and Right walk, Enter takes the plan";
        below.put(0, 1, where + (where.length() + keys.length() < below.width() - 1 ? keys : "; Left, Right; Enter takes it"), Style.STRONG);
        List<String> lines = AdviceView.planLines(point.plan(), advice);
        String changes = String.join("  ", lines.subList(0, lines.size() - 1));
        int row = 1;
        for (String line : Lines.wrap(changes, below.width() - 4)) {
            if (row < below.height() - 1) {
                below.put(row++, 3, line, Style.PLAIN);
            }
        }
        below.put(below.height() - 1, 3, Lines.fit(lines.get(lines.size() - 1), below.width() - 4), Style.PLAIN);
    }
}
