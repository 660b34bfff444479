package hobside.screen.steps;

import hobside.dish.MethodStep;
import hobside.dish.Stage;
import hobside.file.Limits;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.Typed;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.screen.bench.Bench;
import hobside.screen.bench.BenchView;
import java.util.ArrayList;
import java.util.List;

/** Writes and changes the steps of the dish on the bench. Every step is kept as the Bench keeps its own. */
public record StepsScreen(Bench bench, int cursor) implements Screen {

    private static final int MINUTES = 9;

    /** The keys of the steps. */
    enum Action implements Keys.Bound {
        ADD("a", "add", "Write a step below this one."),
        WORDS("e enter", "edit", "Change the words of this step."),
        MINUTES("t", "minutes", "Say how long it takes."),
        STAGE("w", "when", "Move it to the next stage: prepare, brown, simmer, finish, serve."),
        UP("<", "earlier", "Earlier."),
        DOWN(">", "later", "Later."),
        REMOVE("x delete", "out", "Take this step out."),
        UNDO("u", "undo", "Take back the last change."),
        BACK("escape q ctrl-c", "back", "Back to the Bench.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    public static StepsScreen of(Bench bench) {
        return new StepsScreen(bench, 0);
    }

    private List<MethodStep> steps() {
        return bench.demo().dish().method();
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> moved(pressed.key()));
        }
        return message instanceof Message.Told ? below(bench.update(message), cursor) : Next.to(this);
    }

    private Next moved(Key key) {
        return Next.to(new StepsScreen(bench, Cursor.after(key, cursor, Math.max(1, steps().size()))));
    }

    private Next act(Action action) {
        return switch (action) {
            case ADD -> ask("A new step", "", words -> added(new MethodStep(stageHere(), words, 0)));
            case WORDS -> steps().isEmpty() ? act(Action.ADD)
                    : ask("This step", here().words(), words -> replaced(here().saying(words)));
            case MINUTES -> steps().isEmpty() ? Next.to(this) : askMinutes();
            case STAGE -> steps().isEmpty() ? Next.to(this) : replaced(here().at(next(here().stage())));
            case UP -> shifted(-1);
            case DOWN -> shifted(1);
            case REMOVE -> steps().isEmpty() ? Next.to(this) : removed();
            case UNDO -> bench.undone().map(next -> below(next, cursor)).orElseGet(() -> Next.to(this));
            case BACK -> Next.to(bench);
        };
    }

    private MethodStep here() {
        return steps().get(Math.min(cursor, steps().size() - 1));
    }

    private Stage stageHere() {
        return steps().isEmpty() ? Stage.PREPARE : here().stage();
    }

    private static Stage next(Stage stage) {
        return Stage.values()[(stage.ordinal() + 1) % Stage.values().length];
    }

    private interface With {
        Next next(String words);
    }

    private Next ask(String title, String first, With then) {
        return Next.to(LineScreen.of(this, new Question(title, "do", List.of("What the hands do, in one or two short sentences."
                + " {onions} with the name of an ingredient in braces is read as whatever takes its place today."), first,
                words -> words.isEmpty() || words.length() > Limits.STEP ? Reply.wrong("A step needs 1 to " + Limits.STEP + " letters.") : Reply.go(then.next(words)))));
    }

    private Next askMinutes() {
        return Next.to(LineScreen.of(this, new Question("About how many minutes?", "minutes", List.of("A whole number; 0 leaves it out."),
                String.valueOf(here().minutes()), text -> text.matches("\\d{1,5}") && Integer.parseInt(text) <= Limits.MINUTES
                        ? Reply.go(replaced(here().taking(Integer.parseInt(text))))
                        : Reply.wrong("\"" + text + "\" is not a whole number of minutes, ten days at most."))));
    }

    private Next added(MethodStep step) {
        List<MethodStep> more = new ArrayList<>(steps());
        int at = more.isEmpty() ? 0 : cursor + 1;
        more.add(Math.min(at, more.size()), step);
        return with(more, at);
    }

    private Next replaced(MethodStep step) {
        List<MethodStep> others = new ArrayList<>(steps());
        others.set(cursor, step);
        return with(others, cursor);
    }

    private Next removed() {
        List<MethodStep> fewer = new ArrayList<>(steps());
        fewer.remove(cursor);
        return with(fewer, Math.max(0, Math.min(cursor, fewer.size() - 1)));
    }

    private Next shifted(int by) {
        int to = cursor + by;
        if (to < 0 || to >= steps().size()) {
            return Next.to(this);
        }
        List<MethodStep> others = new ArrayList<>(steps());
        others.add(to, others.remove(cursor));
        return with(others, to);
    }

    private Next with(List<MethodStep> steps, int row) {
        return below(bench.changed(bench.demo().with(bench.demo().dish().withMethod(steps)), ""), row);
    }

    /** The Bench goes on underneath; this screen stays on top of it. */
    private static Next below(Next next, int row) {
        return new Next(next.screen().map(screen -> screen instanceof Bench changed
                ? new StepsScreen(changed, Math.max(0, Math.min(row, changed.demo().dish().method().size() - 1))) : screen), next.effects());
    }

    @Override
    public Typed.About whereTyped() {
        return new Typed.About(bench.whereTyped().demo(), bench.whereTyped().dish(), "");
    }

    @Override
    public void view(Frame frame) {
        BenchView.title(bench, frame, "Steps");
        if (steps().isEmpty()) {
            frame.put(3, 3, "No step is written yet. Press a for the first one.", Style.PLAIN);
        }
        int room = frame.height() - 8;
        int first = Lines.firstShown(cursor, steps().size(), room);
        for (int i = 0; i < room && first + i < steps().size(); i++) {
            row(frame.part(new Area(2 + i, 0, 1, frame.width())), steps().get(first + i), first + i == cursor);
        }
        whole(frame);
        Keys.line(frame, List.of(Action.values()));
    }

    private static void row(Frame line, MethodStep step, boolean here) {
        line.put(0, 3, step.stage().word(), Style.QUIET);
        int end = line.width() - 2;
        line.put(0, 12, Lines.fit(step.words(), end - MINUTES - 12), Style.PLAIN);
        line.putRight(0, end, step.minutes() == 0 ? "" : step.minutes() + " min", Style.QUIET);
        Cursor.mark(line, here);
    }

    /** The step under the cursor in full. */
    private void whole(Frame frame) {
        int row = frame.height() - 6;
        frame.horizontal(row++, 0, frame.width() - 1);
        if (!steps().isEmpty()) {
            for (String line : Lines.wrap(here().words(), frame.width() - 2)) {
                if (row < frame.height() - 1) {
                    frame.put(row++, 1, line, Style.PLAIN);
                }
            }
        }
    }
}
