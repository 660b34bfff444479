package hobside.screen.bench;

import hobside.dish.Names;
import hobside.dish.Titles;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Step;
import hobside.measure.Range;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.talk.Written;
import java.util.List;

/** The plan side: a ledger, one row a change in the order told, with what it saves and what is left after it. */
final class PlanPane {

    private static final int FIGURE = 7;
    private static final int ENERGY = 12;
    private static final int COST = 9;

    /** From this width on there is room for energy and cost, and from the next for titles in full. */
    private static final int WIDE = 60;
    private static final int WIDER = 80;

    private PlanPane() {}

    static void draw(Bench bench, Frame frame) {
        boolean here = bench.spot().side() == BenchAction.Side.PLAN;
        heading(bench, frame, here);
        List<Step> steps = bench.desk().ledger().steps();
        int room = frame.height() - 1;
        int first = Lines.firstShown(bench.spot().planRow(), steps.size() + 1, room);
        for (int i = 0; i < room && first + i <= steps.size(); i++) {
            Frame line = frame.part(new Area(1 + i, 0, 1, frame.width()));
            if (first + i == 0) {
                start(bench, line);
            } else {
                step(bench, line, first + i);
            }
            DishPane.mark(line, bench.spot().planRow() == first + i, here);
        }
        if (steps.isEmpty()) {
            invite(frame);
        }
    }

    private static void heading(Bench bench, Frame frame, boolean here) {
        String title = switch (bench.basis()) {
            case SERVE -> "Plan, a serve";
            case POT -> "Plan, the pot";
            case HUNDRED_GRAMS -> "Plan, 100 g";
        };
        frame.put(0, 1, title, here ? Style.HEADING : Style.QUIET);
        frame.putRight(0, frame.width() - 1, "left", Style.QUIET);
        frame.putRight(0, frame.width() - 1 - FIGURE, "saves", Style.QUIET);
        if (frame.width() >= WIDE) {
            frame.putRight(0, frame.width() - 1 - 2 * FIGURE - 2, "energy", Style.QUIET);
            frame.putRight(0, frame.width() - 1 - 2 * FIGURE - 2 - ENERGY, "cost", Style.QUIET);
        }
    }

    private static void start(Bench bench, Frame line) {
        line.put(0, 2, "as cooked here", Style.PLAIN);
        line.putRight(0, line.width() - 1, left(bench.desk().ledger().start().of(Nutrient.FASAT, bench.basis())), Style.PLAIN);
    }

    private static void step(Bench bench, Frame line, int number) {
        Step step = bench.desk().ledger().steps().get(number - 1);
        String title = title(bench, step, line.width() >= WIDER);
        int end = line.width() - 1;
        int room = end - 2 * FIGURE - (line.width() >= WIDE ? ENERGY + COST + 2 : 0) - 5;
        line.putRight(0, 4, String.valueOf(number), Style.QUIET);
        line.put(0, 5, Lines.fit(title, room), step.counts() ? Style.PLAIN : Style.QUIET);
        line.putRight(0, end, left(step.after().of(Nutrient.FASAT, bench.basis())), Style.PLAIN);
        if (step.counts()) {
            saved(bench, line, step);
        } else {
            line.putRight(0, end - FIGURE, step.planned().on() ? "blocked" : "off", step.planned().on() ? Style.WARN : Style.QUIET);
        }
    }

    private static String title(Bench bench, Step step, boolean wide) {
        return wide ? Names.title(step.planned().change(), bench.demo().dish(), bench.demo().plan())
                : Titles.brief(step.planned().change(), bench.demo().dish(), bench.demo().plan());
    }

    private static void saved(Bench bench, Frame line, Step step) {
        int end = line.width() - 1 - FIGURE;
        Basis basis = bench.basis();
        putMoved(line, end, Written.movedBare(Nutrient.FASAT, step.told().saved(Nutrient.FASAT, basis).range()),
                step.told().saved(Nutrient.FASAT, basis).range());
        if (line.width() >= WIDE) {
            Range energy = step.told().saved(Nutrient.ENERC, basis).range();
            putMoved(line, end - FIGURE - 2, Written.moved(Nutrient.ENERC, energy), energy);
            Figure cost = step.told().savedCost(basis);
            putMoved(line, end - FIGURE - 2 - ENERGY, Written.moved(cost, bench.desk().study().books().prices().currency()), cost.range());
        }
    }

    private static void putMoved(Frame line, int end, String words, Range saved) {
        line.putRight(0, end, words, TotalsPane.style(words, saved));
    }

    private static String left(Figure figure) {
        return (figure.atLeast() ? "≥" : "") + Written.number(figure.typical());
    }

    /** What to do while the plan is empty. */
    private static void invite(Frame frame) {
        int row = 3;
        for (String line : Lines.wrap("No change yet. Go to an ingredient and press Enter: what helps here is shown with its effect.",
                frame.width() - 4)) {
            frame.put(row++, 2, line, Style.QUIET);
        }
    }
}
