package hobside.screen.practice;

import hobside.practice.Attempt;
import hobside.practice.Choice;
import hobside.practice.Outcome;
import hobside.practice.Task;
import hobside.screen.Next;
import hobside.screen.Screen;
import java.util.List;

/** One of several answers is to be chosen. */
record ChooseScreen(Asking asking, int cursor) implements Doing {

    private Task.Choose task() {
        return (Task.Choose) asking.exercise().task();
    }

    @Override
    public List<String> rows() {
        return task().choices().stream().map(Choice::words).toList();
    }

    @Override
    public Screen at(int row) {
        return new ChooseScreen(asking, row);
    }

    @Override
    public Next taken(int row) {
        Outcome outcome = task().chosen(row);
        return asking.done(Attempt.Result.of(outcome), SaidScreen.of(asking, rows().get(row), outcome));
    }
}
