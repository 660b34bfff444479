package hobside.stage;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch on stage in which the presenter neither speaks nor works, because everything waits for a pot.
 *
 * @param from seconds from the beginning
 * @param until when it ends
 * @param filled keys of the prepared questions that fit into it
 * @param left seconds that stay silent
 */
public record Silence(int from, int until, List<String> filled, int left) {

    /** A silence of up to a minute is a breath: common practice, no source. */
    public static final int BREATH = 60;

    /** For up to three minutes people can be asked what they want to know: common practice, no source. */
    public static final int OPEN = 180;

    public Silence {
        filled = List.copyOf(filled);
    }

    /** Whether an audience would begin to wonder. */
    public boolean isLong() {
        return left > OPEN;
    }

    /** Whether questions from the room are to be asked for. */
    public boolean isOpen() {
        return left > BREATH && left <= OPEN;
    }

    /** The stretches without a presenter, the first one from the beginning. */
    static List<Silence> of(List<Slotted> slotted) {
        List<Silence> gaps = new ArrayList<>();
        int busyUntil = 0;
        int end = 0;
        for (Slotted each : slotted) {
            end = Math.max(end, each.end());
            if (each.task().isSeen() && each.task().seconds() > 0) {
                if (each.start() > busyUntil) {
                    gaps.add(new Silence(busyUntil, each.start(), List.of(), each.start() - busyUntil));
                }
                busyUntil = Math.max(busyUntil, each.end());
            }
        }
        if (end > busyUntil) {
            gaps.add(new Silence(busyUntil, end, List.of(), end - busyUntil));
        }
        return gaps;
    }
}
