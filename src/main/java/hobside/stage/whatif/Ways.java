package hobside.stage.whatif;

import hobside.dish.Change;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.food.Food;
import hobside.food.Shelf;
import hobside.food.Substitute;
import hobside.talk.Demo;
import hobside.talk.Stand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is likely to be asked about an ingredient, or about the pot: other foods, other amounts, without it, and changes off or on. */
public final class Ways {

    /** Other foods that are listed at once; all others can be searched for. */
    private static final int FOODS = 6;

    private static final double HALF = 0.5;
    private static final double HALF_AS_MUCH_AGAIN = 1.5;

    private final Demo demo;
    private final Stand.Beside beside;
    private final Notions notions;

    private Ways(Demo demo, Stand.Beside beside) {
        this.demo = demo;
        this.beside = beside;
        this.notions = Notions.of(demo, beside.tongue());
    }

    /** One likely question: what it is, and what it would be. */
    public record Way(String label, Notion notion) {}

    /** An ingredient of the dish or of the plan: its id, its name, and what of it goes in now. */
    public record Row(String id, String name, String now) {}

    /** All ingredients, those of the dish first. */
    public static List<Row> ingredients(Demo demo) {
        List<String> ids = new ArrayList<>(demo.dish().ingredients().stream().map(Ingredient::id).toList());
        demo.plan().changes().stream().map(Plan.Planned::change).filter(change -> Standing.brings(change).isPresent() && !ids.contains(change.of()))
                .forEach(change -> ids.add(change.of()));
        return ids.stream().map(id -> row(demo, Standing.of(demo, id).orElseThrow())).toList();
    }

    private static Row row(Demo demo, Standing now) {
        String name = Names.of(demo.dish(), demo.plan()).apply(now.id());
        boolean other = now.base().filter(base -> !base.food().id().equals(now.food().id())).isPresent();
        String goesIn = now.quantity().amount().written() + (other ? " " + Names.brief(now.food().name()) : "");
        return new Row(now.id(), name, now.in() ? goesIn : "left out");
    }

    /** What may be asked about this ingredient, the likeliest first; about the pot as a whole for an empty id. */
    public static List<Way> of(Demo demo, String id, Stand.Beside beside, Shelf shelf) {
        Ways ways = new Ways(demo, beside);
        List<Way> all = new ArrayList<>();
        Standing.of(demo, id).ifPresent(now -> ways.ingredient(now, shelf, all));
        ways.toggles(id, all);
        return all;
    }

    private void ingredient(Standing now, Shelf shelf, List<Way> all) {
        foods(now, shelf).stream().limit(FOODS).forEach(swap -> instead(now, swap, shelf).ifPresent(all::add));
        if (now.in()) {
            amount(now, HALF, "half of it", all);
            amount(now, HALF_AS_MUCH_AGAIN, "half as much again", all);
            all.add(new Way("leave it out", notions.without(now.id())));
        }
    }

    private void amount(Standing now, double share, String words, List<Way> all) {
        all.add(new Way(words + ", " + now.quantity().amount().times(share).written(), notions.share(now.id(), share)));
    }

    /** Those that lower the saturated fat first; the book is read for the food of the dish, and for what is in its place now. */
    private List<Substitute> foods(Standing now, Shelf shelf) {
        List<Substitute> all = new ArrayList<>(beside.substitutes().of(now.base().map(Ingredient::food).orElse(now.food()).id()));
        all.addAll(beside.substitutes().of(now.food().id()));
        Set<String> seen = new HashSet<>(Set.of(now.food().id()));
        all.sort(Comparator.comparing(swap -> !swap.helps()));
        return all.stream().filter(swap -> seen.add(swap.pair().instead()) && shelf.food(swap.pair().instead()).isPresent()).toList();
    }

    private Optional<Way> instead(Standing now, Substitute swap, Shelf shelf) {
        boolean ofBase = now.base().filter(base -> base.food().id().equals(swap.pair().food())).isPresent();
        double edible = (ofBase ? now.base().get().quantity() : now.quantity()).edible().value() * swap.ratio();
        return shelf.food(swap.pair().instead()).map(food -> food(now.id(), food, edible));
    }

    private Way food(String id, Food food, double edible) {
        Notion notion = notions.food(id, food, Standing.grams(food, edible));
        return new Way(Standing.grams(food, edible).amount().written() + " " + food.name(), notion);
    }

    /** Any food of the shelf in the place of an ingredient, weight for weight of what goes in now; in the pot for an empty id. */
    public static Way found(Demo demo, String id, Food food, Stand.Beside beside) {
        Ways ways = new Ways(demo, beside);
        Optional<Standing> now = Standing.of(demo, id);
        if (now.isEmpty()) {
            return new Way("add " + FIRST_GRAMS + " g " + food.name(), ways.notions.added(food, Standing.grams(food, FIRST_GRAMS * food.handling().edible())));
        }
        double ratio = beside.substitutes().between(now.get().food().id(), food.id()).map(Substitute::ratio).orElse(1.0);
        return ways.food(id, food, now.get().quantity().edible().value() * ratio);
    }

    /** What is added to begin with, until another amount is said. */
    private static final int FIRST_GRAMS = 100;

    private void toggles(String id, List<Way> all) {
        for (int i = 0; i < demo.plan().size(); i++) {
            Change change = demo.plan().changes().get(i).change();
            if (change.of().equals(id) && Standing.brings(change).isEmpty()) {
                Notion notion = notions.toggled(i);
                all.add(new Way(notion.title(), notion));
            }
        }
        broughtBack(id, all);
    }

    private void broughtBack(String id, List<Way> all) {
        Optional<Standing> out = Standing.of(demo, id).filter(now -> now.base().isEmpty() && !now.in());
        out.flatMap(now -> bringer(id)).ifPresent(index -> all.add(new Way(notions.toggled(index).title(), notions.toggled(index))));
    }

    private Optional<Integer> bringer(String id) {
        for (int i = 0; i < demo.plan().size(); i++) {
            Change change = demo.plan().changes().get(i).change();
            if (change.of().equals(id) && Standing.brings(change).isPresent()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** The amount asked of what goes in for this ingredient; empty when it cannot be understood. */
    public static Optional<Notion> amount(Demo demo, String id, String text, Stand.Tongue tongue) {
        return Standing.of(demo, id).flatMap(now -> AmountAsked.read(text, now.food(), now.quantity(), demo.dish().serving().spoons()))
                .map(quantity -> Notions.of(demo, tongue).amount(id, quantity));
    }

    /** The likely foods of an ingredient before all others, as a search begins with. */
    public static List<Food> likely(Demo demo, String id, Stand.Beside beside, Shelf shelf) {
        return Standing.of(demo, id).map(now -> new Ways(demo, beside).foods(now, shelf).stream()
                .map(swap -> shelf.food(swap.pair().instead()).orElseThrow()).toList()).orElse(List.of());
    }
}
