package hobside.screen.practice;

import hobside.practice.Attempt;
import hobside.practice.Choice;
import hobside.practice.Outcome;
import hobside.practice.Task;
import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import java.util.List;

/** A planted fault is to be found: first the sentence, then what is wrong with it. */
record SpotScreen(Asking asking, Spot spot) implements Doing {

    /** The row under the cursor, and the sentence that was chosen; -1 before one is. */
    record Spot(int row, int sentence) {}

    private Task.Spot task() {
        return (Task.Spot) asking.exercise().task();
    }

    private boolean isNaming() {
        return spot.sentence() >= 0;
    }

    @Override
    public List<String> rows() {
        return isNaming() ? task().faults().choices().stream().map(Choice::words).toList() : task().sentences();
    }

    @Override
    public int cursor() {
        return spot.row();
    }

    @Override
    public Screen at(int row) {
        return new SpotScreen(asking, new Spot(row, spot.sentence()));
    }

    @Override
    public Next taken(int row) {
        if (!isNaming()) {
            return Next.to(new SpotScreen(asking, new Spot(0, row)));
        }
        Outcome outcome = task().spotted(spot.sentence(), row);
        String chosen = task().sentences().get(spot.sentence()) + " – " + rows().get(row);
        return asking.done(Attempt.Result.of(outcome), SaidScreen.of(asking, chosen, withSentence(outcome)));
    }

    /** Where another sentence was chosen, the planted one is quoted first. */
    private Outcome withSentence(Outcome outcome) {
        if (spot.sentence() == task().faulty()) {
            return outcome;
        }
        List<String> said = List.of("» " + task().sentences().get(task().faulty()), outcome.said().get(0));
        return new Outcome(outcome.score(), outcome.mistake(), said);
    }

    @Override
    public void view(Frame frame) {
        int row = Sheet.head(asking, frame);
        if (isNaming()) {
            row = Sheet.put(frame, row, task().sentences().get(spot.sentence()), Style.PLAIN) + 1;
        }
        Sheet.rows(frame, row, rows(), spot.row());
        Sheet.because(asking, frame);
        Keys.line(frame, List.of(Choosing.values()));
    }
}
