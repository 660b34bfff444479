package hobside.screen.asked;

import hobside.file.Scripts;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.Bench;
import hobside.stage.whatif.ChangedWords;
import hobside.stage.whatif.Missing;
import hobside.stage.whatif.Remedy;
import hobside.stage.whatif.Ways;
import hobside.talk.Demo;
import hobside.talk.Talk;
import java.util.List;
import java.util.Optional;

/**
 * Something is missing or spoilt: which ingredient, then what can be done, the best first, with what it does to the plan and which
 * words of the talk change.
 */
public record MissingScreen(Over over, Talk talk, Pick pick, Optional<Found> found) implements Screen {

    /** The keys, on the ingredients and on what can be done. */
    enum Action implements Keys.Bound {
        CHOOSE("enter", "it is missing"),
        KEEP("enter", "keep it"),
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

    /** What can be done about one ingredient, where the cursor stands, and the words that change with that. */
    record Found(String missing, List<Remedy> remedies, int cursor, List<ChangedWords.Row> words) {

        Found {
            remedies = List.copyOf(remedies);
            words = List.copyOf(words);
        }

        Remedy chosen() {
            return remedies.get(cursor);
        }
    }

    public static MissingScreen of(Screen back, Bench bench, Keep keep) {
        Over over = Over.of(back, bench, keep);
        Talk talk = Scripts.talk(over.demo(), bench.desk().study());
        List<Ways.Row> rows = Ways.ingredients(over.demo()).stream().filter(row -> !row.now().equals("left out")).toList();
        return new MissingScreen(over, talk, Pick.of(rows, 0), Optional.empty());
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return found.isPresent() ? onRemedies(pressed.key(), found.get()) : onIngredients(pressed.key());
        }
        return message instanceof Message.Pasted ? Next.to(this)
                : Over.relayed(over.back(), message, back -> new MissingScreen(over.with(back), talk, pick, found));
    }

    private Next onIngredients(Key key) {
        if (Action.BACK.binding().isFor(key)) {
            return Next.to(over.back());
        }
        return Next.to(Action.CHOOSE.binding().isFor(key) && !pick.rows().isEmpty() ? missing() : new MissingScreen(over, talk, pick.after(key), found));
    }

    private MissingScreen missing() {
        List<Remedy> remedies = Missing.of(over.whatIf(), pick.chosen().id(), over.bench().desk().demoShelf());
        return showing(new Found(Missing.named(over.whatIf(), pick.chosen().id()), remedies, 0, List.of()));
    }

    private MissingScreen showing(Found other) {
        Demo demo = other.chosen().notion().demo();
        List<ChangedWords.Row> words = ChangedWords.of(talk, Scripts.talk(demo, over.bench().desk().study()));
        return new MissingScreen(over, talk, pick, Optional.of(new Found(other.missing(), other.remedies(), other.cursor(), words)));
    }

    private Next onRemedies(Key key, Found now) {
        if (Action.BACK.binding().isFor(key)) {
            return Next.to(new MissingScreen(over, talk, pick, Optional.empty()));
        }
        if (Action.KEEP.binding().isFor(key)) {
            Remedy chosen = now.chosen();
            return over.keep().keep(chosen.notion().demo(), "The " + now.missing() + " is missing: " + chosen.label() + ".");
        }
        int row = Cursor.after(key, now.cursor(), now.remedies().size());
        return Next.to(row == now.cursor() ? this : showing(new Found(now.missing(), now.remedies(), row, List.of())));
    }

    @Override
    public void view(Frame frame) {
        MissingView.draw(this, frame);
        Keys.line(frame, List.of(found.isPresent() ? Action.KEEP : Action.CHOOSE, Action.BACK));
    }
}
