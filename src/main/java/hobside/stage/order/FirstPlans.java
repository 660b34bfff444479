package hobside.stage.order;

import java.util.Random;

/**
 * Draws up good plans quickly: by several rules, then by chance around the best so far, each polished.
 *
 * <p>Rules after R. Kolisch, S. Hartmann, European Journal of Operational Research 174 (2006) 23-37: latest finish, latest start,
 * most followers, greatest rank positional weight.
 */
final class FirstPlans {

    private static final long SEED = 1;

    private final Facts facts;
    private final Best best;
    private final Meter meter;
    private final Drafter drafter;
    private final Polish polish;
    /** About when all is over: latest finishes are counted back from here. */
    private final int chain;
    private final Random random = new Random(SEED);

    FirstPlans(Facts facts, Best best, Meter meter) {
        this.facts = facts;
        this.best = best;
        this.meter = meter;
        this.drafter = new Drafter(facts);
        this.polish = new Polish(facts, drafter);
        this.chain = best.lower();
    }

    void byRules() {
        int[] tails = facts.tails();
        for (int rule = 0; rule < 4; rule++) {
            double[] rank = new double[facts.jobs];
            for (int i = 0; i < rank.length; i++) {
                rank[i] = rank(rule, i, tails);
            }
            offer(rank, true);
            offer(rank, false);
        }
    }

    private double rank(int rule, int job, int[] tails) {
        double finish = facts.latest[job] == Facts.NEVER ? -tails[job] : Math.min(-tails[job], facts.latest[job] - chain);
        return switch (rule) {
            case 0 -> finish;
            case 1 -> finish - facts.duration[job];
            case 2 -> -facts.order.later(job).cardinality();
            default -> -weight(job);
        };
    }

    private double weight(int job) {
        double weight = facts.duration[job];
        for (int next : facts.order.next(job)) {
            weight += facts.duration[next];
        }
        return weight;
    }

    private void offer(double[] rank, boolean serial) {
        if (!best.isSettled() && meter.spend()) {
            int[] plan = serial ? drafter.serial(rank) : drafter.parallel(rank);
            best.offer(plan);
            if (plan != null) {
                best.offer(polish.justified(plan));
            }
        }
    }

    /** So many more, half of them near the best plan, half near the rule of the latest finish. */
    void byChance(int count) {
        int[] tails = facts.tails();
        for (int k = 0; k < count && !best.isSettled() && !meter.isOver(); k++) {
            double[] rank = new double[facts.jobs];
            boolean near = k % 2 == 0 && best.starts() != null;
            double spread = best.upper() * random.nextDouble() * 0.4;
            for (int i = 0; i < rank.length; i++) {
                rank[i] = (near ? best.starts()[i] : rank(1, i, tails)) + spread * random.nextDouble();
            }
            offer(rank, k % 4 < 2);
        }
    }
}
