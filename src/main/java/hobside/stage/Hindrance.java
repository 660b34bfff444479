package hobside.stage;

import java.util.List;

/**
 * Something that stands in the way of a slot or of an hour.
 *
 * @param tasks labels of the tasks it is about, in their order
 * @param seconds how much time they take, or how late they are
 * @param of what there is: seconds of the slot, or the hour that is missed
 */
public record Hindrance(Kind kind, List<String> tasks, int seconds, int of) {

    /** What it is about. */
    public enum Kind {
        /** The presenter has more to say and do than the slot holds. */
        PRESENTER,
        /** The tasks wait for each other and take longer than the slot. */
        CHAIN,
        /** Together they need more of something than there is. */
        CROWD,
        /** There is no hob for them. */
        NO_HOB,
        /** There is no oven for them. */
        NO_OVEN,
        /** An hour that was set by hand cannot be kept. */
        HOUR,
        /** The hours cannot all be kept, and no single cause was found. */
        HOURS,
        /** It fits, but a wait stays silent. */
        SILENT,
        /** It fits, but the presenter works on for long without a word. */
        QUIET
    }

    public Hindrance {
        tasks = List.copyOf(tasks);
    }
}
