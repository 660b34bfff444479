package hobside.screen.rehearse;

import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.live.JumpScreen;
import hobside.screen.live.Onstage;
import hobside.screen.live.Playing;
import hobside.screen.live.Said;
import hobside.screen.read.ReadScreen;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Standing;
import java.util.List;
import java.util.Optional;

/**
 * A rehearsal in one state.
 *
 * @param said the last word to the presenter
 * @param scroll from which line on the words of a long cue are shown
 */
public record RehearseScreen(Playing playing, String said, int scroll) implements Onstage {

    /** A rehearsal that has begun. */
    public static Next begun(Playing playing, String words) {
        return new RehearseScreen(playing, words, 0).ticking();
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        if (message instanceof Message.Woken woken) {
            return with(playing.at(woken.now())).ticking();
        }
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Happened happened) {
            return happened(happened);
        }
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Runs runs) {
            return ReportScreen.of(playing, runs);
        }
        return message instanceof Message.Told ? playing.bench().below(message, changed -> with(playing.over(changed))) : Next.to(this);
    }

    private RehearseScreen with(Playing other) {
        return new RehearseScreen(other, said, scroll);
    }

    private RehearseScreen saying(String words) {
        return new RehearseScreen(playing, words, scroll);
    }

    private Next pressed(Key key) {
        return Keys.action(RehearseAction.values(), key).map(this::act).orElseGet(() -> Next.to(this));
    }

    private Next act(RehearseAction action) {
        Standing standing = playing.standing();
        return switch (action) {
            case ON -> standing.cue().map(cue -> happening(What.ON, cue, "")).orElseGet(() -> happening(What.OVER, "", ""));
            case BACK -> standing.previous().map(cue -> happening(What.BACK, cue, "")).orElseGet(() -> Next.to(saying("This is the first cue.")));
            case STUMBLED -> onCue(What.STUMBLED);
            case TOO_LONG -> onCue(What.TOO_LONG);
            case SKIP -> onCue(What.SKIP);
            case PAUSE -> happening(standing.isPaused() ? What.GO_ON : What.PAUSE, "", "");
            case JUMP -> Next.to(JumpScreen.of(this));
            case NOTE -> Next.to(note(standing.cue()));
            case MORE -> Next.to(new RehearseScreen(playing, said, scroll + 1));
            case LESS -> Next.to(new RehearseScreen(playing, said, Math.max(0, scroll - 1)));
            case HELP -> Next.to(ReadScreen.help(this, "Rehearse", List.of(RehearseAction.values())));
            case END -> happening(What.OVER, "", "");
        };
    }

    private Next onCue(What what) {
        return playing.standing().cue().map(cue -> happening(what, cue, "")).orElseGet(() -> Next.to(this));
    }

    private LineScreen note(Optional<String> cue) {
        return LineScreen.of(this, new Question("A note", "note", List.of("One line; it stands in the report of this run."), "",
                text -> Reply.go(text.isBlank() ? Next.to(this) : happening(What.NOTE, cue.orElse(""), text))));
    }

    private Next happening(What what, String cue, String text) {
        return Next.doing(this, new Work.Happened(what, cue, text));
    }

    @Override
    public Next jumping(String cue) {
        return happening(What.JUMP, cue, "");
    }

    /** It is on the disk now: the state follows. */
    private Next happened(Answer.Happened happened) {
        Happening happening = happened.happening();
        int from = happening.what().isRemark() ? scroll : 0;
        RehearseScreen there = new RehearseScreen(playing.after(happening), happened.trouble().orElseGet(() -> Said.of(happening)), from);
        return happening.what() == What.OVER ? Next.doing(there, new Work.Runs(playing.run().head().demo())) : there.ticking();
    }

    /** A wake at the next full second while the clock runs. */
    private Next ticking() {
        return playing.standing().isPaused() ? Next.to(this) : Next.doing(this, playing.tick());
    }

    @Override
    public void view(Frame frame) {
        RehearseView.draw(this, frame);
    }
}
