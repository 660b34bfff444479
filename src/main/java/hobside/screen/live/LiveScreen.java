package hobside.screen.live;

import hobside.screen.Effect;
import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.stage.run.CareClock;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;

/**
 * The Live screen in one state.
 *
 * @param said the last word to the presenter
 * @param scroll from which line on the words of a long cue are shown
 * @param resumed true until the first key after an old run was gone on with: only then can one begin anew
 */
public record LiveScreen(Playing playing, String said, int scroll, boolean resumed) implements Onstage {

    /** A run that has begun, or is gone on with. */
    public static Next begun(Playing playing, String words, boolean resumed) {
        return new LiveScreen(playing, words, 0, resumed).ticking();
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return LiveUpdate.of(this, pressed.key());
        }
        if (message instanceof Message.Woken woken) {
            return with(playing.at(woken.now())).ticking();
        }
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Happened happened) {
            return happened(happened);
        }
        return message instanceof Message.Told ? playing.bench().below(message, changed -> with(playing.over(changed))) : Next.to(this);
    }

    /** It is on the disk now: the state follows, and only now. */
    private Next happened(Answer.Happened happened) {
        Happening happening = happened.happening();
        boolean moved = !happening.what().isRemark();
        LiveScreen there = new LiveScreen(playing.after(happening), happened.trouble().orElseGet(() -> Said.of(happening)), moved ? 0 : scroll, false);
        return happening.what() == What.OVER ? Next.to(AfterPage.of(there.playing)) : there.ticking();
    }

    /** This state, and a wake at the next full second: the clock on it moves. */
    private Next ticking() {
        return playing.standing().isOver() ? Next.to(this) : Next.doing(this, playing.tick());
    }

    /** Something has happened: asked to be written down. */
    Next happening(What what, String cue, String text) {
        return Next.doing(this, new Work.Happened(what, cue, text));
    }

    /** A change tried out on the way is part of the demo from now on, and the run says so. */
    Next keeping(Demo changed, String words) {
        Next kept = playing.bench().changed(changed, words).over(bench -> with(playing.over((Bench) bench)));
        List<Effect> effects = new ArrayList<>(kept.effects());
        effects.add(new Work.Happened(What.KEPT, playing.standing().cue().orElse(""), words));
        return new Next(kept.screen(), effects);
    }

    /** A question from the audience is written down. */
    Next asked(String question, boolean answered) {
        return happening(What.ASKED, playing.standing().cue().orElse(""), answered ? question : question + " (to be answered later)");
    }

    @Override
    public Next jumping(String cue) {
        return happening(What.JUMP, cue, "");
    }

    LiveScreen saying(String words) {
        return new LiveScreen(playing, words, scroll, resumed);
    }

    LiveScreen scrolled(int to) {
        return new LiveScreen(playing, said, Math.max(0, to), resumed);
    }

    private LiveScreen with(Playing other) {
        return new LiveScreen(other, said, scroll, resumed);
    }

    /** What has to be watched now, the most pressing first. */
    List<String> cares() {
        return playing.care().due(playing.run().happenings(), playing.standing(), playing.now()).stream().map(CareClock.Due::said).toList();
    }

    @Override
    public void view(Frame frame) {
        LiveView.draw(this, frame);
    }
}
