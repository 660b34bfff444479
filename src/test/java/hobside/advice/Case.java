package hobside.advice;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.ledger.Books;
import hobside.measure.Millilitres;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** An invented dish with a plan that stands, wishes and limits, drawn by a seed. The changes of one ingredient get in each other's way. */
public record Case(Dish dish, Plan plan, List<Wish> wishes, Limits limits, Books books) {

    public static final Limits WIDE = Limits.NONE.withTaste(2).withSharing(true);

    public static Case of(long seed, int wishes) {
        return of(seed, wishes, 5);
    }

    /**
     * A made-up case, the same for the same seed.
     *
     * @param ingredients how many ingredients that can be changed; more give more wishes to choose from
     */
    public static Case of(long seed, int wishes, int ingredients) {
        Random random = new Random(seed);
        Dish dish = dish(random, ingredients);
        Plan plan = plan(random, dish);
        List<Wish> all = new ArrayList<>();
        changes(random, dish).forEach(change -> all.add(Wish.of(change, dish, plan, Fixtures.books())));
        Collections.shuffle(all, random);
        List<Wish> some = all.subList(0, Math.min(wishes, all.size()));
        return new Case(dish, plan, List.copyOf(some), limits(random), Fixtures.books());
    }

    private static Dish dish(Random random, int count) {
        List<Ingredient> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(switch (i % 6) {
                case 0 -> cut("cut" + i, random, CookingMethod.PAN_BROWNED, CookingMethod.BRAISED);
                case 1 -> plainly("cream" + i, Fixtures.CREAM, 100 + random.nextInt(600));
                case 2 -> plainly("lard" + i, Fixtures.LARD, random.nextInt(60));
                case 3 -> random.nextBoolean() ? cut("fried" + i, random, CookingMethod.PAN_FRIED) : cut("stew" + i, random, CookingMethod.STEWED);
                case 4 -> new Ingredient("oil" + i, Fixtures.OIL, Quantity.grams(10 + random.nextInt(300)), new Preparation("", List.of(), random.nextBoolean()));
                default -> plainly("tin" + i, Fixtures.TIN, 200 + random.nextInt(600));
            });
        }
        all.add(plainly("water", Fixtures.WATER, random.nextInt(500)));
        return Fixtures.dish(all.toArray(Ingredient[]::new));
    }

    private static Ingredient cut(String id, Random random, CookingMethod... ways) {
        return new Ingredient(id, Fixtures.CUT, Quantity.grams(200 + random.nextInt(1200)), Preparation.cooked(ways));
    }

    private static Ingredient plainly(String id, Food food, double grams) {
        return Ingredient.of(id, food, Quantity.grams(grams));
    }

    private static Plan plan(Random random, Dish dish) {
        return switch (random.nextInt(8)) {
            case 0 -> Plan.of(new Trim("cut0", Taken.share(0.4)), new MorePeople(2));
            case 1 -> Plan.of(new Skim(Taken.share(0.5)));
            case 2 -> Plan.of(new Skim(Taken.weighed(1 + random.nextInt(60))), new CutDown("cream1", 0.9));
            case 3 -> Plan.of(new Swap("cut0", Fixtures.LEAN, Quantity.grams(500)), new Add(Fixtures.ingredient(Fixtures.BEANS, 100)));
            case 4 -> Plan.of(new LeaveOut(dish.ingredients().get(1).id()));
            default -> Plan.EMPTY;
        };
    }

    private static List<Change> changes(Random random, Dish dish) {
        List<Change> all = new ArrayList<>(List.of(new Skim(Taken.TYPICAL), new SmallerServe(0.75), new MorePeople(1 + random.nextInt(4)),
                new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 300), 2),
                new BulkOut(Fixtures.ingredient(Fixtures.LEAN, 200), 3)));
        for (Ingredient each : dish.ingredients()) {
            if (!each.id().equals("water")) {
                all.addAll(changes(random, each));
            }
        }
        return all;
    }

    private static List<Change> changes(Random random, Ingredient each) {
        String id = each.id();
        List<Change> all = new ArrayList<>(List.of(new CutDown(id, 0.5), new CutDown(id, 0.75), new LeaveOut(id),
                new Swap(id, random.nextBoolean() ? Fixtures.LEAN : Fixtures.BEANS, Quantity.grams(each.quantity().edible().value() * 0.8)),
                new Swap(id, Fixtures.OIL, Quantity.grams(20 + random.nextInt(50)))));
        switch (each.food().id()) {
            case "cut" -> all.addAll(List.of(new Trim(id, Taken.TYPICAL), new PourOff(id, Taken.TYPICAL), new Trim(id, Taken.share(0.5)),
                    new CookAnotherWay(id, random.nextBoolean() ? CookingMethod.GRILLED : CookingMethod.BAKED)));
            case "cream" -> all.addAll(List.of(thinned(each, 0.5), thinned(each, 1)));
            case "tin" -> all.add(new Drain(id, Taken.TYPICAL));
            default -> { }
        }
        return all;
    }

    private static Dilute thinned(Ingredient each, double share) {
        double volume = each.quantity().edible().value();
        return new Dilute(each.id(), Millilitres.of(volume * share), Millilitres.of(volume));
    }

    private static Limits limits(Random random) {
        return random.nextInt(3) == 0 ? WIDE : new Limits(random.nextInt(4) == 0 ? Set.of("cut0") : Set.of(), random.nextInt(6) == 0 ? Set.of("cream1") : Set.of(),
                random.nextInt(3) == 0 ? 1 + random.nextInt(4) : 0, random.nextInt(3) == 0 ? random.nextInt(60) - 30 : Double.NaN,
                random.nextInt(3) == 0 ? random.nextInt(12) : -1, random.nextInt(3), true, random.nextInt(4) == 0 ? random.nextInt(700) : Double.NaN,
                random.nextInt(4) == 0 ? random.nextInt(150) : Double.NaN, random.nextInt(3) > 0);
    }

    /** The same with everything allowed. */
    public Case wide() {
        return new Case(dish, plan, wishes, WIDE, books);
    }

    /** The same from the dish as it is cooked. */
    public Case fresh() {
        return new Case(dish, Plan.EMPTY, wishes, limits, books);
    }

    public Advisor advisor() {
        return Advisor.of(dish, plan, wishes, books, limits);
    }

    /** A bundled dish as it is cooked, with the first of its wishes within the limits. */
    static Case bundled(String name, Limits limits, int most) {
        Dish dish = Bundle.dish(name);
        Pantry pantry = new Pantry(Bundle.STUDY.shelf()::food, Bundle.STUDY.substitutes(), Bundle.STUDY.english());
        List<Wish> wishes = Wishes.of(dish, Plan.EMPTY, pantry, Bundle.STUDY.books(), limits);
        return new Case(dish, Plan.EMPTY, wishes.subList(0, Math.min(most, wishes.size())), limits, Bundle.STUDY.books());
    }
}
