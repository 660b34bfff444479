package hobside.screen.board;

import hobside.dish.Names;
import hobside.food.Nutrient;
import hobside.guide.Component;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.bench.Bench;
import hobside.talk.Written;
import java.util.List;

/** The running total for an audience, after the first so many changes: large digits for saturated fat, a line for the rest. */
public record BoardScreen(Screen back, Bench bench, int told) implements Screen {

    /** The keys of the board. */
    enum Action implements Keys.Bound {
        ON("right down space enter", "next change"),
        BACK_ONE("left up backspace", "one back"),
        CLOSE("b escape q ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    /** The board after the change that the cursor of the plan stands on; the finished total when it stands on the dish. */
    public static BoardScreen of(Bench bench) {
        int told = bench.planIndex().map(index -> (int) bench.desk().ledger().steps().subList(0, index + 1).stream().filter(Step::counts).count())
                .orElse((int) bench.desk().ledger().steps().stream().filter(Step::counts).count());
        return new BoardScreen(bench, bench, told);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> Next.to(this));
        }
        return message.isNews() ? back.update(message).over(below -> new BoardScreen(below, bench, told)) : Next.to(this);
    }

    private Next act(Action action) {
        return switch (action) {
            case ON -> Next.to(new BoardScreen(back, bench, Math.min(told + 1, steps().size())));
            case BACK_ONE -> Next.to(new BoardScreen(back, bench, Math.max(0, told - 1)));
            case CLOSE -> Next.to(back);
        };
    }

    /** The changes that do something; those that are off or cannot be made are no steps for an audience. */
    private List<Step> steps() {
        return bench.desk().ledger().steps().stream().filter(Step::counts).toList();
    }

    private Totals now() {
        return told == 0 ? bench.desk().ledger().start() : steps().get(told - 1).after();
    }

    @Override
    public void view(Frame frame) {
        Comparison whole = new Comparison(bench.desk().ledger().start(), now());
        int top = Math.max(2, (frame.height() - 18) / 2);
        frame.put(0, 2, Lines.fit(bench.demo().dish().name(), frame.width() - 4), Style.TITLE);
        int row = top;
        for (String line : Lines.wrap(caption(), frame.width() - 4)) {
            if (row < top + CAPTION_ROWS) {
                frame.put(row++, 2, line, Style.STRONG);
            }
        }
        saturated(frame, top + 2, whole);
        bar(frame, top + 9, whole);
        rest(frame, top + 11, whole);
        guide(frame, top + 14, whole.after());
        Keys.line(frame, List.of(Action.values()));
    }

    private static final int CAPTION_ROWS = 2;

    private String caption() {
        if (told == 0) {
            return "As it is cooked here";
        }
        Step step = steps().get(told - 1);
        return told + ". " + Names.title(step.planned().change(), bench.demo().dish(), bench.demo().plan());
    }

    private static void saturated(Frame frame, int row, Comparison whole) {
        var figure = whole.after().of(Nutrient.FASAT, Basis.SERVE);
        int at = BigDigits.draw(frame, row, 2, Written.number(figure.typical()));
        frame.put(row, at + 1, figure.atLeast() ? "grams at least" : "grams", Style.STRONG);
        frame.put(row + 1, at + 1, "of saturated fat", Style.STRONG);
        frame.put(row + 2, at + 1, "a serve", Style.STRONG);
        var saved = whole.saved(Nutrient.FASAT, Basis.SERVE).range();
        String words = Written.moved(Nutrient.FASAT, saved);
        if (!words.equals("same")) {
            frame.put(row + 4, at + 1, words + " in all", saved.typical() > 0 ? Style.GOOD : Style.WARN);
        }
    }

    private static void bar(Frame frame, int row, Comparison whole) {
        double was = whole.before().of(Nutrient.FASAT, Basis.SERVE).typical();
        double now = whole.after().of(Nutrient.FASAT, Basis.SERVE).typical();
        int room = frame.width() - 4;
        double most = Math.max(was, now);
        if (most > 0) {
            frame.put(row - 1, 2, String.valueOf(Glyphs.SHADE).repeat((int) Math.round(was / most * room)), Style.QUIET);
            frame.put(row - 1, 2, Glyphs.bar((int) Math.round(now / most * room * 8)), Style.BOARD);
        }
    }

    private void rest(Frame frame, int row, Comparison whole) {
        Totals now = whole.after();
        Currency currency = bench.desk().study().books().prices().currency();
        frame.put(row, 2, "energy", Style.QUIET);
        frame.put(row, 12, Written.figure(Nutrient.ENERC, now.of(Nutrient.ENERC, Basis.SERVE)) + " = "
                + Written.figure(Nutrient.ENERC_KCAL, now.of(Nutrient.ENERC_KCAL, Basis.SERVE)), Style.STRONG);
        put(frame, row, Written.moved(Nutrient.ENERC, whole.saved(Nutrient.ENERC, Basis.SERVE).range()));
        frame.put(row + 1, 2, "cost", Style.QUIET);
        frame.put(row + 1, 12, Written.money(now.used(Basis.SERVE), currency), Style.STRONG);
        put(frame, row + 1, Written.moved(whole.savedCost(Basis.SERVE), currency));
    }

    private static void put(Frame frame, int row, String moved) {
        frame.put(row, 38, moved.equals("same") ? "as before" : moved, Style.PLAIN);
    }

    private void guide(Frame frame, int row, Totals now) {
        bench.desk().study().guide(bench.demo().guide()).flatMap(guide -> guide.shareOf(Component.SATURATED, now)).ifPresent(share -> {
            int at = row - 1;
            for (String line : Lines.wrap(share.told(), frame.width() - 4)) {
                if (at < frame.height() - 1) {
                    frame.put(at++, 2, line, Style.PLAIN);
                }
            }
        });
    }
}
