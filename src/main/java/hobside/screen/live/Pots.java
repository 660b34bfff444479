package hobside.screen.live;

import hobside.file.Scripts;
import hobside.stage.Pot;
import hobside.stage.run.CatchUp;
import hobside.stage.run.Run;
import hobside.stage.run.Standing;
import hobside.stage.run.Happening;
import hobside.talk.Timing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** The pots of the running order in a run: when they were set going, and what cannot begin before they are ready. */
final class Pots {

    private Pots() {}

    private static List<Pot> of(Playing playing) {
        return Scripts.runningOrder(playing.bench().demo(), playing.bench().desk().study(), Map.of()).telling().pots();
    }

    /** Planned seconds of each cue without the wait for a pot that the plan counts to the cue before it. */
    static Map<String, Integer> ownSeconds(Playing playing) {
        Map<String, Integer> own = new HashMap<>();
        Timing timing = Timing.at(playing.bench().demo().script().pacing());
        List<Pot> pots = of(playing);
        List<Run.Planned> plan = playing.run().head().plan();
        for (int i = 0; i < plan.size(); i++) {
            String cue = plan.get(i).cue();
            String next = i + 1 < plan.size() ? plan.get(i + 1).cue() : "";
            boolean waits = pots.stream().anyMatch(pot -> pot.waiting().equals(next));
            int hands = pots.stream().filter(pot -> pot.cue().equals(cue)).mapToInt(Pot::hands).max().orElse(0);
            int estimate = Optional.ofNullable(playing.cue(cue)).map(timing::seconds).orElse(0);
            own.putIfAbsent(cue, waits ? Math.min(plan.get(i).seconds(), Math.max(hands, estimate)) : plan.get(i).seconds());
        }
        return own;
    }

    /** With a wait at each cue that a pot must be ready for. */
    static List<CatchUp.Remaining> waitedFor(Playing playing, List<CatchUp.Remaining> remaining) {
        List<CatchUp.Remaining> all = new ArrayList<>(remaining);
        for (Pot pot : of(playing)) {
            int waiting = place(all, pot.waiting());
            if (waiting > 0) {
                wait(playing, pot, all, waiting).ifPresent(wait -> {
                    CatchUp.Remaining there = all.get(waiting);
                    List<CatchUp.Wait> waits = new ArrayList<>(there.waits());
                    waits.add(wait);
                    all.set(waiting, new CatchUp.Remaining(there.cue(), there.seconds(), there.must(), there.value(), waits));
                });
            }
        }
        return all;
    }

    private static Optional<CatchUp.Wait> wait(Playing playing, Pot pot, List<CatchUp.Remaining> remaining, int waiting) {
        OptionalLong begun = begun(playing, pot.cue());
        if (begun.isPresent()) {
            long left = pot.ready() - (playing.now() - begun.getAsLong()) / 1_000;
            return left > 0 ? Optional.of(new CatchUp.Wait(CatchUp.Wait.NOW, (int) left)) : Optional.empty();
        }
        int place = place(remaining, pot.cue());
        return place >= 0 && place < waiting ? Optional.of(new CatchUp.Wait(place, pot.ready())) : Optional.empty();
    }

    private static int place(List<CatchUp.Remaining> remaining, String cue) {
        for (int i = 0; i < remaining.size(); i++) {
            if (remaining.get(i).cue().equals(cue)) {
                return i;
            }
        }
        return -1;
    }

    /** When the cue was first come to, in milliseconds since the run began; empty when it has not been yet. */
    private static OptionalLong begun(Playing playing, String cue) {
        Standing standing = Standing.at(playing.run().head(), playing.standing().keys());
        if (standing.cue().filter(cue::equals).isPresent()) {
            return OptionalLong.of(0);
        }
        for (Happening happening : playing.run().happenings()) {
            standing = standing.after(happening);
            if (standing.cue().filter(cue::equals).isPresent()) {
                return OptionalLong.of(happening.at());
            }
        }
        return OptionalLong.empty();
    }
}
