package hobside.screen.practice;

import hobside.practice.Attempt;
import hobside.practice.Outcome;
import hobside.practice.Points;
import hobside.practice.Task;
import hobside.practice.rubric.Feedback;
import hobside.practice.rubric.Judged;
import hobside.practice.rubric.Rubric;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Typing;
import hobside.screen.Typed;
import hobside.screen.talk.Draft;
import hobside.screen.talk.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An answer in own words: typed here, or spoken aloud and then marked by oneself, point by point. */
record WriteScreen(Asking asking, Draft draft, String said) implements Screen {

    private static final int MARGIN = 3;

    /** Lines are moved through as on a screen of 60 columns; a wider one shows the same lines. */
    private static final int TYPED_WIDTH = 54;

    private static final int FIELD_ROWS = 5;

    /** The keys while one writes. */
    enum Action implements Keys.Bound {
        TAKE("enter", "that is it"),
        SPOKEN("ctrl-s f2", "I said it aloud"),
        OTHER("ctrl-x", "another"),
        LARGE("ctrl-l", "large"),
        UNDO("ctrl-z", "undo"),
        BACK("escape ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    private static final String SURE = "Escape again throws your words away; Enter takes them as they are.";

    static WriteScreen of(Asking asking) {
        return new WriteScreen(asking, Draft.of(""), "");
    }

    private WriteScreen with(Draft other) {
        return new WriteScreen(asking, other, "");
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Pasted pasted) {
            Draft with = draft.inserting(pasted.text().strip());
            return Next.to(with == draft ? new WriteScreen(asking, draft, Typing.TOO_LONG) : with(with));
        }
        return message instanceof Message.KeyPressed pressed ? pressed(pressed.key()) : Next.to(this);
    }

    private Next pressed(Key key) {
        return Keys.action(Action.values(), key).map(action -> act(action, key)).orElseGet(() -> Next.to(with(draft.after(key, TYPED_WIDTH))));
    }

    private Next act(Action action, Key key) {
        return switch (action) {
            case TAKE -> draft.text().isBlank() ? Next.to(new WriteScreen(asking, draft, "Write a sentence or two, or say it aloud and press Ctrl-S.")) : written();
            case SPOKEN -> spoken();
            case OTHER -> PracticeScreen.another(asking);
            case LARGE -> Next.to(new LargeScreen(with(draft), List.of(asking.exercise().prompt().asked()), 0));
            case UNDO -> Next.to(with(draft.after(key, TYPED_WIDTH)));
            case BACK -> draft.text().isBlank() || said.equals(SURE) ? Next.to(PracticeScreen.of(asking.room(), asking.trainee(), ""))
                    : Next.to(new WriteScreen(asking, draft, SURE));
        };
    }

    private Next written() {
        if (asking.exercise().task() instanceof Task.AskBack back) {
            Outcome outcome = back.rules().judged(draft.text());
            Attempt.Result result = new Attempt.Result(outcome.score(), outcome.mistake(), Map.of(), draft.text());
            return asking.done(result, SaidScreen.of(asking, draft.text(), withModel(outcome, back.model())));
        }
        Feedback feedback = rubric().mark(draft.text());
        return marked(feedback, draft.text());
    }

    private static Outcome withModel(Outcome outcome, String model) {
        return new Outcome(outcome.score(), outcome.mistake(), List.of(outcome.said().get(0), "For example: " + model));
    }

    private Rubric rubric() {
        return asking.room().rubric(asking.exercise());
    }

    /** Nothing was typed: the points stand there without a mark, and one marks oneself. */
    private Next spoken() {
        if (asking.exercise().task() instanceof Task.AskBack) {
            return Next.to(new WriteScreen(asking, draft, "Type this one: its rules look at the words of the question."));
        }
        Map<String, String> marks = new LinkedHashMap<>();
        Points.asked(asking.exercise().label()).forEach(point -> marks.put(point, "unsure"));
        return asking.done(Points.result(Points.asked(asking.exercise().label()), marks, ""), MarkedScreen.spoken(asking, rubric().mark(""), marks));
    }

    private Next marked(Feedback feedback, String words) {
        List<String> asked = Points.asked(asking.exercise().label());
        Map<String, String> marks = new LinkedHashMap<>();
        for (Judged judged : feedback.points()) {
            marks.put(judged.point().word(), judged.mark().word());
        }
        // A wrong figure or a promise is heard by the room, however much else was right.
        if (!feedback.truth().isEmpty()) {
            marks.put("true", Points.NO);
        }
        return asking.done(Points.result(asked, marks, words), MarkedScreen.of(asking, feedback, marks));
    }

    @Override
    public Optional<Typed> typed() {
        return draft.text().isEmpty() ? Optional.empty() : Optional.of(new Typed(Typed.About.NOTHING, asking.exercise().prompt().asked(), draft.text()));
    }

    @Override
    public void view(Frame frame) {
        int top = Sheet.head(asking, frame);
        Page page = Page.of(draft.text(), Math.min(TYPED_WIDTH, frame.width() - 2 * MARGIN));
        int rows = Math.max(FIELD_ROWS, Math.min(page.size(), frame.height() - top - 3));
        int first = Math.max(0, Math.min(page.rowOf(draft.caret()) - rows + 1, page.size() - rows));
        for (int row = 0; row < rows; row++) {
            frame.put(top + row, MARGIN, " ".repeat(TYPED_WIDTH), Style.FIELD);
            if (first + row < page.size()) {
                frame.put(top + row, MARGIN, page.line(first + row), Style.FIELD);
            }
        }
        frame.caret(top + page.rowOf(draft.caret()) - first, MARGIN + page.columnOf(draft.caret()));
        if (said.isEmpty()) {
            Sheet.because(asking, frame);
        }
        frame.put(frame.height() - 2, 1, said, Style.WARN);
        Keys.line(frame, List.of(Action.values()));
    }
}
