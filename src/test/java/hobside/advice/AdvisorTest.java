package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Seeds;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.dish.Skim;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AdvisorTest {

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

    private static Case bundled(String name, Limits limits, int most) {
        Dish dish = Bundle.dish(name);
        Pantry pantry = new Pantry(Bundle.STUDY.shelf()::food, Bundle.STUDY.substitutes(), Bundle.STUDY.english());
        List<Wish> wishes = Wishes.of(dish, Plan.EMPTY, pantry, Bundle.STUDY.books(), limits);
        return new Case(dish, Plan.EMPTY, wishes.subList(0, Math.min(most, wishes.size())), limits, Bundle.STUDY.books());
    }

    @Test
    void on_the_bundled_dishes_the_plan_is_the_best_of_all_that_there_are() {
        for (String name : Bundle.DISHES) {
            Case on = bundled(name, Limits.NONE.withSharing(true), 10);
            isTheBest(on, BruteForce.of(on), on.advisor());
        }
    }

    @Test
    void the_next_best_change_is_the_one_that_saves_most_on_its_own() {
        for (String name : Bundle.DISHES) {
            List<Next> next = bundled(name, Limits.NONE, 100).advisor().nextBest();
            assertFalse(next.isEmpty());
            assertTrue(next.stream().allMatch(each -> each.saved() <= next.get(0).saved() && each.saved() > 0));
            List<Next> cheap = next.stream().sorted(Next.perCoin()).toList();
            assertTrue(cheap.get(0).extraCost() <= 0 || next.stream().allMatch(each -> each.extraCost() > 0));
        }
    }

    @Test
    void no_wish_breaks_a_limit_and_each_saves_saturated_fat() {
        for (String name : Bundle.DISHES) {
            Case on = bundled(name, Limits.NONE, 100);
            double now = Ledger.outcome(on.dish(), List.of(), on.books()).of(Nutrient.FASAT, Basis.SERVE);
            assertFalse(on.wishes().isEmpty());
            for (Wish wish : on.wishes()) {
                assertTrue(on.limits().allow(wish.change()) && wish.departure() <= 1, wish.title());
                assertTrue(Ledger.outcome(on.dish(), List.of(wish.change()), on.books()).of(Nutrient.FASAT, Basis.SERVE) < now, wish.title());
            }
        }
    }

    @Test
    void no_food_brings_an_allergen_that_the_dish_does_not_hold_unless_it_may() {
        int risky = 0;
        for (String name : Bundle.DISHES) {
            Set<String> held = new HashSet<>();
            Bundle.dish(name).ingredients().forEach(each -> held.addAll(each.food().handling().warnings().allergens()));
            assertTrue(bundled(name, sharing(false), 1000).wishes().stream().allMatch(wish -> held.containsAll(allergens(wish))), name);
            risky += (int) bundled(name, sharing(true), 1000).wishes().stream().filter(wish -> !held.containsAll(allergens(wish))).count();
        }
        assertTrue(risky > 0);
    }

    private static Set<String> allergens(Wish wish) {
        return Wish.brought(wish.change()).map(food -> food.handling().warnings().allergens()).orElse(Set.of());
    }

    private static Limits sharing(boolean newAllergens) {
        return new Limits(Set.of(), Set.of(), 0, Double.NaN, -1, 2, newAllergens, Double.NaN, Double.NaN, true);
    }

    @Test
    void what_must_stay_is_not_exchanged_and_what_is_untouched_is_not_changed() {
        Limits limits = new Limits(Set.of("ribs"), Set.of("dripping"), 0, Double.NaN, -1, 2, true, Double.NaN, Double.NaN, true);
        List<Wish> wishes = bundled("ropewalk-rib-pot", limits, 1000).wishes();
        assertTrue(wishes.stream().anyMatch(wish -> wish.change().kind() == ChangeKind.TRIM));
        assertTrue(wishes.stream().noneMatch(wish -> wish.change().of().equals("dripping")));
        assertTrue(wishes.stream().filter(wish -> wish.change().of().equals("ribs"))
                .noneMatch(wish -> wish.change().kind() == ChangeKind.SWAP || wish.change().kind() == ChangeKind.LEAVE_OUT));
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
