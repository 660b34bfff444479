package hobside.screen.practice;

import hobside.practice.Attempt;
import hobside.practice.Outcome;
import hobside.practice.Task;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Changes are to be put in order: space takes one in hand, the arrows move it, Enter says that the order stands. */
record ArrangeScreen(Asking asking, List<Task.Arrange.Weighed> order, Hand hand) implements Doing {

    /** The row under the cursor, and whether it is in hand. */
    record Hand(int row, boolean holds) {}

    ArrangeScreen {
        order = List.copyOf(order);
    }

    @Override
    public List<String> rows() {
        return order.stream().map(Task.Arrange.Weighed::words).toList();
    }

    @Override
    public int cursor() {
        return hand.row();
    }

    @Override
    public Screen at(int row) {
        if (!hand.holds() || row == hand.row()) {
            return new ArrangeScreen(asking, order, new Hand(row, hand.holds()));
        }
        List<Task.Arrange.Weighed> moved = new ArrayList<>(order);
        Collections.rotate(moved.subList(Math.min(row, hand.row()), Math.max(row, hand.row()) + 1), row < hand.row() ? 1 : -1);
        return new ArrangeScreen(asking, moved, new Hand(row, true));
    }

    /** A digit moves the row in hand, or goes to one; only Enter ends it. */
    @Override
    public Optional<Next> own(Key key) {
        boolean digit = key.kind() == Key.Kind.CHARACTER && key.codePoint() >= '1' && key.codePoint() < '1' + order.size();
        if (digit) {
            return Optional.of(Next.to(at(key.codePoint() - '1')));
        }
        return Choosing.LIFT.binding().isFor(key) ? Optional.of(Next.to(new ArrangeScreen(asking, order, new Hand(hand.row(), !hand.holds())))) : Optional.empty();
    }

    @Override
    public Next taken(int row) {
        Outcome outcome = ((Task.Arrange) asking.exercise().task()).arranged(order);
        String chosen = rows().stream().collect(Collectors.joining("; "));
        return asking.done(Attempt.Result.of(outcome), SaidScreen.of(asking, chosen, outcome));
    }

    @Override
    public void view(Frame frame) {
        Sheet.rows(frame, Sheet.head(asking, frame), rows(), hand.row());
        String said = hand.holds() ? "In hand: the arrows move it, space puts it down." : "Space takes a row in hand; Enter when the order stands.";
        frame.put(frame.height() - 2, 1, said, Style.QUIET);
        Keys.line(frame, List.of(Choosing.values()));
    }
}
