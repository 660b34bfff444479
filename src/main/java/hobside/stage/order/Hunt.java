package hobside.stage.order;

import java.util.BitSet;

/**
 * Searches for shorter plans until none can be. What goes wrong is learned, so that it goes wrong only once; by turns it asks for a
 * plan as short as the bound, which raises the bound when there is none, and for one that is shorter than the best.
 *
 * <p>The whole follows A. Schutt, T. Feydy, P. Stuckey, M. Wallace, "Explaining the cumulative propagator", Constraints 16 (2011)
 * 250-282, who proved more of the published test problems this way than anybody before.
 */
final class Hunt {

    private static final Reason NONE = (side, value, out) -> {};

    /** So many clashes in the first attempt, and an eighth more in each that follows. */
    private static final int FIRST_BUDGET = 100;

    /** So many plans are drawn up by chance before each attempt: that finds more in large problems. */
    private static final int BY_CHANCE = 30;

    private final Model model;
    private final FirstPlans plans;
    private final Engine engine;
    private final Trail trail;
    /** The side that says how early the end is. */
    private final int end;
    private final Best best;
    private final Polish polish;
    private final Meter meter;
    private final Learner learner;
    private final Choice choice;
    private boolean over;

    Hunt(Model model, FirstPlans plans, Best best, Meter meter) {
        this.model = model;
        this.plans = plans;
        this.engine = model.engine;
        this.trail = engine.trail;
        this.end = 2 * model.end + 1;
        this.best = best;
        this.polish = new Polish(model.facts, new Drafter(model.facts));
        this.meter = meter;
        Activity activity = new Activity(trail.least.length / 2);
        this.learner = new Learner(trail, activity);
        this.choice = new Choice(model, activity);
    }

    /** How often something went wrong, and so was learned from. */
    int clashes() {
        return learner.clashes();
    }

    /** Goes on until the matter is settled or the effort is spent. */
    void run() {
        over = !new Refuting(model, best, meter).run();
        int budget = FIRST_BUDGET;
        boolean fromBelow = true;
        while (!over && narrow() && !best.isSettled() && !meter.isOver()) {
            plans.byChance(BY_CHANCE);
            attempt(fromBelow ? best.lower() : best.upper() - 1, budget);
            budget += budget / 8;
            fromBelow = !fromBelow;
        }
        if (over) {
            best.close();
        }
    }

    /** Only plans shorter than the best are of interest from here on; false when there are none. */
    private boolean narrow() {
        over = over || !engine.settle() || !trail.raise(end, 1 - best.upper(), NONE) || !trail.raise(end ^ 1, best.lower(), NONE)
                || !engine.settle();
        if (!over) {
            best.atLeast(trail.root[end ^ 1]);
            engine.clauses.thin();
        }
        return !over;
    }

    /** Looks for a plan of at most a length, until so many clashes have come up. */
    private void attempt(int aim, int budget) {
        int left = budget;
        while (left > 0 && !over && meter.spend()) {
            if (!engine.propagate()) {
                left--;
                learn();
            } else if (trail.level() == 0 && isRefuted(aim)) {
                return;
            } else if (trail.level() == 0 && !trail.isTrue(end, -aim)) {
                trail.decide(end, -aim);
            } else if (!choice.decide()) {
                best.offer(polish.justified(model.starts()));
                return;
            }
        }
    }

    private boolean isRefuted(int aim) {
        engine.grant();
        return trail.isFalse(end, -aim);
    }

    private void learn() {
        Atoms atoms = learner.learn();
        if (atoms.size() == 0) {
            over = true;
        } else if (atoms.size() == 1) {
            engine.backTo(0);
            over = !trail.raise(atoms.side(0), atoms.value(0), NONE);
        } else {
            Clause clause = new Clause(atoms, spread(atoms));
            clause.used = learner.clashes();
            engine.backTo(level(atoms, 1));
            engine.clauses.add(clause);
            trail.raise(atoms.side(0), atoms.value(0), clause);
        }
    }

    /** At which level a statement was made false. */
    private int level(Atoms atoms, int k) {
        return trail.level(trail.position(atoms.side(k) ^ 1, 1 - atoms.value(k)));
    }

    private int spread(Atoms atoms) {
        BitSet levels = new BitSet();
        for (int k = 0; k < atoms.size(); k++) {
            levels.set(level(atoms, k));
        }
        return levels.cardinality();
    }
}
