package hobside.screen.talk;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Typing;
import hobside.screen.Typed;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.talk.Cue;
import hobside.talk.Editing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Writing the words of one cue: the text with its live figures as gaps, below it how it will sound, and what the check has to say
 * while one types.
 *
 */
record WordsScreen(TalkScreen talk, Draft draft, Remarks remarks, Said said) implements Screen {

    /** So many columns are left free on either side of the text. */
    private static final int MARGIN = 3;

    /**
     * What is said to the user.
     *
     * @param fresh the cue is a new one, to stand after the one under the cursor
     */
    record Said(boolean fresh, String words) {}

    private boolean fresh() {
        return said.fresh();
    }

    /** The keys of the editor. */
    enum Action implements Keys.Bound {
        TAKE("enter", "take it"),
        FIGURE("ctrl-f f2", "live figure"),
        SPLIT("ctrl-t", "split here"),
        UNDO("ctrl-z", "undo"),
        REDO("ctrl-y", ""),
        EMPTY("ctrl-u", "empty"),
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

    private static final String SURE = "Escape again throws your words away; Enter keeps them.";

    static WordsScreen of(TalkScreen talk) {
        return new WordsScreen(talk, Draft.of(talk.cue().raw()), Remarks.of(talk), new Said(false, ""));
    }

    static WordsScreen added(TalkScreen talk) {
        return new WordsScreen(talk, Draft.of(""), Remarks.of(talk), new Said(true, ""));
    }

    private WordsScreen with(Draft other) {
        return new WordsScreen(talk, other, remarks, new Said(fresh(), ""));
    }

    private WordsScreen saying(String words) {
        return new WordsScreen(talk, draft, remarks, new Said(fresh(), words));
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Pasted pasted) {
            Draft with = draft.inserting(pasted.text().strip());
            return Next.to(with == draft ? saying(Typing.TOO_LONG) : with(with));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return message instanceof Message.Told ? talk.bench().below(message, changed -> new WordsScreen(TalkScreen.at(changed, talk.cursor(), ""), draft, remarks, said))
                : Next.to(this);
    }

    private Next pressed(Key key) {
        Optional<Action> action = Keys.action(Action.values(), key);
        if (action.isEmpty()) {
            return Next.to(with(draft.after(key, TYPED_WIDTH)));
        }
        return switch (action.get()) {
            case TAKE -> taken();
            case FIGURE -> figures();
            case SPLIT -> split();
            case UNDO, REDO, EMPTY -> Next.to(with(draft.after(key, TYPED_WIDTH)));
            case BACK -> back();
        };
    }

    /** Changed words are thrown away only by a second key that follows the first. */
    private Next back() {
        if (typed().isPresent() && !said.words().equals(SURE)) {
            return Next.to(saying(SURE));
        }
        return Next.to(talk.saying(draft.before().isEmpty() ? "" : "As it was before."));
    }

    /** Lines are moved through as on a screen of 80 columns; a wider one shows the same lines. */
    static final int TYPED_WIDTH = 54;

    private Next taken() {
        if (fresh()) {
            Editing.Outcome outcome = talk.editing().added(talk.cue(), Cue.Kind.SAY, draft.text());
            return outcome.isRefused() ? Next.to(saying(outcome.refusal()))
                    : talk.edited(outcome, talk.script().freshKey(), "Added. k changes its kind, < and > move it.");
        }
        if (draft.text().equals(talk.cue().raw())) {
            return Next.to(talk.saying(""));
        }
        Editing.Outcome outcome = talk.editing().worded(talk.cue(), draft.text());
        return outcome.isRefused() ? Next.to(saying(outcome.refusal())) : talk.edited(outcome, talk.cue().key(), "In your words. z brings the program's back.");
    }

    private Next split() {
        if (fresh()) {
            return Next.to(saying("Take it first; then it can be split."));
        }
        Editing.Outcome outcome = talk.editing().split(talk.cue(), draft.text().substring(0, draft.caret()), draft.text().substring(draft.caret()));
        return outcome.isRefused() ? Next.to(saying(outcome.refusal())) : talk.edited(outcome, talk.cue().key(), "Split in two.");
    }

    /** What the ledger knows here, each with what would be said. */
    private Next figures() {
        List<Menu.Row> rows = new ArrayList<>();
        List<String> names = new ArrayList<>();
        new TreeMap<>(talk.section().figures()).forEach((name, value) -> {
            names.add(name);
            rows.add(new Menu.Row("{" + name + "}", Lines.fit(value, 40), value));
        });
        return Next.to(MenuScreen.of(with(draft), new Menu("Live figures", "It follows the dish: whatever is changed later, the words stay true.", rows,
                index -> Next.to(with(draft.inserting("{" + names.get(index) + "}")))), 0));
    }

    /** The words as they will be said, figures filled in. */
    String sounded() {
        return talk.bench().desk().study().words(talk.script().language()).filled(draft.text(), gap -> Optional.ofNullable(talk.section().figures().get(gap)));
    }

    /** The same cue with other words in the field. */
    WordsScreen with(String words) {
        return with(Draft.of(words));
    }

    @Override
    public Optional<Typed> typed() {
        boolean untouched = draft.text().equals(fresh() ? "" : talk.cue().raw());
        return untouched ? Optional.empty() : Optional.of(new Typed(talk.whereTyped(), asked(), draft.text()));
    }

    String asked() {
        return fresh() ? "A new cue after this one" : "The words of a cue in: " + talk.section().heading();
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, fresh() ? "A new cue after this one" : talk.section().heading(), Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
        Page page = Page.of(draft.text(), Math.min(TYPED_WIDTH, frame.width() - 2 * MARGIN));
        int rows = Math.min(page.size(), frame.height() - 9);
        int first = Math.max(0, Math.min(page.rowOf(draft.caret()) - rows + 1, page.size() - rows));
        for (int row = 0; row < Math.max(rows, 3); row++) {
            frame.put(2 + row, MARGIN, " ".repeat(TYPED_WIDTH), Style.FIELD);
            if (row < rows) {
                frame.put(2 + row, MARGIN, page.line(first + row), Style.FIELD);
            }
        }
        frame.caret(2 + page.rowOf(draft.caret()) - first, MARGIN + page.columnOf(draft.caret()));
        below(frame, 3 + Math.max(rows, 3));
        Keys.line(frame, List.of(Action.values()));
    }

    private void below(Frame frame, int from) {
        int row = from;
        frame.put(row++, 1, "It will sound like this:", Style.HEADING);
        for (String line : Lines.wrap(sounded(), frame.width() - 2 * MARGIN)) {
            if (row < frame.height() - 2) {
                frame.put(row++, MARGIN, line, Style.PLAIN);
            }
        }
        Frame rest = frame.part(new Area(row + 1, 0, Math.max(0, frame.height() - row - 2), frame.width()));
        if (!said.words().isEmpty()) {
            frame.put(frame.height() - 2, 1, Lines.fit(said.words(), frame.width() - 2), Style.WARN);
        } else {
            remarks.draw(this, rest);
        }
    }
}
