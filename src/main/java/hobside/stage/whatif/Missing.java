package hobside.stage.whatif;

import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.food.Substitute;
import hobside.food.Substitutes;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What can be done when an ingredient is missing or spoilt.
 *
 * <p>The order is open, and told on the screen: first what adds no allergen, then what is at hand, then what does the work of the
 * missing food, then what leads least far away, last the least saturated fat. Foods come from the book of swaps, read both ways, from
 * the bench, and from the shelf where the group is the same and the make-up much alike.
 */
public final class Missing {

    /** Foods of the shelf alone that are shown at most: our own choice. */
    private static final int FROM_THE_SHELF = 3;

    /** Foods of one group are alike when water, fat, protein and starch together differ by less, grams per 100 g: our own choice. */
    private static final double ALIKE = 30;

    /** A little of these gives the taste: weight for weight, one cannot stand for the other. */
    private static final Set<String> SEASONINGS = Set.of("spices-and-herbs", "sauces-and-seasonings");

    private static final List<Nutrient> MAKE_UP = List.of(Nutrient.WATER, Nutrient.FAT, Nutrient.PROCNT, Nutrient.CHOCDF);

    private final WhatIf whatIf;
    private final Standing gone;
    private final Substitutes book;
    private final Set<String> bench;

    private Missing(WhatIf whatIf, Standing gone) {
        this.whatIf = whatIf;
        this.gone = gone;
        this.book = whatIf.ground().beside().substitutes();
        this.bench = bench(whatIf.plan().plan(), whatIf.plan().dish().ingredients(), gone.id());
        // A swap's own food is beside it on the bench, to be shown; only the missing food itself is not.
        bench.remove(gone.food().id());
    }

    /** All ways out for this ingredient, the best first; the first never adds an allergen. */
    public static List<Remedy> of(WhatIf whatIf, String id, Shelf shelf) {
        Optional<Standing> standing = Standing.of(whatIf.plan(), id);
        return standing.map(gone -> new Missing(whatIf, gone).ranked(shelf)).orElse(List.of());
    }

    private static Set<String> bench(Plan plan, List<Ingredient> ingredients, String gone) {
        Set<String> foods = new HashSet<>();
        ingredients.forEach(each -> foods.add(each.food().id()));
        for (Plan.Planned planned : plan.changes()) {
            if (planned.on() && !planned.change().of().equals(gone)) {
                Standing.brings(planned.change()).ifPresent(each -> foods.add(each.food().id()));
                if (planned.change() instanceof Swap swap) {
                    foods.add(swap.food().id());
                }
            }
        }
        return foods;
    }

    private List<Remedy> ranked(Shelf shelf) {
        List<Remedy> all = new ArrayList<>();
        all.add(without());
        Set<String> seen = new HashSet<>(Set.of(gone.food().id()));
        for (Candidate candidate : candidates(shelf)) {
            if (seen.add(candidate.food().id())) {
                instead(candidate).ifPresent(all::add);
            }
        }
        all.sort(Comparator.comparing((Remedy remedy) -> !remedy.allergens().isEmpty())
                .thenComparing(remedy -> !remedy.place().isAtHand())
                .thenComparing(remedy -> remedy.role().kept())
                .thenComparing(Remedy::departure)
                .thenComparing(remedy -> -remedy.effect().saved(Nutrient.FASAT, Basis.SERVE).typical()));
        return all;
    }

    /** A food that may stand in: edible grams for each gram of the missing one, and its part. */
    private record Candidate(Food food, double ratio, Remedy.Role role) {}

    private List<Candidate> candidates(Shelf shelf) {
        List<Candidate> all = new ArrayList<>();
        for (Substitute swap : book.of(gone.food().id())) {
            shelf.food(swap.pair().instead()).map(food -> new Candidate(food, swap.ratio(), kept(swap.part(), swap.words().handling()))).ifPresent(all::add);
        }
        for (Substitute swap : book.swaps()) {
            if (swap.pair().instead().equals(gone.food().id())) {
                shelf.food(swap.pair().food()).map(food -> new Candidate(food, 1 / swap.ratio(), kept(swap.part(), ""))).ifPresent(all::add);
            }
        }
        all.addAll(alike(shelf));
        return all;
    }

    private static Remedy.Role kept(String part, String handling) {
        return new Remedy.Role(Remedy.Kept.KEPT, Optional.of(part), handling);
    }

    /** Foods of the same group and make-up: all that are on the bench, and a few of the shelf. */
    private List<Candidate> alike(Shelf shelf) {
        Food old = gone.food();
        if (SEASONINGS.contains(old.label().group())) {
            return List.of();
        }
        List<Food> near = shelf.foods().stream().filter(food -> food.label().group().equals(old.label().group()))
                .filter(food -> distance(food, old) < ALIKE).sorted(Comparator.comparingDouble(food -> distance(food, old))).toList();
        List<Candidate> all = new ArrayList<>();
        int fetched = 0;
        for (Food food : near) {
            boolean here = bench.contains(food.id());
            if (!food.id().equals(old.id()) && (here || fetched < FROM_THE_SHELF)) {
                all.add(new Candidate(food, 1, Remedy.Role.UNKNOWN));
                fetched += here ? 0 : 1;
            }
        }
        return all;
    }

    private static double distance(Food one, Food other) {
        double sum = 0;
        for (Nutrient nutrient : MAKE_UP) {
            sum += Math.abs(one.per100g(nutrient) - other.per100g(nutrient));
        }
        return sum;
    }

    private Optional<Remedy> instead(Candidate candidate) {
        Food food = candidate.food();
        boolean here = bench.contains(food.id());
        Quantity quantity = usual(food).orElseGet(() -> Standing.grams(food, gone.quantity().edible().value() * candidate.ratio()));
        Notion notion = notions().food(gone.id(), food, quantity);
        String label = food.name() + ", " + quantity.amount().written();
        Remedy.Place place = here ? Remedy.Place.ON_THE_BENCH : Remedy.Place.NOT_ON_THE_BENCH;
        return whatIf.blocked(notion).isPresent() ? Optional.empty() : Optional.of(remedy(notion, label, place, candidate.role()));
    }

    /** What the missing food was put in place of goes back in as the dish has it. */
    private Optional<Quantity> usual(Food food) {
        return gone.base().filter(base -> base.food().id().equals(food.id())).map(Ingredient::quantity);
    }

    private Remedy without() {
        Set<String> parts = new HashSet<>();
        book.of(gone.food().id()).forEach(swap -> parts.add(swap.part()));
        gone.base().flatMap(base -> book.between(base.food().id(), gone.food().id())).ifPresent(swap -> parts.add(swap.part()));
        Optional<String> part = parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts.stream().sorted().toList()));
        Notion notion = notions().without(gone.id());
        return remedy(notion, "leave it out", Remedy.Place.NONE_NEEDED, new Remedy.Role(Remedy.Kept.LOST, part, ""));
    }

    private Notions notions() {
        return Notions.of(whatIf.plan(), whatIf.ground().beside().tongue());
    }

    private Remedy remedy(Notion notion, String label, Remedy.Place place, Remedy.Role role) {
        Comparison effect = new Comparison(whatIf.asPlanned().reckoned().planned(), whatIf.totals(notion));
        return new Remedy(notion, label, place, role, effect, whatIf.allergens(notion.demo()));
    }

    /** The name of what is missing: "butter". */
    public static String named(WhatIf whatIf, String id) {
        return Standing.of(whatIf.plan(), id).map(gone -> Names.brief(gone.food().name())).orElse(id);
    }
}
