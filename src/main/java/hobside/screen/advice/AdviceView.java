package hobside.screen.advice;

import hobside.advice.Advised;
import hobside.advice.Goal;
import hobside.advice.Limits;
import hobside.advice.Myth;
import hobside.advice.Next;
import hobside.dish.Reason;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import hobside.measure.Range;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.talk.Demo;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the pages of advice. */
final class AdviceView {

    private static final int TOP = 3;

    private final AdviceScreen advice;
    private final Frame frame;
    private final Demo demo;

    private AdviceView(AdviceScreen advice, Frame frame) {
        this.advice = advice;
        this.frame = frame;
        this.demo = advice.bench().demo();
    }

    static void draw(AdviceScreen advice, Frame frame) {
        AdviceView view = new AdviceView(advice, frame);
        view.head();
        switch (advice.wanted().tab()) {
            case NEXT -> view.next();
            case BEST -> view.best();
            case FRONTIER -> FrontierPane.draw(advice, frame.part(new Area(TOP, 0, frame.height() - TOP - 2, frame.width())));
            case CREDIT -> view.credit();
            case MYTHS -> view.myths();
        }
        frame.put(frame.height() - 2, 1, Lines.fit(advice.spot().said(), frame.width() - 2), Style.STRONG);
        Keys.line(frame, AdviceAction.lastLine(advice.wanted().tab()));
    }

    private void head() {
        frame.put(0, 1, Lines.fit(demo.dish().name(), frame.width() - 12), Style.TITLE);
        frame.putRight(0, frame.width() - 1, "Advice", Style.QUIET);
        int at = 1;
        for (Tab tab : Tab.values()) {
            boolean here = tab == advice.wanted().tab();
            String word = (tab.ordinal() + 1) + " " + tab.word();
            at = frame.put(1, at, here ? Glyphs.POINTER + word : " " + word, here ? Style.STRONG : Style.QUIET) + 1;
        }
        frame.horizontal(2, 0, frame.width() - 1);
    }


    static String grams(double grams) {
        return Written.number(grams) + " g";
    }

    private String money(double minor) {
        return Written.money(new Figure(Range.exactly(minor), false), advice.bench().desk().study().books().prices().currency());
    }

    static String limitsTold(Limits limits) {
        List<String> told = new ArrayList<>();
        if (!limits.keep().isEmpty()) {
            told.add("must stay: " + String.join(", ", limits.keep()));
        }
        if (!limits.untouched().isEmpty()) {
            told.add("untouched: " + String.join(", ", limits.untouched()));
        }
        told.add(limits.newAllergens() ? "new allergens allowed" : "no new allergen");
        if (!limits.sharing()) {
            told.add("no sharing");
        }
        return String.join("; ", told);
    }

    private void next() {
        List<Next> next = advice.answers().next(advice.wanted().rank());
        frame.put(TOP, 1, Lines.fit("What " + advice.wanted().rank().words() + "; " + limitsTold(advice.limits()), frame.width() - 2), Style.QUIET);
        int end = frame.width() - 1;
        frame.put(TOP + 1, 3, "change", Style.HEADING);
        frame.putRight(TOP + 1, end, "saves a serve      cost   min", Style.HEADING);
        int rows = Math.max(3, frame.height() - TOP - 9);
        int first = Lines.firstShown(advice.spot().row(), next.size(), rows);
        for (int i = 0; i < rows && first + i < next.size(); i++) {
            row(frame.part(new Area(TOP + 2 + i, 0, 1, frame.width())), next.get(first + i), first + i == advice.spot().row());
        }
        if (next.isEmpty()) {
            int row = TOP + 2;
            for (String line : Lines.wrap("No change is left that helps within these limits. i loosens them.", frame.width() - 5)) {
                frame.put(row++, 3, line, Style.PLAIN);
            }
        } else {
            reason(next.get(Math.min(advice.spot().row(), next.size() - 1)), TOP + 3 + rows);
        }
    }

    private void row(Frame line, Next next, boolean here) {
        int end = line.width() - 1;
        line.put(0, 3, Lines.fit(next.wish().title(), end - 32), Style.PLAIN);
        line.putRight(0, end - 16, Written.moved(Nutrient.FASAT, Range.exactly(next.saved())), next.saved() > 0 ? Style.GOOD : Style.WARN);
        String cost = !next.wish().priced() ? "price?" : Math.abs(next.extraCost()) < 0.5 ? "same" : (next.extraCost() > 0 ? "+" : Glyphs.MINUS) + money(Math.abs(next.extraCost()));
        line.putRight(0, end - 5, cost, Style.PLAIN);
        line.putRight(0, end, next.minutes() == 0 ? "" : "+" + next.minutes(), Style.QUIET);
        Cursor.mark(line, here);
    }

    private void reason(Next next, int from) {
        frame.horizontal(from - 1, 0, frame.width() - 1);
        var study = advice.bench().desk().study();
        Reason reason = Reason.of(next.wish().change(), demo.dish(), study.substitutes(), study.english());
        int row = from;
        for (String line : Lines.wrap("Why  " + reason.why(), frame.width() - 2)) {
            frame.put(row++, 1, line, Style.PLAIN);
        }
        for (String line : Lines.wrap("But  " + reason.not(), frame.width() - 2)) {
            if (row < frame.height() - 2) {
                frame.put(row++, 1, line, Style.QUIET);
            }
        }
    }

