package hobside.screen.practice;

import hobside.practice.Outcome;
import hobside.practice.Task;
import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.desk.Answer;
import java.util.List;

/** What is said back to an answer that was chosen. */
record SaidScreen(Asking asking, String chosen, Outcome outcome, String trouble) implements Screen {

    /** The keys after an answer. */
    enum Action implements Keys.Bound {
        ON("enter space", "next exercise"),
        PERSON("n", "next person"),
        MINE("m", "my page"),
        BACK("escape q ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    static SaidScreen of(Asking asking, String chosen, Outcome outcome) {
        return new SaidScreen(asking, chosen, outcome, "");
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Logged logged) {
            return Next.to(new SaidScreen(asking.in(asking.room().hearing(logged.entry())), chosen, outcome, logged.trouble().orElse("")));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> Next.to(this));
        }
        return Next.to(this);
    }

    private Next act(Action action) {
        return switch (action) {
            case ON -> PracticeScreen.next(asking.room(), asking.trainee());
            case PERSON -> PracticeScreen.nextPerson(asking.room(), asking.trainee());
            case MINE -> Next.to(MyPage.of(this, asking.room(), asking.trainee()));
            case BACK -> Next.to(PracticeScreen.of(asking.room(), asking.trainee(), ""));
        };
    }

    @Override
    public void view(Frame frame) {
        int row = Sheet.head(asking, frame);
        String sign = outcome.score() == 1 ? "+ right" : outcome.score() > 0 ? "~ partly right" : "- not yet";
        frame.put(row++, 1, sign, outcome.score() == 1 ? Style.GOOD : Style.STRONG);
        row = Sheet.put(frame, row, "You answered: " + chosen, Style.QUIET) + 1;
        for (String words : outcome.said()) {
            row = Sheet.put(frame, row, words, Style.PLAIN);
        }
        row = right(frame, row);
        for (String words : asking.exercise().truth()) {
            row = Sheet.put(frame, row + 1, words, Style.PLAIN);
        }
        frame.put(frame.height() - 2, 1, Lines.fit(trouble, frame.width() - 2), Style.WARN);
        Keys.line(frame, List.of(Action.values()));
    }

    /** The right answer, where another one was chosen. */
    private int right(Frame frame, int row) {
        boolean choice = asking.exercise().task() instanceof Task.Choose && outcome.score() < 1;
        if (!choice) {
            return row;
        }
        Task.Choose choose = (Task.Choose) asking.exercise().task();
        return Sheet.put(frame, row + 1, "The right answer: " + choose.choices().get(choose.right()).words(), Style.STRONG);
    }
}
