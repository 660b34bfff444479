package hobside.guide;

import hobside.dish.Dish;
import hobside.dish.Plan;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The allergens of a dish before and after a plan, by their keys, in alphabetical order.
 *
 * <p>Only what the shelf knows: makers' recipes differ, so the label decides. That something is gone from the list is no promise
 * that no trace of it is left.
 */
public record Allergens(List<String> before, List<String> after) {

    /**
     * All keys there are: the fourteen of the EU (Regulation 1169/2011, Annex II; second-hand) with each cereal and nut by its
     * name, and pine nuts, which Australia and New Zealand name as well.
     */
    public static final List<String> KEYS = List.of("gluten-wheat", "gluten-rye", "gluten-barley", "gluten-oats", "milk", "egg", "fish",
            "crustacean", "mollusc", "peanut", "soy", "almond", "brazil-nut", "cashew", "hazelnut", "macadamia", "pecan", "pine-nut",
            "pistachio", "walnut", "celery", "mustard", "sesame", "sulphites", "lupin");

    public Allergens {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    public static Allergens of(Dish dish, Plan plan) {
        return Setting.of(dish, plan).allergens();
    }

    /** What the plan brings in: evaporated milk in place of coconut cream adds milk. */
    public List<String> added() {
        return after.stream().filter(key -> !before.contains(key)).toList();
    }

    /** What is no longer among the ingredients. */
    public List<String> gone() {
        return before.stream().filter(key -> !after.contains(key)).toList();
    }

    /** A key in plain words: gluten-wheat is "wheat (gluten)", brazil-nut "Brazil nut". */
    public static String words(String key) {
        if (key.startsWith(GLUTEN)) {
            return key.substring(GLUTEN.length()) + " (gluten)";
        }
        return key.replace('-', ' ').replace("brazil", "Brazil");
    }

    private static final String GLUTEN = "gluten-";

    /** "milk and wheat (gluten)", or "none that we know of". */
    public static String listed(List<String> keys) {
        List<String> words = keys.stream().map(Allergens::words).toList();
        if (words.isEmpty()) {
            return "none that we know of";
        }
        int last = words.size() - 1;
        String first = words.stream().limit(last).collect(Collectors.joining(", "));
        return first.isEmpty() ? words.get(last) : first + " and " + words.get(last);
    }
}
