package hobside.bench;

import hobside.advice.Offers;
import hobside.advice.Pantry;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.WordFiles;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;

/**
 * Measures, warm, how long the ledger of a large dish takes with all its ranges, the offers for one ingredient, and a search of
 * the shelf.
 *
 * <p>Argument: runs; may be left out.
 */
public final class LedgerBench {

    private static final int WARM_UP = 1500;

    /** What is worked out is added up and looked at, so that no run can be left out as useless. */
    private static double sink;

    private LedgerBench() {}

    public static void main(String[] args) {
        int runs = args.length == 0 ? 3000 : Integer.parseInt(args[0]);
        Library library = Library.load(Kitchen.at(Path.of("target", "no-kitchen")));
        Shelf shelf = library.shelf();
        Books books = new Books(library.cookery(), library.prices());
        Dish dish = new BigDish(shelf).dish();
        Plan plan = new BigDish(shelf).plan();
        Paper.line("%d ingredients, %d changes", dish.ingredients().size(), plan.size());
        measure("ledger with ranges", runs, i -> Ledger.of(dish, plan, books).end().typical().contents().known(Nutrient.FASAT));
        measure("bare outcome", runs, i -> Ledger.outcome(dish, plan.told(), books).contents().known(Nutrient.FASAT));
        Offers offers = new Offers(new Pantry(shelf::food, Library.bundledSubstitutes(shelf), WordFiles.read("en")), books);
        measure("offers for the ribs", runs, i -> offers.forIngredient(dish, plan, "beef-short-rib").size());
        measure("offers for the butter", runs, i -> offers.forIngredient(dish, Plan.EMPTY, "butter").size());
        search("search of our " + shelf.foods().size() + " foods", shelf, runs);
        Shelf wide = invented();
        search("search of " + wide.foods().size() + " invented names", wide, runs);
        Paper.line("(sum of all results, so that nothing is skipped: %.0f)", sink);
    }

    private static void search(String name, Shelf shelf, int runs) {
        List<String> typed = typed(shelf);
        measure(name, runs, i -> shelf.find(typed.get(i % typed.size()), 20).size());
    }

    private static void measure(String name, int runs, IntToDoubleFunction work) {
        for (int i = 0; i < WARM_UP; i++) {
            sink += work.applyAsDouble(i);
        }
        double[] micros = new double[runs];
        for (int i = 0; i < runs; i++) {
            long before = System.nanoTime();
            sink += work.applyAsDouble(i);
            micros[i] = (System.nanoTime() - before) / 1e3;
        }
        Samples samples = Samples.of(micros);
        Paper.line("%-36s n %5d   median %8.1f µs   p99 %8.1f µs   most %9.1f µs", name, runs, samples.median(), samples.percentile(99),
                samples.percentile(100));
    }

    /** What somebody types who looks for foods of the shelf: beginnings of names letter by letter, one in three with a slip. */
    private static List<String> typed(Shelf shelf) {
        Random random = new Random(7);
        List<String> typed = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            String name = shelf.foods().get(random.nextInt(shelf.foods().size())).name();
            StringBuilder begun = new StringBuilder(name.substring(0, 1 + random.nextInt(name.length())));
            if (i % 3 == 0) {
                begun.setCharAt(random.nextInt(begun.length()), (char) ('a' + random.nextInt(26)));
            }
            typed.add(begun.toString());
        }
        return typed;
    }

    /** 8,000 names put together from 20 × 20 × 20 words. */
    private static Shelf invented() {
        String[] how = {"raw", "dried", "smoked", "salted", "tinned", "frozen", "ground", "roasted", "pickled", "fresh", "sliced", "whole",
            "peeled", "boiled", "steamed", "grilled", "stewed", "sweetened", "unsalted", "cultured"};
        String[] what = {"barley", "bream", "turnip", "mutton", "lentil", "pumpkin", "herring", "cabbage", "walnut", "plum", "leek", "rabbit",
            "cheese", "parsnip", "cherry", "mussel", "oatmeal", "chestnut", "gooseberry", "celeriac"};
        String[] which = {"shoulder", "flour", "fillet", "leaf", "seed", "juice", "paste", "soup", "crumb", "stalk", "root", "skin", "kernel",
            "broth", "butter", "flake", "spread", "cake", "pudding", "relish"};
        List<Food> foods = new ArrayList<>();
        for (int i = 0; i < 8000; i++) {
            String name = what[i % 20] + " " + which[i / 20 % 20] + ", " + how[i / 400];
            foods.add(Food.whole(Label.of("f" + i, name), Composition.of(Map.of()), Handling.PLAIN));
        }
        return Shelf.of(foods);
    }
}
