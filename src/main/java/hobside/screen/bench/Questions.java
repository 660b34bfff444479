package hobside.screen.bench;

import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.file.Limits;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Weigher;
import hobside.guide.Component;
import hobside.guide.Guide;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.FindScreen;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question.Reply;
import hobside.screen.ask.Question;
import hobside.screen.desk.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The questions the Bench asks about the dish itself: its ingredients, amounts, cooking, serves, name and guide. */
final class Questions {

    private Questions() {}

    /** Search for a food, then ask how much of it goes in. */
    static Next add(Bench bench) {
        return Next.to(FindScreen.of(bench, new FindScreen.Search("Add to the dish: find the food", bench.desk().demoShelf(),
                (here, food) -> askAmount(here, new Wanted(bench, food, "Add " + food.name(), ""), quantity -> added(bench, food, quantity)))));
    }

    private static Next added(Bench bench, Food food, Quantity quantity) {
        Dish dish = bench.demo().dish();
        String id = dish.freshId(food.id(), Set.of());
        Ingredient ingredient = Ingredient.of(id, food, quantity);
        Bench there = bench.at(bench.spot().withDishRow(dish.ingredients().size()));
        Next next = there.changed(bench.demo().with(dish.with(ingredient)), "Added " + food.name() + ".");
        boolean flesh = food.handling().melts().isPresent();
        return flesh ? thenCook((Bench) next.screen().orElseThrow(), ingredient, next) : next;
    }

    private static Next thenCook(Bench bench, Ingredient ingredient, Next next) {
        return new Next(cook(bench, ingredient).screen(), next.effects());
    }

    /** What an amount is asked of: the bench, the food, the title of the question, and the amount to begin with. */
    record Wanted(Bench bench, Food food, String title, String first) {}

    /** Asks for an amount of a food in the units the food has. */
    static Next askAmount(Screen back, Wanted wanted, Function<Quantity, Next> then) {
        SpoonSet spoons = wanted.bench().demo().dish().serving().spoons();
        List<String> units = new Weigher(spoons).unitsFor(wanted.food());
        return Next.to(LineScreen.of(back, new Question(wanted.title(), "how much", List.of("For example: 2 " + units.get(0)
                + ", 500 g, 1 1/2 kg. It can be measured in: " + String.join("; ", units) + "."), wanted.first(), text -> {
                    Optional<Quantity> quantity = Amount.parse(text).map(amount -> counted(amount, wanted.food()))
                            .flatMap(amount -> Quantity.of(amount, wanted.food(), spoons));
                    return quantity.filter(Questions::isSensible).map(known -> Reply.go(then.apply(known)))
                            .orElseGet(() -> Reply.wrong(whyNot(text, wanted.food(), units)));
                })));
    }

    /** A bare number counts pieces where the food has a measure that is a piece: "2" of stock cubes is two cubes. */
    private static Amount counted(Amount amount, Food food) {
        return food.handling().measures().stream().map(measure -> measure.name()).findFirst()
                .filter(name -> amount.unit().isEmpty() && !name.startsWith("cup") && !name.startsWith("tbsp") && !name.startsWith("tsp"))
                .map(name -> Amount.of(amount.count(), name)).orElse(amount);
    }

    private static boolean isSensible(Quantity quantity) {
        return quantity.asBought().value() > 0 && quantity.asBought().value() <= 1_000_000;
    }

    private static String whyNot(String text, Food food, List<String> units) {
        Optional<Amount> amount = Amount.parse(text);
        if (amount.isEmpty()) {
            return "\"" + text + "\" is not an amount. Write a number and a unit, such as 2 " + units.get(0) + " or 500 g.";
        }
        boolean known = units.contains(amount.get().unit());
        return known ? "That is nothing at all, or more than 1,000 kg." : "\"" + text + "\" cannot be weighed: " + food.name()
                + " is measured in " + String.join("; ", units) + ".";
    }

    /** Another amount of an ingredient of the dish. */
    static Next amount(Bench bench, Ingredient row) {
        if (bench.demo().dish().ingredient(row.id()).isEmpty()) {
            return Next.to(bench.saying("The plan brings this one in. Edit it on the plan's side."));
        }
        Wanted wanted = new Wanted(bench, row.food(), row.food().name(), row.quantity().amount().written());
        return askAmount(bench, wanted, quantity -> bench.changed(
                bench.demo().with(bench.demo().dish().with(row.with(quantity))), "Amount changed."));
    }

    /** How an ingredient's flesh is cooked in the dish. */
    static Next cook(Bench bench, Ingredient row) {
        List<List<CookingMethod>> ways = new ArrayList<>(List.of(List.of()));
        for (CookingMethod method : CookingMethod.values()) {
            ways.add(List.of(method));
        }
        ways.add(List.of(CookingMethod.PAN_BROWNED, CookingMethod.STEWED));
        ways.add(List.of(CookingMethod.PAN_BROWNED, CookingMethod.BRAISED));
        List<Menu.Row> rows = ways.stream().map(way -> new Menu.Row(Cooking.name(way), "", Cooking.about(way))).toList();
        Menu menu = new Menu("How cooked: the " + Names.brief(row),
                "It decides how much fat runs out of it, and where that fat goes.", rows, index -> bench.changed(
                        bench.demo().with(bench.demo().dish().with(row.with(row.preparation().withCook(ways.get(index))))),
                        "Cooked: " + Cooking.name(ways.get(index)) + "."));
        return Next.to(MenuScreen.of(bench, menu, ways.indexOf(row.preparation().cook())));
    }

