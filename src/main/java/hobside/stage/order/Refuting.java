package hobside.stage.order;

/** Raises the bound by showing ends to be too early, halving what is open; see {@link Bounds}. */
final class Refuting {

    private final Engine engine;
    private final int side;
    private final Best best;
    private final Meter meter;

    Refuting(Model model, Best best, Meter meter) {
        this.engine = model.engine;
        this.side = 2 * model.end + 1;
        this.best = best;
        this.meter = meter;
    }

    /** False when there is no plan of any length. */
    boolean run() {
        if (!engine.first() || !engine.settle()) {
            return false;
        }
        best.atLeast(engine.trail.root[side ^ 1]);
        int refuted = best.lower() - 1;
        int open = Math.min(best.upper(), -engine.trail.root[side]);
        while (refuted + 1 < open && meter.spend()) {
            int middle = refuted + (open - refuted) / 2;
            if (isRefuted(middle)) {
                refuted = middle;
            } else {
                open = middle;
            }
        }
        best.atLeast(refuted + 1);
        return true;
    }

    private boolean isRefuted(int end) {
        if (engine.trail.isFalse(side, -end)) {
            return true;
        }
        if (engine.trail.isTrue(side, -end)) {
            return false;
        }
        engine.trail.decide(side, -end);
        boolean refuted = !engine.propagate();
        engine.backTo(0);
        return refuted;
    }
}
