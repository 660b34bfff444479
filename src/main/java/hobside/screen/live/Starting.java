package hobside.screen.live;

import hobside.file.Runs;
import hobside.file.Scripts;
import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.rehearse.RehearseScreen;
import hobside.stage.RunningOrder;
import hobside.stage.run.Measured;
import hobside.stage.run.Planning;
import hobside.stage.run.Run;
import hobside.talk.Script;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The moment in which a run begins, or one that was broken off is gone on with. A demo that has no file yet is put away first, and
 * the runs before are read, because what was measured in them is the best plan there is.
 */
public record Starting(Bench bench, Run.Kind kind) implements Screen {

    /** Before an audience: the talk that was broken off, else a new run. */
    public static Next live(Bench bench) {
        return new Starting(bench, Run.Kind.LIVE).first(new Work.LookBack());
    }

    /** For practice: always a new run. */
    public static Next rehearsal(Bench bench) {
        return new Starting(bench, Run.Kind.REHEARSAL).first(new Work.Runs(bench.desk().kept().name()));
    }

    /** The program starts a moment after a talk was interrupted: straight on to it, with what the disk answered. */
    public static Next resuming(Bench bench, Optional<Message> answer) {
        return answer.map(new Starting(bench, Run.Kind.LIVE)::update).orElseGet(() -> Next.to(bench));
    }

    /** The Bench with a word about a talk that is not over and that L goes on with; as it is when L would begin another one. */
    public static Bench reminding(Bench bench, Runs.Unfinished live) {
        if (!live.open().run().head().demo().equals(bench.desk().kept().name())) {
            return bench;
        }
        ZonedDateTime at = Instant.ofEpochMilli(live.lastAt()).atZone(ZoneId.systemDefault());
        String time = at.getHour() + (at.getMinute() < 10 ? ":0" : ":") + at.getMinute();
        return bench.saying("A talk " + (live.left() ? "was left" : "broke off") + " at " + (at.getHour() < 10 ? "0" : "") + time + ": L goes on with it.");
    }

    /** The run that was gone on with is over, and a new one begins. */
    static Next anew(Bench bench) {
        return Next.doing(new Starting(bench, Run.Kind.LIVE), new Work.LetGo());
    }

    private Next first(Work work) {
        if (Planning.plan(talk(), Timing.at(bench.demo().script().pacing())).isEmpty()) {
            return Next.to(bench.saying("There is nothing to tell: every cue of the talk was left out."));
        }
        return bench.desk().kept().name().isEmpty() ? Next.doing(this, new Work.Keep(bench.demo(), ""), work) : Next.doing(this, work);
    }

    private Talk talk() {
        return Scripts.talk(bench.demo(), bench.desk().study());
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told && told.answer() instanceof Answer answer) {
            return answered(answer).orElseGet(() -> bench.below(message, changed -> new Starting(changed, kind)));
        }
        return message instanceof Message.KeyPressed ? Next.to(bench) : Next.to(this);
    }

    private Optional<Next> answered(Answer answer) {
        if (answer instanceof Answer.BrokenOff brokenOff) {
            boolean ours = brokenOff.run().filter(run -> run.head().demo().equals(bench.desk().kept().name())).isPresent();
            return Optional.of(Next.doing(this, ours ? new Work.Resume() : new Work.Runs(bench.desk().kept().name())));
        }
        if (answer instanceof Answer.Runs runs) {
            return Optional.of(Next.doing(this, new Work.Begin(head(runs.runs()))));
        }
        if (answer instanceof Answer.Begun begun) {
            return Optional.of(begun(bench, begun));
        }
        return answer instanceof Answer.Failed failed ? Optional.of(Next.to(bench.saying(failed.words()))) : Optional.empty();
    }

    /** The plan is the running order where there is one, else the talk as it is written. */
    private Run.Head head(List<Run> runs) {
        Script.Pacing pacing = bench.demo().script().pacing();
        Map<String, Integer> measured = Measured.of(runs).seconds(talk());
        RunningOrder order = Scripts.runningOrder(bench.demo(), bench.desk().study(), measured);
        Map<String, Integer> seconds = new HashMap<>();
        order.telling().lines().forEach(line -> seconds.merge(line.cue(), line.seconds(), Integer::sum));
        Talk talk = order.slots().isEmpty() ? talk() : order.told();
        return Planning.head(kind, bench.desk().kept().name(), pacing, Planning.plan(talk, Timing.at(pacing).knowing(measured), seconds));
    }

    /** A run goes on from here: its screen over the bench. */
    public static Next begun(Bench bench, Answer.Begun begun) {
        Playing playing = Playing.of(bench, begun);
        String trouble = String.join(" ", begun.troubles());
        if (!begun.run().head().isLive()) {
            return RehearseScreen.begun(playing, trouble);
        }
        boolean resumed = !begun.run().happenings().isEmpty();
        boolean unordered = Scripts.runningOrder(bench.demo(), bench.desk().study(), Map.of()).slots().isEmpty();
        String words = resumed ? "Gone on where the talk broke off. N begins anew." : unordered ? "There is no running order: the talk comes as it is written, and no pot is waited for. C says why." : "";
        return LiveScreen.begun(playing, trouble.isEmpty() ? words : trouble, resumed);
    }

    @Override
    public void view(Frame frame) {
        bench.view(frame);
    }
}
