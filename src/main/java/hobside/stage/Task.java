package hobside.stage;

import hobside.dish.Station;
import hobside.stage.order.Window;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One thing that goes on without a break: a stretch of the talk, hands at a step of the method, or a pot that cooks by itself.
 *
 * @param key {@code step:4}, {@code step:4/cooks}, or the key of the section or question that is told
 * @param label a few words for the lanes
 */
public record Task(String key, Kind kind, String label, Load load, Ties ties) {

    /** What goes on. */
    public enum Kind {
        TALK,
        HANDS,
        COOKS
    }

    /**
     * What it takes while it lasts.
     *
     * @param seconds how long it lasts
     * @param body what the presenter gives to it
     * @param helper whether the helper's hands are busy with it
     * @param on where it stands; {@link Station#BENCH} and {@link Station#COLD} are never short
     */
    public record Load(int seconds, Body body, boolean helper, Station on) {}

    /** What the presenter gives to a task: voice, hands, both, or nothing. */
    public enum Body {
        NOTHING,
        VOICE,
        HANDS,
        BOTH;

        boolean speaks() {
            return this == VOICE || this == BOTH;
        }

        boolean works() {
            return this == HANDS || this == BOTH;
        }
    }

    /**
     * What it waits for, when it may go on, and the cues it carries.
     *
     * @param after keys of the tasks that must be over before it begins
     * @param cues keys of the cues of the talk that belong to it
     */
    public record Ties(List<String> after, Window window, List<String> cues) {

        public Ties {
            after = List.copyOf(after);
            cues = List.copyOf(cues);
        }
    }

    /** The ending of the key of a pot that cooks by itself. */
    static final String COOKS = "/cooks";

    /** The same, waiting for one more task. */
    Task after(String key) {
        Set<String> after = new HashSet<>(ties.after());
        after.add(key);
        return new Task(this.key, kind, label, load, new Ties(List.copyOf(after), ties.window(), ties.cues()));
    }

    public int seconds() {
        return load.seconds();
    }

    /** Whether the presenter is busy with it, speaking or at work: nothing is silent then. */
    public boolean isSeen() {
        return load.body() != Body.NOTHING;
    }

    /** The number of the step of the method it belongs to, counted from 1; 0 for the talk. */
    public int step() {
        return StepKeys.number(key);
    }
}
