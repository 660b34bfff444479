package hobside.screen.advice;

import hobside.advice.Limits;
import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.Bench;

/** Advice over the Bench in one state: the page, where the cursor stands on it, and what was answered so far. */
public record AdviceScreen(Bench bench, Wanted wanted, Answers answers, Spot spot) implements Screen {

    /** The row, or the point of the frontier, that one stands on, and the last word said. */
    record Spot(int row, String said) {}

    public static AdviceScreen of(Bench bench) {
        return new AdviceScreen(bench, Wanted.FIRST, Answers.of(bench), new Spot(0, ""));
    }

    AdviceScreen asking(Wanted other) {
        return new AdviceScreen(bench, other, answers, new Spot(other.tab() == wanted.tab() ? spot.row() : 0, ""));
    }

    AdviceScreen at(int row) {
        return new AdviceScreen(bench, wanted, answers, new Spot(row, ""));
    }

    AdviceScreen saying(String words) {
        return new AdviceScreen(bench, wanted, answers, new Spot(spot.row(), words));
    }

    Limits limits() {
        return bench.demo().limits();
    }

    /** How many rows the page has to walk through. */
    int rows() {
        return switch (wanted.tab()) {
            case NEXT -> answers.next(wanted.rank()).size();
            case BEST -> 1;
            case FRONTIER -> answers.frontier().size();
            case CREDIT -> answers.credit().rows().size();
            case MYTHS -> answers.myths().size();
        };
    }

    /** The Bench has changed underneath: everything is asked anew. */
    Next over(Next next, String words) {
        return new Next(next.screen().map(screen -> screen instanceof Bench changed
                ? new AdviceScreen(changed, wanted, Answers.of(changed), new Spot(0, words)) : screen), next.effects());
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return AdviceUpdate.of(this, pressed.key()).orElseGet(() -> Next.to(at(Cursor.after(pressed.key(), spot.row(), Math.max(1, rows())))));
        }
        return message instanceof Message.Told ? bench.below(message, changed -> new AdviceScreen(changed, wanted, answers, spot)) : Next.to(this);
    }

    @Override
    public void view(Frame frame) {
        AdviceView.draw(this, frame);
    }
}
