package hobside.screen.bench;

import hobside.dish.Demo;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.MethodStep;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Quantity;
import hobside.dish.Stage;
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
                    Optional<Quantity> quantity = Amount.parse(text).flatMap(amount -> Quantity.of(amount, wanted.food(), spoons));
                    return quantity.filter(Questions::isSensible).map(known -> Reply.go(then.apply(known)))
                            .orElseGet(() -> Reply.wrong(whyNot(text, wanted.food(), units)));
                })));
    }

    private static boolean isSensible(Quantity quantity) {
        return quantity.asBought().value() > 0 && quantity.asBought().value() <= 1_000_000;
    }

    private static String whyNot(String text, Food food, List<String> units) {
        return Amount.parse(text).isEmpty()
                ? "\"" + text + "\" is not an amount. Write a number and a unit, such as 2 " + units.get(0) + " or 500 g."
                : "That cannot be weighed for " + food.name() + ", or is nothing, or more than 1,000 kg. Units: " + String.join("; ", units) + ".";
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
        Menu menu = new Menu("How is the " + Names.brief(row) + " cooked?",
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
                    if (!text.matches("\\d{1,5}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > Dish.Serving.MOST) {
                        return Reply.wrong("\"" + text + "\" is not a number of serves. Write a whole number from 1 to 10000.");
                    }
                    Dish.Serving other = new Dish.Serving(Integer.parseInt(text), serving.spoons(), serving.moisture());
                    return Reply.go(bench.changed(bench.demo().with(bench.demo().dish().with(other)), "Serves changed."));
                })));
    }

    /** Another name for the dish. */
    static Next name(Bench bench) {
        Dish dish = bench.demo().dish();
        return Next.to(LineScreen.of(bench, new Question("What is the dish called?", "name",
                List.of("As its people call it."), dish.name(), text -> text.isEmpty()
                        ? Reply.wrong("A dish needs a name, so that it can be saved and found again.")
                        : Reply.go(bench.changed(bench.demo().with(dish.with(new Dish.Heading(text, dish.heading().story()))), "Renamed.")))));
    }

    /** A new dish, from nothing; what was on the bench is kept. */
    static Next newDish(Bench bench) {
        return Next.to(LineScreen.of(bench, new Question("A new dish: what is it called?", "name",
                List.of("What you did on " + bench.demo().dish().name() + " is kept; o opens it again."), "", text -> text.isEmpty()
                        ? Reply.wrong("A dish needs a name, so that it can be saved and found again.")
                        : Reply.go(Next.to(fresh(bench, text))))));
    }

    private static Bench fresh(Bench bench, String name) {
        List<MethodStep> method = List.of(new MethodStep(Stage.PREPARE, "Get everything ready.", 15),
                new MethodStep(Stage.BROWN, "Brown what is to be browned.", 10), new MethodStep(Stage.SIMMER, "Cook until done.", 40),
                new MethodStep(Stage.SERVE, "Dish up.", 5));
        Dish dish = new Dish(new Dish.Heading(name, ""), new Dish.Serving(8, SpoonSet.METRIC, 0), List.of(), method);
        return Bench.of(Desk.of(bench.desk().study(), Demo.of(dish), Desk.Kept.NOT_YET),
                "Press a to write in the first ingredient, v to say how many it serves.");
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

    /** A note beside a change. */
    static Next note(Bench bench, int index) {
        Plan plan = bench.demo().plan();
        return Next.to(LineScreen.of(bench, new Question("A note of your own beside this change", "note",
                List.of("It goes into the script. An empty line takes it away."), plan.changes().get(index).note(),
                text -> Reply.go(bench.changed(bench.demo().with(plan.edited(index, each -> each.withNote(text))), "Noted.")))));
    }
}
