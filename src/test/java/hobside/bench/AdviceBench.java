package hobside.bench;

import hobside.Bundle;
import hobside.advice.Advised;
import hobside.advice.Advisor;
import hobside.advice.Aim;
import hobside.advice.Case;
import hobside.advice.Goal;
import hobside.advice.Limits;
import hobside.advice.Next;
import hobside.advice.Pantry;
import hobside.advice.Wishes;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Measures how long the best plan takes to find and prove, as candidates grow, and how often it beats taking the best single change
 * again and again.
 *
 * <p>Argument: cases for each number of candidates; may be left out.
 */
final class AdviceBench {

    private static final double[] LESS = {0.2, 0.35, 0.5, 0.65, 0.8};

    private AdviceBench() {}

    public static void main(String[] args) {
        int cases = args.length == 0 ? 50 : Integer.parseInt(args[0]);
        growth(24, cases, "(warming up)");
        for (int candidates : new int[] {8, 12, 16, 20, 24, 28, 32}) {
            growth(candidates, cases, "invented dishes, " + candidates + " candidates");
        }
        for (Aim aim : List.of(Aim.FEWEST_CHANGES, Aim.LEAST_MONEY, Aim.LEAST_DEPARTURE)) {
            greedy(aim, cases);
        }
        Bundle.DISHES.forEach(AdviceBench::bundled);
    }

    private static Case invented(long seed, int candidates) {
        return Case.of(seed, candidates, Math.max(5, candidates / 4)).wide().fresh();
    }

    private static Goal goal(Case on, double less) {
        return Goal.lessBy(less, Ledger.outcome(on.dish(), List.of(), on.books()));
    }

    private static void growth(int candidates, int cases, String name) {
        double[] building = new double[cases];
        double[] asking = new double[cases * Aim.values().length];
        int unproven = 0;
        for (int i = 0; i < cases; i++) {
            Case on = invented(1000 + i, candidates);
            long before = System.nanoTime();
            Advisor advisor = on.advisor();
            building[i] = (System.nanoTime() - before) / 1e6;
            for (Aim aim : Aim.values()) {
                before = System.nanoTime();
                Optional<Advised> best = advisor.best(goal(on, LESS[i % LESS.length]), aim);
                asking[i * Aim.values().length + aim.ordinal()] = (System.nanoTime() - before) / 1e6;
                unproven += best.isPresent() && !best.get().proven() ? 1 : 0;
            }
        }
        Paper.line("%-34s made ready: median %7.1f ms, worst %8.1f ms   one question: median %7.1f ms, worst %8.1f ms   not proven %d of %d", name,
                Samples.of(building).median(), Samples.of(building).percentile(100), Samples.of(asking).median(),
                Samples.of(asking).percentile(100), unproven, asking.length);
    }

    /** Without what leaves something out or shares the pot otherwise, which would reach most goals in one step. */
    private static Case sameDish(Case on) {
        return new Case(on.dish(), on.plan(), on.advisor().nextBest().stream().map(Next::wish)
                .filter(wish -> wish.priced() && wish.departure() < 2 && !SHARING.contains(wish.change().kind())).toList(), on.limits(), on.books());
    }

    private static final Set<ChangeKind> SHARING = Set.of(ChangeKind.BULK_OUT, ChangeKind.MORE_PEOPLE, ChangeKind.SMALLER_SERVE);

    /** Against whoever takes, again and again, the change that then saves most (or, for money, most for a coin). */
    private static void greedy(Aim aim, int cases) {
        int asked = 0;
        int beaten = 0;
        int missed = 0;
        List<Double> margins = new ArrayList<>();
        for (int i = 0; i < cases; i++) {
            Case on = sameDish(invented(1000 + i, 40));
            Goal goal = goal(on, LESS[i % LESS.length] * 0.8).and(Goal.shareOfEnergy(0.3 - 0.02 * (i % 5)));
            Optional<Advised> best = on.advisor().best(goal, aim);
            if (best.isEmpty()) {
                continue;
            }
            asked++;
            Optional<Greedy> simple = Greedy.of(on, goal, aim == Aim.LEAST_MONEY);
            missed += simple.isEmpty() ? 1 : 0;
            double better = simple.map(found -> found.by(aim)).orElse(Double.NaN) - by(best.get(), aim);
            if (better < -1e-6) {
                throw new IllegalStateException("worse than taking the best single change, case " + i);
            }
            if (better > 1e-6) {
                beaten++;
                margins.add(better);
            }
        }
        Samples samples = Samples.of(margins.stream().mapToDouble(Double::doubleValue).toArray());
        Paper.line("%-18s one change after the other is beaten in %d of %d, finds nothing in %d; by %.2f at the median, %.2f at most", aim, beaten,
                asked, missed, margins.isEmpty() ? 0 : samples.median(), margins.isEmpty() ? 0 : samples.percentile(100));
    }

    private static double by(Advised advised, Aim aim) {
        return Greedy.by(advised.wishes(), advised.outcome(), aim);
    }

    private static void bundled(String name) {
        Dish dish = Bundle.dish(name);
        Limits limits = Limits.NONE.withTaste(2).withSharing(true);
        Pantry pantry = new Pantry(Bundle.STUDY.shelf()::food, Bundle.STUDY.substitutes(), Bundle.STUDY.english());
        long before = System.nanoTime();
        Case on = new Case(dish, Plan.EMPTY, Wishes.of(dish, Plan.EMPTY, pantry, Bundle.STUDY.books(), limits), limits, Bundle.STUDY.books());
        Advisor advisor = on.advisor();
        double ready = (System.nanoTime() - before) / 1e6;
        for (Aim aim : List.of(Aim.FEWEST_CHANGES, Aim.LEAST_MONEY, Aim.LEAST_DEPARTURE)) {
            before = System.nanoTime();
            Advised best = advisor.best(goal(on, 0.5), aim).orElseThrow();
            double asked = (System.nanoTime() - before) / 1e6;
            Outcome outcome = best.outcome();
            Paper.line("%s, %d wishes, ready %.0f ms; half, %s: %.1f ms, %s, %.2f g, %.1f a serve: %s", name, on.wishes().size(), ready, aim, asked,
                    best.proven() ? "proven" : "not proven", outcome.of(Nutrient.FASAT, Basis.SERVE), outcome.used(Basis.SERVE),
                    best.wishes().stream().map(wish -> wish.title()).toList());
        }
        before = System.nanoTime();
        int points = advisor.frontier().size();
        Paper.line("%s: frontier of %d plans in %.1f ms", name, points, (System.nanoTime() - before) / 1e6);
    }
}
