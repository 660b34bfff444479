package hobside.screen.ask;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.Typed;
import java.util.List;
import java.util.Optional;

/** Asks one question over the lower part of the screen one came from. Enter answers, Escape goes back. */
public record LineScreen(Screen back, Question question, Typing typing, String problem) implements Screen {

    private static final int ROWS = 8;

    /** The keys of every question. */
    enum Action implements Keys.Bound {
        ANSWER("enter", "take it"),
        BACK("escape ctrl-c", "back"),
        EMPTY("ctrl-u", "empty the line");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    public static LineScreen of(Screen back, Question question) {
        return new LineScreen(back, question, Typing.of(question.first()), "");
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Pasted pasted) {
            Typing with = typing.inserting(pasted.text().strip());
            return Next.to(new LineScreen(back, question, with, with == typing ? Typing.TOO_LONG : ""));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return message.isNews() ? back.update(message).over(below -> new LineScreen(below, question, typing, problem)) : Next.to(this);
    }

    private Next pressed(Key key) {
        if (key.kind() == Key.Kind.ENTER) {
            Question.Reply reply = question.then().with(typing.text().strip());
            return reply.next().orElseGet(() -> Next.to(new LineScreen(back, question, typing, reply.problem())));
        }
        if (Action.BACK.binding().isFor(key)) {
            return Next.to(back);
        }
        return Next.to(new LineScreen(back, question, typing.after(key), ""));
    }

    /** The same question with another text in the line. */
    public LineScreen with(String text) {
        return new LineScreen(back, question, Typing.EMPTY.inserting(text), "");
    }

    /** A line that still says what it said to begin with is nothing that was typed. */
    @Override
    public Optional<Typed> typed() {
        boolean untouched = typing.fresh() || typing.text().equals(question.first());
        return untouched ? back.typed() : Optional.of(new Typed(back.whereTyped(), asked(), typing.text()));
    }

    /** Some questions ask for two things one after the other, under the same title. */
    public String asked() {
        return question.title() + " (" + question.label() + ")";
    }

    @Override
    public Typed.About whereTyped() {
        return back.whereTyped();
    }

    @Override
    public void view(Frame frame) {
        back.view(frame);
        Frame panel = frame.part(new Area(frame.height() - ROWS, 0, ROWS, frame.width()));
        panel.fill(' ', Style.PLAIN);
        panel.horizontal(0, 0, panel.width() - 1);
        panel.put(1, 1, question.title(), Style.TITLE);
        panel.put(2, 1, question.label(), Style.PLAIN);
        int column = TextWidth.of(question.label()) + 2;
        typing.draw(panel, 2, column, panel.width() - column - 1);
        below(panel);
        Keys.line(panel, List.of(Action.values()));
    }

    private void below(Frame panel) {
        List<String> words = problem.isEmpty() ? question.hints() : List.of(problem);
        int row = 3;
        for (String hint : words) {
            for (String line : Lines.wrap(hint, panel.width() - 2)) {
                if (row < panel.height() - 1) {
                    panel.put(row++, 1, line, problem.isEmpty() ? Style.QUIET : Style.WARN);
                }
            }
        }
    }
}
