package hobside.screen.asked;

import hobside.file.Scripts;
import hobside.file.Study;
import hobside.file.WordFiles;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.Typing;
import hobside.screen.bench.Bench;
import hobside.stage.whatif.AnswerIndex;
import hobside.stage.whatif.PreparedAnswers;
import hobside.talk.Demo;
import hobside.talk.Stand;
import java.util.List;

/**
 * Somebody asks: what is typed finds the prepared answer that fits best, shown in full. Where nothing fits, that is said, and the
 * question can be noted; an answer is never made up.
 *
 * @param below the screen to go back to, and what is done with the question
 * @param typing the question in the words of whoever asks
 */
public record AskedScreen(Below below, AnswerIndex index, Typing typing, List<AnswerIndex.Hit> hits, int cursor) implements Screen {

    private static final int MOST = 40;

    /** The keys. Letters are typed, so all else is a key of its own. */
    enum Action implements Keys.Bound {
        CHOOSE("down up", ""),
        ANSWERED("enter", "answered"),
        LATER("ctrl-n", "note for later"),
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

    /** What it stands over. */
    record Below(Screen back, Noted noted) {}

    public static AskedScreen of(Screen back, Bench bench, Noted noted) {
        return asked(new Below(back, noted), index(bench), Typing.EMPTY);
    }

    /** The prepared answers of the demo on the bench, found by words of any language there is. */
    static AnswerIndex index(Bench bench) {
        Study study = bench.desk().study();
        Demo demo = bench.demo();
        String own = demo.script().language();
        List<Stand> others = WordFiles.LANGUAGES.stream().filter(code -> !code.equals(own))
                .map(code -> Scripts.stand(demo.with(demo.script().in(code)), study)).toList();
        return AnswerIndex.of(PreparedAnswers.of(Scripts.stand(demo, study), others, study.pantry(), study.books()),
                WordFiles.LANGUAGES.stream().map(study::words).toList());
    }

    private static AskedScreen asked(Below below, AnswerIndex index, Typing typing) {
        return new AskedScreen(below, index, typing, index.find(typing.text(), MOST), 0);
    }

    public AskedScreen {
        hits = List.copyOf(hits);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        if (message instanceof Message.Pasted pasted) {
            return Next.to(asked(below, index, typing.inserting(pasted.text().strip())));
        }
        return Over.relayed(below.back(), message, back -> new AskedScreen(new Below(back, below.noted()), index, typing, hits, cursor));
    }

    private Next pressed(Key key) {
        return Keys.action(Action.values(), key).map(action -> act(action, key)).orElseGet(() -> typed(key));
    }

    private Next act(Action action, Key key) {
        return switch (action) {
            case ANSWERED -> hits.isEmpty() ? later() : below.noted().noted(question(), true);
            case LATER -> later();
            case CHOOSE -> Next.to(at(Cursor.after(key, cursor, Math.max(1, hits.size()))));
            case BACK -> Next.to(below.back());
        };
    }

    /** Nothing was typed, nothing is noted. */
    private Next later() {
        return typing.text().isBlank() ? Next.to(this) : below.noted().noted(typing.text().strip(), false);
    }

    /** As it was asked; where an answer was only chosen from the list, as it was foreseen. */
    private String question() {
        return typing.text().isBlank() ? hits.get(cursor).prepared().question() : typing.text().strip();
    }

    private AskedScreen at(int row) {
        return new AskedScreen(below, index, typing, hits, row);
    }

    private Next typed(Key key) {
        Typing after = typing.after(key);
        return Next.to(after.text().equals(typing.text())
                ? new AskedScreen(below, index, after, hits, Cursor.after(key, cursor, Math.max(1, hits.size()))) : asked(below, index, after));
    }

    @Override
    public void view(Frame frame) {
        AskedView.draw(this, frame);
        Keys.line(frame, hits.isEmpty() ? List.of(Action.LATER, Action.BACK) : List.of(Action.values()));
    }
}
