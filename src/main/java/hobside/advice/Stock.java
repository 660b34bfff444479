package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Kit;
import hobside.dish.Plan;
import hobside.dish.Pot;
import hobside.dish.Working;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A dish, the plan that stands, and the working that tells what more changes do to it. */
final class Stock {

    private final Dish dish;
    private final Plan plan;
    private final Books books;
    private final Kit kit;
    private final Set<Change> blocked;

    Stock(Dish dish, Plan plan, Books books) {
        this.dish = dish;
        this.plan = plan;
        this.books = books;
        this.kit = Kit.typical(books.cookery()).remembering();
        this.blocked = new HashSet<>(Working.of(dish, plan.told(), kit).blocked().keySet());
    }

    Dish dish() {
        return dish;
    }

    Plan plan() {
        return plan;
    }

    Kit kit() {
        return kit;
    }

    Outcome outcome(List<Wish> wishes) {
        return Ledger.outcome(dish, Plans.with(plan, wishes).told(), books, kit);
    }

    /** What is told of the plan with these wishes. */
    List<Change> told(List<Wish> wishes) {
        return Plans.with(plan, wishes).told();
    }

    double[] tally(Pot pot) {
        return Tally.of(pot, books.prices());
    }

    Working working(Collection<Change> changes) {
        return Working.of(dish, changes, kit);
    }

    /** Whether the wishes can all be made, and nothing of the plan is blocked by them that was not blocked before. */
    boolean works(Working working) {
        return blocked.containsAll(working.blocked().keySet());
    }

    boolean blocks(Change change) {
        return blocked.contains(change);
    }

    /** Every way to choose at most one wish of each slot and one filling, nothing first. Gives up, with fewer ways, when there are more than so many. */
    static Ways ways(Collection<Wish> wishes, int most) {
        List<List<Wish>> ways = new ArrayList<>(List.of(List.of()));
        for (List<Wish> slot : slots(wishes)) {
            List<List<Wish>> more = new ArrayList<>(ways);
            for (List<Wish> way : ways) {
                for (Wish wish : slot) {
                    more.add(with(way, wish));
                }
            }
            if (more.size() > most) {
                return new Ways(ways, false);
            }
            ways = more;
        }
        return new Ways(ways, true);
    }

    /** Sets of wishes, and whether these are all there are. */
    record Ways(List<List<Wish>> sets, boolean all) {}

    private static List<Wish> with(List<Wish> way, Wish wish) {
        List<Wish> more = new ArrayList<>(way);
        more.add(wish);
        return more;
    }

    /** One filling is enough for a pot; else one change of each kind to an ingredient. */
    private static String slot(Change change) {
        return change.kind() == ChangeKind.BULK_OUT ? ChangeKind.BULK_OUT.word() : change.slot();
    }

    private static List<List<Wish>> slots(Collection<Wish> wishes) {
        Map<String, List<Wish>> slots = new LinkedHashMap<>();
        wishes.forEach(wish -> slots.computeIfAbsent(slot(wish.change()), slot -> new ArrayList<>()).add(wish));
        return List.copyOf(slots.values());
    }
}
