package hobside.stage.order;

import java.util.function.BooleanSupplier;

/**
 * How long to look for a better plan. There is no clock in here: who has one brings it along.
 *
 * @param nodes at most so many plans drawn up and decisions tried; one plan is always tried
 * @param enough asked again and again; once it says yes, the search stops with what it has
 */
public record Effort(long nodes, BooleanSupplier enough) {

    public Effort {
        if (nodes < 1 || enough == null) {
            throw new IllegalArgumentException("expected at least 1 node and something to ask, found " + nodes + " and " + enough);
        }
    }

    /** So many plans and decisions, however long they take: the same answer on any machine. */
    public static Effort nodes(long nodes) {
        return new Effort(nodes, () -> false);
    }
}
