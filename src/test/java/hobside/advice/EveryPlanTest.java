package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Seeds;
import hobside.dish.ChangeKind;
import hobside.dish.Skim;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The advisor held against every plan that there is, worked out one after the other: exact, and slow. */
class EveryPlanTest {

    private static final int DISHES = Seeds.upTo(300);

    private static List<Goal> goals(Case on) {
        Outcome start = Ledger.outcome(on.dish(), List.of(), on.books());
        return List.of(Goal.lessBy(0.25, start), Goal.lessBy(0.6, start), Goal.atMost(start.of(Nutrient.FASAT, Basis.SERVE) * 0.15),
                Goal.shareOfEnergy(0.2), Goal.per100(3), Goal.lessBy(0.4, start).and(Goal.shareOfEnergy(0.25)));
    }

    private static void isTheBest(Case on, BruteForce force, Advisor advisor) {
        for (Goal goal : goals(on)) {
            for (Aim aim : Aim.values()) {
                Optional<Advised> found = advisor.best(goal, aim);
                OptionalDouble best = force.best(goal, aim);
                assertEquals(best.isPresent(), found.isPresent(), () -> goal + " " + aim + " " + on);
                found.ifPresent(advised -> assertBest(on, advised, best.getAsDouble(), aim));
                found.ifPresent(advised -> isSound(on, force, advised, goal));
            }
        }
    }

    private static void assertBest(Case on, Advised advised, double best, Aim aim) {
        BruteForce.Tried tried = new BruteForce.Tried(advised.wishes(), advised.outcome());
        assertTrue(advised.proven());
        assertEquals(best, tried.by(aim), 1e-6, () -> aim + " " + on + advised.wishes());
        assertEquals(aim == Aim.LEAST_MONEY ? tried.cost() : best, advised.bound(), 1e-6);
    }

    @Test
    void the_plan_is_the_best_of_all_that_there_are_and_keeps_every_limit() {
        for (int seed = 0; seed < DISHES; seed++) {
            Case on = Case.of(seed, seed % 10 == 0 ? 12 : 8 + seed % 3);
            BruteForce force = BruteForce.of(on);
            Advisor advisor = on.advisor();
            isTheBest(on, force, advisor);
            isTheClosest(on, force, advisor.closest());
        }
    }

    private static void isTheClosest(Case on, BruteForce force, Advised closest) {
        double now = Ledger.outcome(on.dish(), on.plan().told(), on.books()).of(Nutrient.FASAT, Basis.SERVE);
        assertEquals(force.best(Goal.ANY, Aim.MOST_SAVING).orElse(now), closest.outcome().of(Nutrient.FASAT, Basis.SERVE), 1e-6);
    }

    /** Worked out afresh by the ledger, and one of the sets that the slow way found to be within the limits. */
    private static void isSound(Case on, BruteForce force, Advised advised, Goal goal) {
        double afresh = Ledger.outcome(on.dish(), advised.plan().told(), on.books()).of(Nutrient.FASAT, Basis.SERVE);
        assertEquals(afresh, advised.outcome().of(Nutrient.FASAT, Basis.SERVE), 1e-9);
        assertTrue(BruteForce.reaches(goal, advised.outcome()) && goal.isReached(advised.outcome()));
        assertTrue(force.tried().stream().anyMatch(each -> each.changes() == advised.wishes().size() && each.wishes().containsAll(advised.wishes())),
                () -> "not among those within the limits: " + advised.wishes());
    }

    @Test
    void the_frontier_is_what_is_left_of_all_plans_when_the_worse_ones_are_struck_out() {
        for (int seed = 0; seed < Seeds.upTo(60); seed++) {
            Case on = Case.of(seed, 8);
            List<Point> points = on.advisor().frontier();
            List<double[]> left = front(BruteForce.of(on).tried());
            assertEquals(left.size(), points.size(), "seed " + seed);
            for (double[] each : left) {
                assertTrue(points.stream().anyMatch(point -> isSame(each, point)), "seed " + seed);
            }
        }
    }

    private static boolean isSame(double[] each, Point point) {
        return Math.abs(each[0] - point.fasat()) < 1e-6 && Math.abs(each[1] - point.cost()) < 1e-6 && each[2] == point.changes();
    }

    private static List<double[]> front(List<BruteForce.Tried> tried) {
        List<double[]> left = new ArrayList<>();
        for (BruteForce.Tried each : tried) {
            double[] own = {each.fasat(), each.cost(), each.changes()};
            boolean worse = tried.stream().anyMatch(other -> other != each && other.fasat() <= own[0] + 1e-7 && other.cost() <= own[1] + 1e-7
                    && other.changes() <= own[2] && (other.fasat() < own[0] - 1e-7 || other.cost() < own[1] - 1e-7 || other.changes() < own[2]));
            if (!worse && left.stream().noneMatch(known -> Math.abs(known[0] - own[0]) + Math.abs(known[1] - own[1]) < 1e-6 && known[2] == own[2])) {
                left.add(own);
            }
        }
        return left;
    }

    @Test
    void the_same_question_gets_the_same_plan() {
        for (int seed = 0; seed < 15; seed++) {
            Case on = Case.of(seed, 14);
            Goal goal = goals(on).get(1);
            assertEquals(on.advisor().best(goal, Aim.FEWEST_CHANGES).map(Advised::plan), Case.of(seed, 14).advisor().best(goal, Aim.FEWEST_CHANGES).map(Advised::plan));
        }
    }

    @Test
    void a_search_cut_short_says_so_and_its_bound_is_sound() {
        int cut = 0;
        for (int seed = 0; seed < 8; seed++) {
            Case on = Case.of(seed, 30, 9).wide();
            Goal goal = goals(on).get(1);
            Optional<Advised> whole = on.advisor().best(goal, Aim.LEAST_MONEY);
            Optional<Advised> hasty = Advisor.of(on.dish(), new Advisor.Asked(on.plan(), on.wishes(), on.limits(), 1), on.books()).best(goal, Aim.LEAST_MONEY);
            if (whole.isPresent() && !hasty.orElseThrow().proven()) {
                cut++;
                assertTrue(hasty.get().bound() <= whole.get().outcome().used(Basis.SERVE) + 1e-6);
            }
        }
        assertTrue(cut > 0);
    }

    @Test
    void on_the_bundled_dishes_the_plan_is_the_best_of_all_that_there_are() {
        for (String name : Bundle.DISHES) {
            Case on = Case.bundled(name, Limits.NONE.withSharing(true), 10);
            isTheBest(on, BruteForce.of(on), on.advisor());
        }
    }

    @Test
    void ingredients_add_up_unless_a_skimming_was_weighed() {
        for (int seed = 0; seed < DISHES; seed++) {
            Case on = Case.of(seed, 12);
            boolean weighed = on.plan().told().stream().anyMatch(change -> change instanceof Skim skim && skim.taken().weighed().isPresent());
            assertEquals(weighed, Board.of(new Stock(on.dish(), on.plan(), on.books()), standing(on)).isOne(), "seed " + seed);
        }
    }

    /** The wishes whose slot is free. */
    private static List<Wish> standing(Case on) {
        return on.wishes().stream().filter(wish -> wish.change().kind() == ChangeKind.SWAP || on.plan().slot(wish.change().slot()).isEmpty()).toList();
    }
}
