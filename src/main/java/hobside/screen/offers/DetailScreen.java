package hobside.screen.offers;

import hobside.dish.Change;
import hobside.talk.Demo;
import hobside.dish.Names;
import hobside.dish.Reason;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Credit;
import hobside.ledger.Step;
import hobside.measure.Range;
import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.bench.Bench;
import hobside.screen.bench.BenchView;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;

/** One change of the plan in full: what it saves as told, alone and last, its fair share, its range, why, and where factors come from. */
public record DetailScreen(Bench bench, List<Line> lines) implements Screen {

    /** A line of the page: a label, what is said, and how it looks. */
    public record Line(String label, String words, Style style) {}

    /** The only key there is to know here. */
    enum Action implements Keys.Bound {
        BACK;

        @Override
        public Keys.Binding binding() {
            return new Keys.Binding("escape enter q ctrl-c", "back to the Bench", "");
        }
    }

    public static DetailScreen of(Bench bench, int index) {
        return new DetailScreen(bench, new Page(bench, index).lines());
    }

    @Override
    public Next update(Message message) {
        boolean back = message instanceof Message.KeyPressed pressed && Action.BACK.binding().isFor(pressed.key());
        return Next.to(back ? bench : this);
    }

    @Override
    public void view(Frame frame) {
        BenchView.title(bench, frame, "Bench");
        int row = 2;
        for (Line line : lines) {
            for (String words : Lines.wrap(line.words(), frame.width() - 20)) {
                if (row < frame.height() - 1) {
                    frame.put(row, 1, words.equals(Lines.wrap(line.words(), frame.width() - 20).get(0)) ? line.label() : "", Style.QUIET);
                    frame.put(row++, 18, words, line.style());
                }
            }
        }
        Keys.line(frame, List.of(Action.values()));
    }

    /** Gathers the lines of one change. */
    private record Page(Bench bench, int index) {

        List<Line> lines() {
            Demo demo = bench.demo();
            Step step = bench.desk().ledger().steps().get(index);
            Change change = step.planned().change();
            List<Line> lines = new ArrayList<>();
            lines.add(new Line("change " + (index + 1), Names.title(change, demo.dish(), demo.plan()), Style.TITLE));
            if (!step.planned().on()) {
                lines.add(new Line("", "Switched off: it does nothing until it is switched on.", Style.WARN));
            }
            step.blocked().ifPresent(why -> lines.add(new Line("cannot be done", why, Style.WARN)));
            figures(step, lines);
            credit(change, lines);
            Reason reason = Reason.of(change, demo.dish(), bench.desk().study().substitutes(), bench.desk().study().english());
            lines.add(new Line("why", reason.why(), Style.PLAIN));
            lines.add(new Line("what it does not", reason.not(), Style.PLAIN));
            lines.add(new Line("factors from", Factored.source(change, bench), Style.QUIET));
            if (!step.planned().note().isEmpty()) {
                lines.add(new Line("your note", step.planned().note(), Style.STRONG));
            }
            return lines;
        }

        private void figures(Step step, List<Line> lines) {
            Books books = bench.desk().study().books();
            Range saved = step.told().saved(Nutrient.FASAT, Basis.SERVE).range();
            String range = Written.range(Nutrient.FASAT, saved);
            lines.add(new Line("as told", Written.moved(Nutrient.FASAT, saved) + " of saturated fat a serve"
                    + (range.isEmpty() ? "" : " (" + range + ")"), Style.STRONG));
            Range pot = step.told().saved(Nutrient.FASAT, Basis.POT).range();
            lines.add(new Line("in the pot", Written.moved(Nutrient.FASAT, pot) + " of saturated fat", Style.PLAIN));
            Range fat = step.told().saved(Nutrient.FAT, Basis.SERVE).range();
            Range salt = step.told().saved(Nutrient.NA, Basis.SERVE).range();
            lines.add(new Line("and a serve", "energy " + Written.moved(Nutrient.ENERC, step.told().saved(Nutrient.ENERC, Basis.SERVE).range())
                    + ", fat " + Written.moved(Nutrient.FAT, fat) + ", sodium " + Written.moved(Nutrient.NA, salt)
                    + ", cost " + Written.moved(step.told().savedCost(Basis.SERVE), books.prices().currency()), Style.PLAIN));
        }

        private void credit(Change change, List<Line> lines) {
            Demo demo = bench.demo();
            if (!demo.plan().told().contains(change) || demo.plan().told().size() > 10) {
                return;
            }
            Credit credit = Credit.of(demo.dish(), demo.plan(), bench.desk().study().books(), outcome -> outcome.of(Nutrient.FASAT, Basis.SERVE));
            lines.add(new Line("alone", moved(credit.alone(change)) + " if it were the only change", Style.PLAIN));
            lines.add(new Line("last", moved(credit.last(change)) + " would be lost again if it were dropped", Style.PLAIN));
            lines.add(new Line("fair share", moved(credit.fairShare(change).orElse(0)) + " of the whole saving (Shapley value)", Style.PLAIN));
        }

        private static String moved(double saved) {
            return Written.moved(Nutrient.FASAT, Range.exactly(saved));
        }
    }
}
