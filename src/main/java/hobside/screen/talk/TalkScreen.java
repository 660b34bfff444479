package hobside.screen.talk;

import hobside.file.Scripts;
import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Typed;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.LineScreen;
import hobside.screen.bench.Bench;
import hobside.talk.Cue;
import hobside.talk.Editing;
import hobside.talk.Script;
import hobside.talk.Talk;
import java.util.List;
import java.util.Optional;

/** The talk over the Bench in one state: its cues, and the one under the cursor. The talk is written once for each state. */
public final class TalkScreen implements Screen {

    private final Bench bench;
    private final Talk talk;
    private final int cursor;
    private final String said;

    private TalkScreen(Bench bench, Talk talk, int cursor, String said) {
        this.bench = bench;
        this.talk = talk;
        this.cursor = Math.max(0, Math.min(cursor, talk.cues().size() - 1));
        this.said = said;
    }

    public static TalkScreen of(Bench bench) {
        return at(bench, 0, "");
    }

    static TalkScreen at(Bench bench, int cursor, String said) {
        return new TalkScreen(bench, Scripts.talk(bench.demo(), bench.desk().study()), cursor, said);
    }

    /** What was being typed on the talk when the program was stopped, asked again at its cue; empty when it was typed elsewhere. */
    public static Optional<Screen> goingOn(Bench bench, Typed left) {
        TalkScreen talk = of(bench);
        for (int row = 0; row < talk.talk.cues().size(); row++) {
            if (talk.talk.cues().get(row).key().equals(left.about().spot())) {
                return asked(talk.to(row), left);
            }
        }
        return Optional.empty();
    }

    private static Optional<Screen> asked(TalkScreen talk, Typed left) {
        for (WordsScreen words : List.of(WordsScreen.of(talk), WordsScreen.added(talk))) {
            if (words.asked().equals(left.asked())) {
                return Optional.of(words.with(left.text()));
            }
        }
        for (Next next : List.of(TalkQuestions.seconds(talk), TalkQuestions.things(talk), TalkQuestions.rate(talk))) {
            if (next.screen().orElseThrow() instanceof LineScreen line && line.asked().equals(left.asked())) {
                return Optional.of(line.with(left.text()));
            }
        }
        return Optional.empty();
    }

    public Bench bench() {
        return bench;
    }

    Talk talk() {
        return talk;
    }

    int cursor() {
        return cursor;
    }

    String said() {
        return said;
    }

    Script script() {
        return bench.demo().script();
    }

    Cue cue() {
        return talk.cues().get(cursor);
    }

    /** The section that the cue under the cursor stands in. */
    Talk.Section section() {
        return talk.sections().stream().filter(section -> section.cues().contains(cue())).findFirst().orElseThrow();
    }

    Editing editing() {
        return new Editing(talk, script());
    }

    TalkScreen saying(String words) {
        return new TalkScreen(bench, talk, cursor, words);
    }

    TalkScreen to(int row) {
        return new TalkScreen(bench, talk, row, "");
    }

    /** After an edit: kept at once, and the cursor on the cue of this key, or where it was. */
    Next edited(Editing.Outcome outcome, String key, String words) {
        return outcome.isRefused() ? Next.to(saying(outcome.refusal())) : changed(outcome.script(), key, words);
    }

    Next changed(Script script, String key, String words) {
        return over(bench.changed(bench.demo().with(script), ""), key, words);
    }

    /** The Bench goes on underneath; this screen stays on top of it. */
    Next over(Next next, String key, String words) {
        Optional<Screen> screen = next.screen().map(each -> each instanceof Bench changed ? found(changed, key, words) : each);
        return new Next(screen, next.effects());
    }

    private Screen found(Bench changed, String key, String words) {
        TalkScreen there = at(changed, cursor, words);
        List<Cue> cues = there.talk.cues();
        for (int i = 0; i < cues.size(); i++) {
            if (cues.get(i).key().equals(key)) {
                return new TalkScreen(changed, there.talk, i, words);
            }
        }
        return there;
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return TalkUpdate.of(this, pressed.key()).orElseGet(() -> Next.to(to(Cursor.after(pressed.key(), cursor, talk.cues().size()))));
        }
        return message instanceof Message.Told ? bench.below(message, changed -> at(changed, cursor, changed.said().isEmpty() ? said : changed.said())) : Next.to(this);
    }

    @Override
    public Typed.About whereTyped() {
        return new Typed.About(bench.whereTyped().demo(), bench.whereTyped().dish(), cue().key());
    }

    @Override
    public void view(Frame frame) {
        TalkView.draw(this, frame);
    }
}
