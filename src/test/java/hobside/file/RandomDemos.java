package hobside.file;

import hobside.advice.Limits;
import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CookAnotherWay;
import hobside.dish.Course;
import hobside.dish.CutDown;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Edit;
import hobside.talk.Script;
import hobside.talk.Setting;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.MethodStep;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Stage;
import hobside.dish.Station;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Composition;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.food.Shelf;
import hobside.food.Source;
import hobside.food.Weigher;
import hobside.measure.Amount;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.Millilitres;
import hobside.measure.Range;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** Demos of every shape from a seed: any food, unit, change and note that the program can hold. */
final class RandomDemos {

    private static final String[] WORDS = {"", "sliced", "gehäutet – \"fein\"", "a\\b", "crushed, 2 × per person", "🍲 hot"};

    private final Random random;
    private final Shelf shelf;
    private final SpoonSet spoons;
    private final List<Food> own = new ArrayList<>();

    private RandomDemos(long seed, Shelf shelf) {
        this.random = new Random(seed);
        this.shelf = shelf;
        this.spoons = SpoonSet.values()[random.nextInt(SpoonSet.values().length)];
    }

    static Demo demo(long seed, Shelf shelf) {
        return new RandomDemos(seed, shelf).demo();
    }

    private Demo demo() {
        for (int i = random.nextInt(3); i > 0; i--) {
            own.add(ownFood("own-" + i));
        }
        if (!own.isEmpty() && random.nextBoolean()) {
            own.add(ownFood("butter"));
            own.add(Food.cut(Label.of("own-cut", "own cut"), own.get(0), List.of(new Part(Part.Kind.FAT,
                    shelf.food("lard").orElseThrow(), share())),
                    Handling.PLAIN.withEdible(0.7)));
        }
        List<Ingredient> ingredients = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(8); i++) {
            ingredients.add(ingredient("line-" + i));
        }
        List<MethodStep> method = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            method.add(new MethodStep(Stage.values()[random.nextInt(5)], "stir\nand wait", random.nextInt(90), course()));
        }
        Dish dish = new Dish(new Dish.Heading("Pot " + random.nextInt(), word()),
                new Dish.Serving(1 + random.nextInt(500), spoons, random.nextInt(40) / 3.0 - 10), ingredients, method);
        return new Demo(dish, plan(), script(), new Demo.Measure(random.nextBoolean() ? "eu-ri" : "", word(), limits()), setting());
    }

    private Course course() {
        Course course = Course.USUAL.meanwhile(random.nextInt(4) == 0);
        course = random.nextBoolean() ? course.handsFor(random.nextInt(20)) : course;
        return random.nextBoolean() ? course.on(Station.values()[random.nextInt(Station.values().length)]) : course;
    }

    private Setting setting() {
        Setting.Hall hall = new Setting.Hall(random.nextInt(5), random.nextInt(3), random.nextBoolean());
        Setting setting = random.nextBoolean() ? Setting.USUAL : Setting.USUAL.with(hall);
        for (int i = random.nextInt(3); i > 0; i--) {
            Setting.Wanted wanted = new Setting.Wanted(Setting.Shown.values()[random.nextInt(4)],
                    random.nextBoolean() ? Optional.of(Cue.Who.HELPER) : Optional.empty(), random.nextInt(60), random.nextInt(200), random.nextBoolean());
            setting = setting.with("step:" + (1 + random.nextInt(4)), wanted);
        }
        return setting;
    }

    private Range share() {
        double low = random.nextDouble() * 0.3;
        return random.nextBoolean() ? Range.exactly(low) : Range.of(low, low + 0.1, low + 0.2);
    }

    private Food ownFood(String id) {
        Map<Nutrient, Double> figures = new EnumMap<>(Nutrient.class);
        figures.put(Nutrient.FAT, random.nextDouble() * 50);
        figures.put(Nutrient.ENERC_KCAL, random.nextDouble() * 500);
        Handling handling = new Handling(0.5 + random.nextDouble() / 2, Optional.empty(), 8.5,
                Optional.of(Density.of(1 + random.nextDouble())),
                List.of(new Measure("scoop, heaped", Grams.of(10 + random.nextDouble()), random.nextBoolean())),
                new Handling.Warnings(Set.of("milk"), Set.of("hot-fat")));
        return Food.whole(new Label(id, "own " + id, List.of("mine"), "own", new Source("a label", random.nextBoolean() ? "7" : "")),
                Composition.of(figures), handling);
    }

    private String word() {
        return WORDS[random.nextInt(WORDS.length)];
    }

    private Food food() {
        List<Food> foods = !own.isEmpty() && random.nextInt(3) == 0 ? own : shelf.foods();
        Food food = foods.get(random.nextInt(foods.size()));
        return !food.parts().isEmpty() && random.nextBoolean() ? food.withShare(food.parts().get(0).kind(), share()) : food;
    }

    private Quantity quantity(Food food) {
        List<String> units = new Weigher(spoons).unitsFor(food);
        double count = switch (random.nextInt(5)) {
            case 0 -> 1 + random.nextInt(9);
            case 1 -> random.nextInt(40) / 4.0;
            case 2 -> random.nextInt(30) / 3.0;
            case 3 -> random.nextInt(900) / 100.0;
            default -> random.nextDouble() * 10;
        };
        Amount amount = Amount.of(count, units.get(random.nextInt(units.size())));
        Optional<Quantity> edible = IngredientReader.ofEdible(amount, food, spoons);
        Quantity quantity = Quantity.of(amount, food, spoons).orElseThrow();
        return switch (random.nextInt(6)) {
            case 0 -> edible.orElseThrow();
            case 1 -> new Quantity(amount, Grams.of(1 + random.nextDouble() * 500), Grams.of(1 + random.nextDouble() * 400));
            default -> quantity;
        };
    }

    private Ingredient ingredient(String id) {
        Food food = food();
        List<CookingMethod> cook = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            cook.add(method());
        }
        return new Ingredient(id, food, quantity(food), new Preparation(word(), cook, random.nextInt(5) == 0));
    }

    private CookingMethod method() {
        return CookingMethod.values()[random.nextInt(CookingMethod.values().length)];
    }

    private Plan plan() {
        List<Plan.Planned> lines = new ArrayList<>();
        for (ChangeKind kind : ChangeKind.values()) {
            if (random.nextInt(3) > 0) {
                lines.add(random.nextInt(lines.size() + 1), new Plan.Planned(change(kind), random.nextBoolean(), word()));
            }
        }
        return new Plan(lines);
    }

    private Taken taken() {
        return switch (random.nextInt(4)) {
            case 0 -> Taken.TYPICAL;
            case 1 -> Taken.share(random.nextDouble());
            case 2 -> Taken.weighed(random.nextInt(500));
            default -> Taken.weighed(random.nextDouble() * 500);
        };
    }

    private Millilitres volume() {
        return Millilitres.of(random.nextBoolean() ? random.nextInt(2000) : random.nextInt(9) * spoons.cup().value() / 3);
    }

    private Change change(ChangeKind kind) {
        String of = "line-0";
        Food other = food();
        return switch (kind) {
            case ADD -> new Add(ingredient("extra"));
            case BULK_OUT -> new BulkOut(ingredient("filling"), random.nextInt(9));
            case LEAVE_OUT -> new LeaveOut(of);
            case SWAP -> new Swap(of, other, quantity(other));
            case CUT_DOWN -> new CutDown(of, random.nextInt(4) / 3.0);
            case DRAIN -> new Drain(of, taken());
            case RINSE -> new Rinse("taken-out-since");
            case SKIN_OFF -> new SkinOff(of, taken());
            case TRIM -> new Trim(of, taken());
            case DILUTE -> new Dilute(of, volume(), volume());
            case COOK_ANOTHER_WAY -> new CookAnotherWay(of, method());
            case POUR_OFF -> new PourOff(of, taken());
            case SKIM -> new Skim(taken());
            case SMALLER_SERVE -> new SmallerServe(0.25 + random.nextInt(4) / 6.0);
            case MORE_PEOPLE -> new MorePeople(random.nextInt(20));
        };
    }

    private Limits limits() {
        Limits limits = Limits.NONE;
        return random.nextBoolean() ? limits : limits.keeping(Set.of("item-1"), Set.of("item-2")).withTaste(random.nextInt(3))
                .withSharing(random.nextBoolean()).withMostChanges(random.nextInt(4)).withMostExtraCost(random.nextBoolean() ? Double.NaN : 20)
                .withMostMinutes(random.nextInt(30) - 1).withNewAllergens(random.nextBoolean());
    }

    /** Edits of every sort, on cues that need not be there. */
    private Script script() {
        Script script = new Script(random.nextBoolean() ? "en" : "es", new Script.Pacing(100 + random.nextInt(60), random.nextInt(60)),
                random.nextBoolean() ? Map.of("item-1", word() + " {x}") : Map.of(), List.of());
        for (int i = 0; i < random.nextInt(5); i++) {
            Cue.Details details = new Cue.Details(random.nextBoolean() ? Cue.Who.HELPER : Cue.Who.PRESENTER, random.nextInt(100), random.nextBoolean(),
                    new Cue.Needs(random.nextBoolean() ? List.of(word() + "1") : List.of(), random.nextBoolean() ? List.of("a jar") : List.of()));
            Edit.Traits traits = new Edit.Traits(random.nextBoolean() ? Optional.of(Cue.Kind.ASK) : Optional.empty(),
                    random.nextBoolean() ? Optional.of(details) : Optional.empty(), random.nextBoolean());
            Edit edit = new Edit("welcome/cue-" + i, random.nextBoolean() ? Map.of("en", "Words, \"quoted\" {saved}.") : Map.of(), traits,
                    random.nextBoolean() ? Optional.of(new Edit.Place("welcome", random.nextBoolean() ? "" : "welcome/hello")) : Optional.empty());
            script = script.with(edit);
        }
        return random.nextBoolean() ? script
                : script.with(Edit.own(script.freshKey(), new Edit.Place("recap", ""), Cue.Kind.SHOW, Map.of("es", "Mostrar la cuchara.")));
    }
}
