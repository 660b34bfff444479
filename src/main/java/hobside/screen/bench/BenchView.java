package hobside.screen.bench;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import java.util.List;

/** Draws the Bench. */
public final class BenchView {

    /** Rows that a message may take. */
    private static final int MOST_ROWS = 4;

    private BenchView() {}

    static void draw(Bench bench, Frame frame) {
        BenchLayout layout = new BenchLayout(frame.width(), frame.height());
        title(bench, frame, "Bench");
        frame.vertical(layout.middle(), 1, layout.listBottom());
        frame.horizontal(layout.listBottom(), 0, frame.width() - 1);
        DishPane.draw(bench, frame.part(layout.dish()));
        PlanPane.draw(bench, frame.part(layout.plan()));
        TotalsPane.draw(bench, frame.part(layout.totals()));
        said(frame.isTold() && bench.said().isEmpty() ? side(bench) : bench.said(), frame);
        Keys.line(frame, BenchAction.lastLine(bench.spot().side()));
    }

    /** Which side the cursor is on: what is seen at once has to be told. */
    private static String side(Bench bench) {
        return bench.spot().side() == BenchAction.Side.DISH ? "You are in the dish." : "You are in the plan.";
    }

    /** The title line that all screens share: what is being worked on, which screen this is, and that it is kept. */
    public static void title(Bench bench, Frame frame, String screen) {
        String right = screen + " · " + bench.desk().kept().words();
        int room = frame.width() - TextWidth.of(right) - 4;
        String serves = serves(bench.desk().before().serves(), bench.desk().now().serves());
        String name = Lines.fit(bench.demo().dish().name(), room - serves.length() - 3);
        int at = frame.put(0, 1, name, Style.TITLE);
        frame.put(0, at, " · " + serves, Style.PLAIN);
        frame.putRight(0, frame.width() - 1, right, Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
    }

    private static String serves(double before, double now) {
        String after = Math.round(now) == 1 ? " serve" : " serves";
        return (before == now ? "" : Math.round(before) + "→") + Math.round(now) + after;
    }

    /** The last word said to the user, above the keys; a long one takes the rows above until the next key, since its end says what to do. */
    public static void said(String words, Frame frame) {
        List<String> lines = Lines.wrap(words, frame.width() - 2);
        int count = Math.min(MOST_ROWS, lines.size());
        for (int i = 0; i < count; i++) {
            boolean cut = i == count - 1 && lines.size() > count;
            int row = frame.height() - 1 - count + i;
            if (count > 1) {
                frame.part(new Area(row, 0, 1, frame.width())).fill(' ', Style.PLAIN);
            }
            frame.put(row, 1, cut ? Lines.fit(lines.get(i) + " " + lines.get(i + 1), frame.width() - 2) : lines.get(i), Style.STRONG);
        }
    }
}