    private void best() {
        Optional<Goal> goal = advice.answers().goal(advice.wanted());
        int row = TOP;
        frame.put(row++, 1, "Goal    " + goal.map(Goal::told).orElse(advice.wanted().goal()), Style.STRONG);
        frame.put(row++, 1, "With    " + aim(), Style.PLAIN);
        for (String line : Lines.wrap("Within  " + limitsTold(advice.limits()), frame.width() - 2)) {
            frame.put(row++, 1, line, Style.QUIET);
        }
        row++;
        Optional<Advised> best = advice.answers().best(advice.wanted());
        if (best.isEmpty()) {
            frame.put(row++, 1, "No plan reaches that within these limits: proven. This comes closest:", Style.WARN);
        }
        plan(best.orElseGet(advice.answers()::closest), row);
    }

    private String aim() {
        return switch (advice.wanted().aim()) {
            case FEWEST_CHANGES -> "the fewest changes";
            case LEAST_MONEY -> "the least money";
            case LEAST_DEPARTURE -> "the least departure from the dish";
            case MOST_SAVING -> "the most that can be saved";
        };
    }

    private void plan(Advised best, int from) {
        int row = from;
        for (String line : planLines(best, advice)) {
            if (row < frame.height() - 2) {
                frame.put(row++, 3, Lines.fit(line, frame.width() - 4), Style.PLAIN);
            }
        }
        String proof = best.proven() ? "Proven: none within the limits is better (" + best.looked() + " part plans)."
                : "Best found, not proven; the bound that is left is " + grams(best.bound()) + ".";
        if (row < frame.height() - 3) {
            frame.put(row + 1, 1, proof, best.proven() ? Style.GOOD : Style.WARN);
        }
    }

    /** The changes of a plan, then what it does. */
    static List<String> planLines(Advised best, AdviceScreen advice) {
        Demo demo = advice.bench().demo();
        var study = advice.bench().desk().study();
        List<String> lines = new ArrayList<>();
        int number = 1;
        for (String title : best.titles(demo.dish())) {
            lines.add(number++ + " " + title);
        }
        if (lines.isEmpty()) {
            lines.add("no change at all");
        }
        Outcome start = Ledger.outcome(demo.dish(), List.of(), study.books());
        Outcome end = best.outcome();
        var currency = study.books().prices().currency();
        lines.add("saturated fat " + grams(start.of(Nutrient.FASAT, Basis.SERVE)) + " " + Glyphs.RIGHT + " " + grams(end.of(Nutrient.FASAT, Basis.SERVE))
                + "; cost " + Written.money(start.paid(Basis.SERVE), currency) + " " + Glyphs.RIGHT + " "
                + Written.money(end.paid(Basis.SERVE), currency));
        return lines;
    }

    private void credit() {
        CreditRows credit = advice.answers().credit();
        frame.put(TOP, 1, Lines.fit("Saturated fat saved a serve, g; fair share: Shapley, " + (credit.exact() ? "exact" : "sampled, with its error"), frame.width() - 2), Style.QUIET);
        int end = frame.width() - 1;
        frame.put(TOP + 1, 3, "change", Style.HEADING);
        frame.putRight(TOP + 1, end, "as told   alone    last   fair share", Style.HEADING);
        int row = TOP + 2;
        for (CreditRows.Row each : credit.rows()) {
            if (row < frame.height() - 4) {
                Frame line = frame.part(new Area(row, 0, 1, frame.width()));
                line.put(0, 3, Lines.fit(each.title(), end - 40), Style.PLAIN);
                line.putRight(0, end - 29, Written.number(each.told()), Style.PLAIN);
                line.putRight(0, end - 21, Written.number(each.alone()), Style.PLAIN);
                line.putRight(0, end - 13, Written.number(each.last()), Style.PLAIN);
                line.putRight(0, end, Written.number(each.fair().share()) + (each.fair().exact() ? "" : " " + Glyphs.ABOUT + Written.number(each.fair().error())), Style.STRONG);
                Cursor.mark(line, row - TOP - 2 == advice.spot().row());
                row++;
            }
        }
        if (credit.rows().isEmpty()) {
            frame.put(row, 3, "No change is in the plan yet.", Style.PLAIN);
        }
        frame.putRight(row + 1, end, "together " + Written.number(credit.whole()), Style.STRONG);
    }

    private void myths() {
        List<Myth> myths = advice.answers().myths();
        frame.put(TOP, 1, "What people believe, and what it does in this dish.", Style.QUIET);
        int row = TOP + 2;
        for (int i = Math.min(advice.spot().row(), Math.max(0, myths.size() - 1)); i < myths.size(); i++) {
            frame.put(row++, 1, Lines.fit(myths.get(i).title(), frame.width() - 2), i == advice.spot().row() ? Style.STRONG : Style.HEADING);
            for (String line : Lines.wrap(myths.get(i).said(), frame.width() - 4)) {
                if (row < frame.height() - 2) {
                    frame.put(row++, 3, line, Style.PLAIN);
                }
            }
            row++;
            if (row > frame.height() - 5) {
                return;
            }
        }
        if (myths.isEmpty()) {
            frame.put(row, 3, "Nothing of the kind fits this dish.", Style.PLAIN);
        }
    }
}
