package hobside.stage.run;

import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.List;

/** One time that a talk was run, in the order in which things happened. */
public record Run(Head head, List<Happening> happenings) {

    /** Whether it was for practice, or before an audience. */
    public enum Kind implements Worded {
        REHEARSAL("rehearsal"),
        LIVE("live");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /**
     * What was known when it began.
     *
     * @param demo the name of the demo's file
     * @param begunAt milliseconds since 1970, UTC
     * @param slot minutes that the talk may take; 0 when no slot is given
     * @param plan the cues in their order as they were then
     */
    public record Head(Kind kind, String demo, long begunAt, int slot, List<Planned> plan) {

        public Head {
            plan = List.copyOf(plan);
        }

        /** The same, begun at this time. */
        public Head begun(long at) {
            return new Head(kind, demo, at, slot, plan);
        }

        public boolean isLive() {
            return kind == Kind.LIVE;
        }

        /** The keys of its cues in their order. */
        public List<String> keys() {
            List<String> keys = new ArrayList<>(plan.size());
            for (Planned planned : plan) {
                keys.add(planned.cue());
            }
            return keys;
        }
    }

    /**
     * One cue as it was planned.
     *
     * @param seconds how long it was to take
     * @param wording a number that changes with its words, see {@link Wording}
     */
    public record Planned(String cue, int seconds, boolean must, int wording) {}

    public Run {
        happenings = List.copyOf(happenings);
    }

    /** The run with one more thing that happened. */
    public Run with(Happening happening) {
        List<Happening> more = new ArrayList<>(happenings);
        more.add(happening);
        return new Run(head, more);
    }

    /** Whether the presenter said that it is over; without this it was broken off. */
    public boolean isOver() {
        for (Happening happening : happenings) {
            if (happening.what() == Happening.What.OVER) {
                return true;
            }
        }
        return false;
    }

    /** Where one stands when all of it has happened, in the talk as it was planned. */
    public Standing standing() {
        return standing(head.keys());
    }

    /** Where one stands when all of it has happened, in the talk as it is now. */
    public Standing standing(List<String> keys) {
        Standing standing = Standing.at(head, keys);
        for (Happening happening : happenings) {
            standing = standing.after(happening);
        }
        return standing;
    }
}
