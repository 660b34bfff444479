package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Item;
import hobside.dish.Kit;
import hobside.dish.Plan;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Every set of wishes worked out by the ledger, one after the other: slow, and written apart from the search that it checks. */
public final class BruteForce {

    /** One set that can be made within the limits. */
    public record Tried(List<Wish> wishes, Outcome outcome) {

        public double fasat() {
            return outcome.of(Nutrient.FASAT, Basis.SERVE);
        }

        public double cost() {
            return outcome.used(Basis.SERVE);
        }

        public int changes() {
            return wishes.size();
        }

        public double unpriced() {
            return wishes.stream().filter(wish -> !wish.priced()).count();
        }

        public double departure() {
            return wishes.stream().mapToInt(Wish::departure).sum();
        }

        /** What an aim wants small. */
        public double by(Aim aim) {
            return switch (aim) {
                case FEWEST_CHANGES -> changes();
                case LEAST_MONEY -> unpriced() * 1e7 + cost();
                case LEAST_DEPARTURE -> departure();
                case MOST_SAVING -> fasat();
            };
        }
    }

    private final Dish dish;
    private final Plan plan;
    private final Books books;
    private final Limits limits;
    private final Kit kit;
    private final Set<Change> blocked;
    private final double costNow;
    private final double meatNow;
    private final List<Tried> tried = new ArrayList<>();

    private BruteForce(Case on) {
        this.dish = on.dish();
        this.plan = on.plan();
        this.books = on.books();
        this.limits = on.limits();
        this.kit = Kit.typical(books.cookery()).remembering();
        Working working = Working.of(dish, plan.told(), kit);
        this.blocked = new HashSet<>(working.blocked().keySet());
        this.costNow = Ledger.outcome(dish, plan.told(), books).used(Basis.SERVE);
        this.meatNow = meat(working);
    }

    public static BruteForce of(Case on) {
        BruteForce force = new BruteForce(on);
        Map<String, List<Wish>> slots = new LinkedHashMap<>();
        on.wishes().stream().filter(force::mayStand).forEach(wish ->
                slots.computeIfAbsent(wish.change().kind() == ChangeKind.BULK_OUT ? "filling" : wish.change().slot(), slot -> new ArrayList<>()).add(wish));
        force.choose(new ArrayList<>(slots.values()), 0, new ArrayList<>());
        return force;
    }

    public List<Tried> tried() {
        return tried;
    }

    public OptionalDouble best(Goal goal, Aim aim) {
        return tried.stream().filter(each -> reaches(goal, each.outcome())).mapToDouble(each -> each.by(aim)).min();
    }

    static boolean reaches(Goal goal, Outcome outcome) {
        ToDoubleFunction<Goal.Condition> sum = condition -> condition.fasat() * outcome.contents().known(Nutrient.FASAT)
                + condition.energy() * outcome.contents().known(Nutrient.ENERC) + condition.grams() * outcome.cookedGrams()
                + condition.cost() * outcome.bill().used() + condition.plates() * outcome.serves() / outcome.serveSize();
        return goal.conditions().stream().allMatch(condition -> sum.applyAsDouble(condition) <= 1e-7);
    }

    private boolean mayStand(Wish wish) {
        Change change = wish.change();
        boolean free = change.kind() == ChangeKind.SWAP || plan.changes().stream().noneMatch(line -> line.change().slot().equals(change.slot()));
        boolean sharing = List.of(ChangeKind.BULK_OUT, ChangeKind.MORE_PEOPLE, ChangeKind.SMALLER_SERVE).contains(change.kind());
        boolean kept = limits.keep().contains(change.of()) && List.of(ChangeKind.SWAP, ChangeKind.LEAVE_OUT).contains(change.kind());
        boolean costKnown = wish.priced() || Double.isNaN(limits.mostExtraCost());
        return free && costKnown && !kept && !limits.untouched().contains(change.of()) && (!sharing || limits.sharing()) && wish.departure() <= limits.taste();
    }

    private void choose(List<List<Wish>> slots, int from, List<Wish> chosen) {
        if (from == slots.size()) {
            tryOut(List.copyOf(chosen));
            return;
        }
        choose(slots, from + 1, chosen);
        for (Wish wish : slots.get(from)) {
            chosen.add(wish);
            choose(slots, from + 1, chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void tryOut(List<Wish> wishes) {
        if (limits.mostChanges() > 0 && wishes.size() > limits.mostChanges()) {
            return;
        }
        Collection<Change> told = told(wishes);
        Working working = Working.of(dish, told, kit);
        if (blocked.containsAll(working.blocked().keySet())) {
            Outcome outcome = Ledger.outcome(dish, told, books, kit);
            if (isWithin(wishes, outcome, meat(working))) {
                tried.add(new Tried(wishes, outcome));
            }
        }
    }

    private Collection<Change> told(List<Wish> wishes) {
        Map<String, Change> told = new LinkedHashMap<>();
        plan.told().forEach(change -> told.put(change.slot(), change));
        wishes.forEach(wish -> told.put(wish.change().slot(), wish.change()));
        return new ArrayList<>(told.values());
    }

    private boolean isWithin(List<Wish> wishes, Outcome outcome, double meat) {
        boolean cheap = !(outcome.used(Basis.SERVE) - costNow > limits.mostExtraCost() + 1e-7);
        boolean quick = limits.mostMinutes() < 0 || wishes.stream().mapToInt(Wish::minutes).sum() <= limits.mostMinutes();
        boolean dry = !(wishes.stream().mapToDouble(Wish::water).sum() > limits.mostWater() + 1e-7);
        boolean meaty = !(meat < Math.min(meatNow, limits.leastMeat()) - 1e-7);
        return cheap && quick && dry && meaty;
    }

    /** Grams of raw meat a serve. */
    private static double meat(Working working) {
        double grams = working.pot().items().stream().filter(item -> item.food().handling().melts().isPresent()).mapToDouble(Item::bought).sum();
        return grams * working.pot().serveSize() / working.pot().serves();
    }
}
