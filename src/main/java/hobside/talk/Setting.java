package hobside.talk;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where a demo is given and what was decided by hand for its running order.
 *
 * @param hall what there is to cook on, and who is there
 * @param tasks what is wanted of a task, by its key, such as {@code step:4}; tasks that are not named are decided by the program
 */
public record Setting(Hall hall, Map<String, Wanted> tasks) {

    /** Hobs and ovens that can be used at the same time, and whether somebody helps. */
    public record Hall(int hobs, int ovens, boolean helper) {

        public static final int MOST = 12;

        /** A table with two rings and one oven, and nobody to help: common practice, no source. */
        public static final Hall USUAL = new Hall(2, 1, false);

        public Hall {
            if (hobs < 0 || hobs > MOST || ovens < 0 || ovens > MOST) {
                throw new IllegalArgumentException("no hall: " + hobs + " hobs, " + ovens + " ovens");
            }
        }
    }

    /** How much of a step the audience sees. */
    public enum Shown {
        /** The program decides. */
        OPEN("open"),
        /** All of it, on stage. */
        WHOLE("whole"),
        /** It is begun on stage; then a pot that has been through it is brought in. */
        BEGUN("begun"),
        /** Nothing: it is done before the audience comes. */
        AHEAD("ahead");

        private final String word;

        Shown(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * What is wanted of one task.
     *
     * @param who whose hands do it; empty when the program decides
     * @param earliest minutes after the beginning before which it may not start
     * @param latest minutes after the beginning when it must be over; 0 when there is no such hour
     * @param talkedOver whether one can speak to the audience while one's hands are busy with it
     */
    public record Wanted(Shown shown, Optional<Cue.Who> who, int earliest, int latest, boolean talkedOver) {

        public static final Wanted NOTHING = new Wanted(Shown.OPEN, Optional.empty(), 0, 0, false);

        public Wanted {
            if (earliest < 0 || latest < 0) {
                throw new IllegalArgumentException("no hour: from " + earliest + " to " + latest);
            }
        }

        public Wanted with(Shown other) {
            return new Wanted(other, who, earliest, latest, talkedOver);
        }

        public Wanted by(Optional<Cue.Who> other) {
            return new Wanted(shown, other, earliest, latest, talkedOver);
        }

        public Wanted from(int minutes) {
            return new Wanted(shown, who, minutes, latest, talkedOver);
        }

        public Wanted until(int minutes) {
            return new Wanted(shown, who, earliest, minutes, talkedOver);
        }

        public Wanted talkedOver(boolean yes) {
            return new Wanted(shown, who, earliest, latest, yes);
        }
    }

    public static final Setting USUAL = new Setting(Hall.USUAL, Map.of());

    public Setting {
        tasks = Collections.unmodifiableMap(new TreeMap<>(tasks));
    }

    /** What is wanted of a task; nothing where nobody has said. */
    public Wanted of(String task) {
        return tasks.getOrDefault(task, Wanted.NOTHING);
    }

    public Setting with(Hall other) {
        return new Setting(other, tasks);
    }

    /** Wanting nothing takes the task off the list. */
    public Setting with(String task, Wanted wanted) {
        Map<String, Wanted> more = new TreeMap<>(tasks);
        if (wanted.equals(Wanted.NOTHING)) {
            more.remove(task);
        } else {
            more.put(task, wanted);
        }
        return new Setting(hall, more);
    }
}
