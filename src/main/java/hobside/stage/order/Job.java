package hobside.stage.order;

import java.util.List;

/**
 * One thing to be done without a break: a step of cooking, a section of the talk.
 *
 * @param duration seconds, 0 or more; a job of 0 seconds holds nothing, but others may wait for it
 * @param takes how much of each resource it holds while it runs, in the order of the problem's capacities
 * @param after indices of the jobs that must be over before it starts
 * @param window earliest start and latest end
 */
public record Job(int duration, List<Integer> takes, List<Integer> after, Window window) {

    public Job {
        takes = List.copyOf(takes);
        after = List.copyOf(after);
        if (duration < 0) {
            throw new IllegalArgumentException("expected a duration of 0 or more, found " + duration);
        }
        if (window == null) {
            throw new IllegalArgumentException("expected a window, found none; Window.ANY is for any time");
        }
    }

    /** A job that may run at any time. */
    public static Job of(int duration, List<Integer> takes, List<Integer> after) {
        return new Job(duration, takes, after, Window.ANY);
    }
}
