package hobside.stage.order;

/**
 * How short a plan can be at best: four reasons, each a number of seconds that no plan can do without. On two jobs of 60 and 30
 * seconds that both need the one pair of hands, the longest chain says 60, the energy 90.
 *
 * @param chain the longest chain of waiting, from the earliest start of its first job
 * @param energy the resource with the most work: duration times amount, summed and divided by the capacity
 * @param packing jobs of which no two can run side by side, see {@link Packing}
 * @param refuted one more than the largest end that was shown to be too early without any trying: what must run when is worked out
 *     under that end until a resource is overdrawn (destructive improvement: R. Klein, A. Scholl, European Journal of Operational
 *     Research 112 (1999) 322-346); windows with a latest end may count too
 */
public record Bounds(int chain, int energy, int packing, int refuted) {

    /** The bounds of a problem; where windows leave no plan at all, {@code refuted} may be any number. */
    public static Bounds of(Problem problem) {
        Facts facts = Facts.of(problem, 1);
        Bounds plain = plain(facts);
        int horizon = problem.horizon();
        Best best = new Best(facts, horizon);
        best.atLeast(plain.best());
        if (new Obstacles(problem).first().isEmpty()) {
            new Refuting(new Model(facts, horizon, 0), best, new Meter(Effort.nodes(Long.MAX_VALUE))).run();
        }
        return new Bounds(plain.chain, plain.energy, plain.packing, best.lower());
    }

    static Bounds plain(Facts facts) {
        return new Bounds(chain(facts), energy(facts), new Packing(facts).bound(), 0);
    }

    private static int chain(Facts facts) {
        int longest = 0;
        for (int i = 0; i < facts.jobs; i++) {
            longest = Math.max(longest, facts.earliest[i] + facts.duration[i]);
        }
        return longest;
    }

    private static int energy(Facts facts) {
        long most = 0;
        for (int r = 0; r < facts.capacity.length; r++) {
            long work = 0;
            for (int i = 0; i < facts.jobs; i++) {
                work += (long) facts.duration[i] * facts.takes[i][r];
            }
            most = Math.max(most, work == 0 ? 0 : (work + facts.capacity[r] - 1) / facts.capacity[r]);
        }
        return (int) most;
    }

    /** The strongest. */
    public int best() {
        return Math.max(Math.max(chain, energy), Math.max(packing, refuted));
    }
}
