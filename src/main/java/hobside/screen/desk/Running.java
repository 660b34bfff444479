package hobside.screen.desk;

import hobside.file.InputProblem;
import hobside.file.Runs;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Run;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Carries out what is asked of runs. It stamps the time on what happens, so that no screen needs a clock of its own. */
final class Running {

    private final Runs runs;
    private final InstantSource clock;
    private Runs.Open open;
    private long zero;

    Running(Runs runs, InstantSource clock) {
        this.runs = runs;
        this.clock = clock;
    }

    Answer carryOut(Work.Running work) {
        if (work instanceof Work.Begin begin) {
            return begun(begin.head());
        }
        if (work instanceof Work.Happened happened) {
            return open == null ? new Answer.Failed("No run has begun yet.") : happened(stamped(happened));
        }
        if (work instanceof Work.Runs of) {
            Runs.Found found = runs.of(of.demo());
            return new Answer.Runs(of.demo(), found.runs(), written(found.problems()));
        }
        if (work instanceof Work.LookBack) {
            return new Answer.BrokenOff(runs.unfinished(clock.millis()).map(found -> found.open().run()));
        }
        if (work instanceof Work.PutAway away) {
            Optional<String> trouble = open == null ? Optional.empty() : runs.putAway(open);
            Runs.Found left = runs.of(away.demo());
            return new Answer.Runs(away.demo(), left.runs(), trouble.map(List::of).orElseGet(() -> written(left.problems())));
        }
        return work instanceof Work.Resume ? resumed() : letGo();
    }

    /** The run stays open, in case the user comes back to it in this visit. */
    void left() {
        if (open != null) {
            runs.leave(open);
        }
    }

    private Answer begun(Run.Head head) {
        zero = clock.millis();
        Runs.Begun begun = runs.begin(head.begun(zero));
        open = begun.open();
        return new Answer.Begun(open.run(), zero, begun.trouble().stream().toList());
    }

    /** The answer holds it as it was written, cleaned. */
    private Answer happened(Happening happening) {
        Optional<String> trouble = runs.append(open, happening);
        List<Happening> all = open.run().happenings();
        return new Answer.Happened(all.get(all.size() - 1), trouble);
    }

    private Happening stamped(Work.Happened work) {
        return new Happening(Math.max(last(open.run()), clock.millis() - zero), work.what(), work.cue(), work.text());
    }

    private static long last(Run run) {
        long last = 0;
        for (Happening happening : run.happenings()) {
            last = Math.max(last, happening.at());
        }
        return last;
    }

    private static List<String> written(List<InputProblem> problems) {
        return problems.stream().map(InputProblem::written).toList();
    }

    private Answer resumed() {
        Optional<Runs.Unfinished> found = runs.unfinished(clock.millis());
        if (found.isEmpty()) {
            return new Answer.Failed("There is no live talk to go on with.");
        }
        goOnWith(found.get().open());
        List<String> troubles = new ArrayList<>(written(found.get().problems()));
        runs.append(open, stamped(new Work.Happened(What.RESUMED, "", ""))).ifPresent(troubles::add);
        return new Answer.Begun(open.run(), zero, troubles);
    }

    /** A clock that was set back while the program was away must not stand still: the run then goes on where it was. */
    private void goOnWith(Runs.Open found) {
        open = found;
        zero = Math.min(open.run().head().begunAt(), clock.millis() - last(open.run()));
    }

    private Answer letGo() {
        runs.unfinished(clock.millis()).ifPresent(found -> {
            goOnWith(found.open());
            runs.append(open, stamped(new Work.Happened(What.OVER, "", "")));
            open = null;
        });
        return new Answer.BrokenOff(Optional.empty());
    }
}