    /** How many the dish feeds. */
    static Next serves(Bench bench) {
        Dish.Serving serving = bench.demo().dish().serving();
        return Next.to(LineScreen.of(bench, new Question("How many serves does the dish give as its people cook it?", "serves",
                List.of("This writes the dish down as it is. To share the same pot with more people as a change, use the row of the whole pot."),
                String.valueOf(serving.serves()), text -> {
                    if (serves(text).isEmpty()) {
                        return Reply.wrong(notServes(text));
                    }
                    Dish.Serving other = new Dish.Serving(serves(text).get(), serving.spoons(), serving.moisture());
                    return Reply.go(bench.changed(bench.demo().with(bench.demo().dish().with(other)), "Serves changed."));
                })));
    }

    /** Another name for the dish. */
    static Next name(Bench bench) {
        Dish dish = bench.demo().dish();
        return Next.to(LineScreen.of(bench, new Question("What is the dish called?", "name",
                List.of("As its people call it."), dish.name(), text -> badName(text)
                        ? Reply.wrong(NAME_WANTED)
                        : Reply.go(bench.changed(bench.demo().with(dish.with(new Dish.Heading(text, dish.heading().story()))), "Renamed.")))));
    }

    /** A new dish, from nothing; what was on the bench is kept. */
    static Next newDish(Bench bench) {
        return Next.to(LineScreen.of(bench, new Question("A new dish: what is it called?", "name",
                List.of("What you did on " + bench.demo().dish().name() + " is kept; o opens it again."), "", text -> badName(text) ? Reply.wrong(NAME_WANTED) : Reply.go(askServes(bench, text)))));
    }

    private static final String NAME_WANTED = "A dish needs a name of 1 to " + Limits.NAME + " letters, so that it can be saved and found again.";

    private static boolean badName(String text) {
        return text.isEmpty() || text.length() > Limits.NAME;
    }

    private static Next askServes(Bench bench, String name) {
        return Next.to(LineScreen.of(bench, new Question(name + ": how many does it serve?", "serves", List.of("As its people cook it."), "8",
                text -> serves(text).isPresent() ? Reply.go(Next.to(fresh(bench, name, serves(text).get()))) : Reply.wrong(notServes(text)))));
    }

    private static Optional<Integer> serves(String text) {
        return Optional.of(text).filter(typed -> typed.matches("\\d{1,5}")).map(Integer::parseInt)
                .filter(number -> number >= 1 && number <= Dish.Serving.MOST);
    }

    private static String notServes(String text) {
        return "\"" + text + "\" is not a number of serves. Write a whole number from 1 to " + Dish.Serving.MOST + ".";
    }

    private static Bench fresh(Bench bench, String name, int serves) {
        Dish dish = new Dish(new Dish.Heading(name, ""), new Dish.Serving(serves, SpoonSet.METRIC, 0), List.of(), List.of());
        return Bench.of(Desk.of(bench.desk().study(), Demo.of(dish), Desk.Kept.NOT_YET),
                "Press a to write in the first ingredient; y for the steps of its method.");
    }

    /** Which published guide a serve is held against. */
    static Next guide(Bench bench) {
        List<Guide> guides = bench.desk().study().guides().stream()
                .filter(guide -> guide.line(Component.SATURATED).isPresent()).toList();
        List<Menu.Row> rows = guides.stream().map(guide -> new Menu.Row(guide.published().named(),
                guide.line(Component.SATURATED).map(Guide.Line::written).orElse("no figure for saturated fat"),
                guide.sentence() + " Source: " + guide.published().citation().written() + ".")).toList();
        int now = Math.max(0, guides.stream().map(guide -> guide.published().key()).toList().indexOf(bench.demo().guide()));
        return Next.to(MenuScreen.of(bench, new Menu("The guide for a day", "Each is its own country's or body's; say which when you speak.",
                rows, index -> bench.changed(bench.demo().withGuide(guides.get(index).published().key()),
                        "Held against the " + guides.get(index).published().named() + ".")), now));
    }

    /** The last steps are in the program only: leaving would lose them, so that is asked first. */
    static Next leaveUnkept(Bench bench) {
        List<Menu.Row> rows = List.of(new Menu.Row("try to keep it once more", "", "Nothing is lost while the program runs. Free the disk, or put the stick back."),
                new Menu.Row("leave, and lose what could not be kept", "", "What was kept before is on the disk and stays there."));
        Menu menu = new Menu("The last steps could not be kept", bench.said(), rows, index -> index == 0 ? Bench.keeping(bench) : Next.leave());
        return Next.to(MenuScreen.of(bench, menu, 0));
    }

    /** A note beside a change. */
    static Next note(Bench bench, int index) {
        Plan plan = bench.demo().plan();
        return Next.to(LineScreen.of(bench, new Question("A note of your own beside this change", "note",
                List.of("It goes into the script. An empty line takes it away."), plan.changes().get(index).note(),
                text -> Reply.go(bench.changed(bench.demo().with(plan.edited(index, each -> each.withNote(text))), "Noted.")))));
    }
}
