package hobside.stage.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Searches by turns, each going on where it was left and for longer each time: {@link Delays} forwards, the same backwards, then
 * {@link Hunt}. What one needs long for is often short work for another, so that together they need a few times what the best of them
 * would. They share the best plan and the bound.
 */
final class Turns {

    /** How many statements may be kept learned: some two megabytes. */
    private static final int ROOM = 30_000;

    /** So many decisions in the first turn, and half as many more in each that follows. */
    private static final long FIRST_NODES = 20_000;

    /** A clash takes about as long to learn from as so many decisions that nothing is learned from. */
    private static final int NODES_PER_CLASH = 200;

    /**
     * Where there is so little of everything that is scarce, learning does better, and goes first and for so many times longer: found
     * by trying on invented demos and published problems.
     */
    private static final int LITTLE = 4;

    private static final int LONGER = 12;

    private static final int FIRST_CLASHES = 300;

    private static final long MOST_NODES = 1L << 24;

    /**
     * What learning has not settled by turns as long as this, it seldom settles: from then on it gets a fifth of the time. Found by
     * trying on published problems.
     */
    private static final long LONG_TURN = 300_000;

    private static final int FIFTH = 5;

    private final Facts facts;
    private final int horizon;
    private final FirstPlans plans;
    private final Best best;
    private final Meter meter;
    private final List<Delays> delays = new ArrayList<>();
    private Hunt hunt;

    Turns(Facts facts, int horizon, FirstPlans plans, Meter meter) {
        this.facts = facts;
        this.horizon = horizon;
        this.plans = plans;
        this.best = plans.best();
        this.meter = meter;
        Optional<Bare> bare = Bare.of(facts);
        bare.ifPresent(forwards -> delays.add(Delays.of(forwards, best, meter)));
        bare.flatMap(Bare::backwards).ifPresent(backwards -> delays.add(Delays.of(backwards, best, meter)));
    }

    /** Goes on until the matter is settled or the effort is spent. */
    void run() {
        int longer = isLittle() ? LONGER : 1;
        long nodes = FIRST_NODES / longer;
        if (longer > 1) {
            hunt(FIRST_CLASHES);
        }
        while (!best.isSettled() && !meter.isOver()) {
            for (Delays each : delays) {
                each.run(nodes);
            }
            delays.removeIf(Delays::gaveUp);
            hunt(delays.isEmpty() ? Integer.MAX_VALUE : clashes(longer == 1 && nodes > LONG_TURN ? nodes / FIFTH : nodes * longer));
            nodes = Math.min(nodes + nodes / 2, MOST_NODES);
        }
    }

    private static int clashes(long nodes) {
        return (int) (nodes / NODES_PER_CLASH);
    }

    private boolean isLittle() {
        for (int r = 0; r < facts.capacity.length; r++) {
            if (facts.capacity[r] > LITTLE && facts.isScarce(r)) {
                return false;
            }
        }
        return true;
    }

    private void hunt(int clashes) {
        if (!best.isSettled() && !meter.isOver()) {
            hunt = hunt == null ? new Hunt(new Model(facts, horizon, ROOM), plans, best, meter) : hunt;
            hunt.run(clashes);
        }
    }
}
