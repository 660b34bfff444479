package hobside.stage.run;

import hobside.dish.Stage;
import hobside.guide.Caution;
import hobside.guide.Cautions;
import hobside.stage.run.Happening.What;
import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Watches over the cautions of a talk while it is run: samples that stand out, and core temperatures before anything is served.
 *
 * <p>How long samples may stand out is the shortest published time in their caution; when three quarters of it are over, it warns
 * (ours, no source). A caution said before serving that has a published temperature is asked for from the cue before the first
 * serving on, until it is confirmed. It follows published figures and never replaces local rules.
 */
public final class CareClock {

    private static final long MINUTE = 60_000;
    private static final int WARNING_QUARTERS = 3;

    /** What is due. */
    public enum Kind {
        /** Whether the core temperature has been reached is to be asked. */
        CORE,
        /** Samples will soon have been out too long. */
        AGEING,
        /** Samples have been out too long. */
        THROW_AWAY
    }

    /**
     * Something that is due now.
     *
     * @param caution its key; CARE_DONE with this key ends it
     * @param said a sentence for the presenter
     */
    public record Due(Kind kind, String caution, String said) {}

    /** A caution that limits how long food stands out, and that limit. */
    private record Limit(Caution caution, Caution.Advised advised) {

        long minutes() {
            return advised.minutes().orElseThrow();
        }
    }

    private final List<Caution> cores;
    private final Optional<Limit> limit;
    private final Optional<String> serving;

    private CareClock(List<Caution> cores, Optional<Limit> limit, Optional<String> serving) {
        this.cores = cores;
        this.limit = limit;
        this.serving = serving;
    }

    /** For the cautions that this talk tells. */
    public static CareClock of(Cautions cautions, Talk talk) {
        Set<String> told = talk.cues().stream().filter(Cue::isCaution).map(Cue::caution).collect(Collectors.toSet());
        List<Caution> known = cautions.all().stream().filter(caution -> told.contains(caution.key())).toList();
        List<Caution> cores = known.stream().filter(caution -> caution.stage() != Stage.SERVE && caution.temperatures().isPresent()).toList();
        Optional<Limit> limit = known.stream().flatMap(caution -> caution.advice().figures().stream()
                .filter(figure -> figure.minutes().isPresent()).map(figure -> new Limit(caution, figure))).min(Comparator.comparingLong(Limit::minutes));
        Optional<String> serving = talk.sections().stream().filter(section -> section.part() == Talk.Part.TABLE)
                .flatMap(section -> section.cues().stream()).filter(cue -> !cue.isCaution()).map(Cue::key).findFirst();
        return new CareClock(cores, limit, serving);
    }

    /** What is due at this moment (milliseconds since the run began), the most pressing first. */
    public List<Due> due(List<Happening> happened, Standing standing, long at) {
        List<Due> due = new ArrayList<>();
        limit.flatMap(known -> sample(known, happened, at)).ifPresent(due::add);
        if (isServing(standing)) {
            unseen(happened).forEach(caution -> due.add(new Due(Kind.CORE, caution.key(), core(caution))));
        }
        return due;
    }

    /** The cautions with a core temperature that has not been confirmed yet, whether or not it is time to ask. */
    public List<Caution> unseen(List<Happening> happened) {
        return cores.stream().filter(caution -> !isDone(caution.key(), happened)).toList();
    }

    /** The key of the caution that limits how long samples stand out; empty when none does. */
    public Optional<String> samples() {
        return limit.map(known -> known.caution().key());
    }

    /** Minutes that samples have been out; empty when none are. */
    public Optional<Long> minutesOut(List<Happening> happened, long at) {
        return limit.flatMap(known -> outSince(known.caution().key(), happened)).map(since -> Math.max(0, at - since) / MINUTE);
    }

    private Optional<Due> sample(Limit known, List<Happening> happened, long at) {
        Optional<Long> out = minutesOut(happened, at);
        if (out.isEmpty() || out.get() * 4 < known.minutes() * WARNING_QUARTERS) {
            return Optional.empty();
        }
        String key = known.caution().key();
        String published = " Published: " + known.advised().told() + ". Follow your local rule.";
        return Optional.of(out.get() < known.minutes()
                ? new Due(Kind.AGEING, key, "Samples have been out for " + out.get() + " minutes; " + (known.minutes() - out.get()) + " are left." + published)
                : new Due(Kind.THROW_AWAY, key, "Samples have been out for " + out.get() + " minutes: throw them away." + published));
    }

    /** All times out count together: a second OUT does not start anew, only when what was out is gone. */
    private static Optional<Long> outSince(String caution, List<Happening> happened) {
        Optional<Long> since = Optional.empty();
        for (Happening each : happened) {
            if (each.what() == What.OUT && since.isEmpty()) {
                since = Optional.of(each.at());
            } else if (each.what() == What.CARE_DONE && each.cue().equals(caution)) {
                since = Optional.empty();
            }
        }
        return since;
    }

    private boolean isServing(Standing standing) {
        if (serving.isEmpty() || standing.isOver()) {
            return false;
        }
        int first = standing.keys().indexOf(serving.get());
        boolean reached = standing.cue().isEmpty() || standing.keys().indexOf(standing.cue().get()) >= first;
        return first >= 0 && (reached || standing.next().equals(serving));
    }

    private static boolean isDone(String caution, List<Happening> happened) {
        return happened.stream().anyMatch(each -> each.what() == What.CARE_DONE && each.cue().equals(caution));
    }

    private static String core(Caution caution) {
        return "Before serving, " + caution.published().name() + ": is the core hot enough? " + caution.temperatures().orElseThrow();
    }
}
