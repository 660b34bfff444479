package hobside.stage;

import hobside.stage.order.Effort;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.util.List;

/**
 * Who and what is busy with which task at what time of the demonstration, what is done ahead, and whether it fits.
 *
 * @param slots the tasks on stage in the order in which they begin; empty where hours or hall allow none
 * @param telling the talk as it comes on stage
 */
public record RunningOrder(List<Slotted> slots, Proof proof, Ahead ahead, List<Silence> silences, Outlook outlook, Telling telling) {

    /**
     * How sure it is.
     *
     * @param seconds the time on stage
     * @param bound no order of the same tasks is shorter than this
     * @param isFewest whether it is certain that nothing less done ahead would do
     */
    public record Proof(int seconds, int bound, boolean isFewest) {

        public boolean isShortest() {
            return seconds == bound;
        }
    }

    /**
     * Whether it fits.
     *
     * @param slot seconds of the slot; 0 when none is given
     * @param ways how each step is given, in the order of the method
     */
    public record Outlook(int slot, List<Hindrance> hindrances, List<Way> ways) {

        public Outlook {
            hindrances = List.copyOf(hindrances);
            ways = List.copyOf(ways);
        }
    }

    public RunningOrder {
        slots = List.copyOf(slots);
        silences = List.copyOf(silences);
    }

    /** A cue on stage with its planned seconds, a wait after it counted in. */
    public record Line(String cue, int seconds) {}

    /**
     * The talk as it comes on stage.
     *
     * @param talk in that order: without what is done ahead, and with prepared questions in long waits
     * @param lines its cues with their seconds, which add up to the whole time
     * @param pots what has to be ready before a cue can begin
     */
    public record Telling(Talk talk, List<Line> lines, List<Pot> pots) {

        public Telling {
            lines = List.copyOf(lines);
            pots = List.copyOf(pots);
        }
    }

    /**
     * A talk that has been written anew, told in the order of a run that has begun. Cues that are gone are passed over, new ones come
     * after those they follow in the talk.
     */
    public static Talk arranged(Stand stand, Talk talk, List<String> keys) {
        return Told.arranged(talk, Fillers.of(stand, talk), Told.withNew(talk, keys));
    }

    public Talk told() {
        return telling.talk();
    }

    /** What it is made from: what the talk is written from, the talk, and how long its cues take. */
    public record Given(Stand stand, Talk talk, Timing timing) {}

    /** The running order of a demo, its talk told in the order of the plan. */
    public static RunningOrder of(Given given, Effort effort) {
        return new Fitting(Scene.of(given), effort).best();
    }

    public boolean fits() {
        return outlook.hindrances().isEmpty();
    }

    public int seconds() {
        return proof.seconds();
    }

    public boolean isSilent() {
        return silences.stream().anyMatch(Silence::isLong);
    }
}
