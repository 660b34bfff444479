package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.Add;
import hobside.dish.CookAnotherWay;
import hobside.dish.Dish;
import hobside.dish.LeaveOut;
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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class CautionsTest {

    private static final Cautions CAUTIONS = Shipped.BOOK.cautions();
    private static final List<String> ALWAYS = List.of("hands", "allergen-card", "samples", "local-rules");

    private static final Pattern FAHRENHEIT = Pattern.compile("(\\d+) °F");

    private static final Food THIGH = Table.food("chicken thigh", Set.of(), Set.of("raw-poultry"));
    private static final Food CREAM = Table.food("coconut cream", Set.of(), Set.of());
    private static final Food MILK = Table.food("evaporated milk", Set.of("milk"), Set.of());
    private static final Food BREAD = Table.food("bread", Set.of("gluten-wheat", "sesame"), Set.of());
    private static final Food BEANS = Table.food("dried beans", Set.of(), Set.of("dried-kidney-beans"));
    private static final Food OIL = Table.food("canola oil", Set.of(), Set.of("hot-oil"));
    private static final Dish POT = Table.dish(Table.ingredient("chicken", THIGH), Table.ingredient("cream", CREAM));

    private static List<String> keys(Dish dish, Plan plan) {
        return CAUTIONS.of(dish, plan).stream().map(due -> due.caution().key()).toList();
    }

    private static Cautions.Due due(String key, Dish dish, Plan plan) {
        return CAUTIONS.of(dish, plan).stream().filter(due -> due.caution().key().equals(key)).findFirst().orElseThrow();
    }

    private static void assertDue(String key, Dish dish, Plan plan) {
        assertTrue(keys(dish, plan).contains(key), key + " in " + keys(dish, plan));
    }

    @Test
    void hands_allergen_card_samples_and_local_rules_are_said_whatever_the_dish() {
        assertEquals(ALWAYS, keys(Table.dish(), Plan.EMPTY));
    }

    @Test
    void every_food_key_that_the_shelf_uses_has_words() {
        for (String key : List.of("raw-poultry", "raw-mince", "raw-meat", "raw-fish", "raw-egg", "rice-cooling", "dried-kidney-beans",
                "cassava", "taro", "green-potato", "honey-infants", "hot-oil")) {
            Dish dish = Table.dish(Table.ingredient("it", Table.food("it", Set.of(), Set.of(key))));
            assertDue(key, dish, Plan.EMPTY);
            assertEquals(Set.of(), CAUTIONS.withoutWords(dish, Plan.EMPTY));
        }
    }

    @Test
    void a_key_without_words_is_reported_and_not_dropped() {
        Dish dish = Table.dish(Table.ingredient("snails", Table.food("snails", Set.of(), Set.of("raw-snail"))));
        assertEquals(Set.of("raw-snail"), CAUTIONS.withoutWords(dish, Plan.EMPTY));
    }

    @Test
    void each_is_said_once_in_order_of_stage() {
        Food wings = Table.food("wings", Set.of(), Set.of("raw-poultry"));
        Dish dish = Table.dish(Table.ingredient("chicken", THIGH), Table.ingredient("wings", wings), Table.ingredient("oil", OIL));
        Plan plan = Plan.of(new SmallerServe(0.8), new Skim(Taken.TYPICAL), new PourOff("chicken", Taken.TYPICAL),
                new Trim("chicken", Taken.TYPICAL));
        List<Cautions.Due> due = CAUTIONS.of(dish, plan);
        assertEquals(List.of("hands", "allergen-card", "raw-poultry", "knife-work", "hot-oil", "pouring-hot-fat", "burns",
                "chilling-the-pot", "keeping-the-rest", "samples", "local-rules"), keys(dish, plan));
        for (int i = 1; i < due.size(); i++) {
            assertTrue(due.get(i - 1).caution().stage().compareTo(due.get(i).caution().stage()) <= 0);
        }
        assertEquals(List.of("chicken thigh", "wings"), due("raw-poultry", dish, plan).because());
    }

    @Test
    void swapped_in_foods_count_and_swapped_out_foods_do_not() {
        Plan plan = Plan.of(new Swap("chicken", BEANS, Quantity.grams(100)));
        assertDue("dried-kidney-beans", POT, plan);
        assertFalse(keys(POT, plan).contains("raw-poultry"));
    }

    @Test
    void added_foods_count_and_left_out_foods_do_not() {
        Plan plan = Plan.of(new Add(Table.ingredient("beans", BEANS)), new LeaveOut("chicken"));
        assertDue("dried-kidney-beans", POT, plan);
        assertFalse(keys(POT, plan).contains("raw-poultry"));
    }

    @Test
    void a_change_that_is_switched_off_calls_for_nothing() {
        Plan on = Plan.of(new Trim("chicken", Taken.TYPICAL));
        Plan off = on.edited(0, Plan.Planned::toggled);
        assertDue("knife-work", POT, on);
        assertEquals(keys(POT, Plan.EMPTY), keys(POT, off));
        assertEquals(List.of("trim the fat off the chicken thigh"), due("knife-work", POT, on).because());
    }

    @Test
    void deep_frying_is_found_in_the_dish_and_gone_when_it_is_baked_instead() {
        Dish fried = Table.dish(Table.ingredient("chicken", THIGH, Preparation.cooked(CookingMethod.DEEP_FRIED)));
        assertDue("deep-frying", fried, Plan.EMPTY);
        assertDue("burns", fried, Plan.EMPTY);
        assertFalse(keys(fried, Plan.of(new CookAnotherWay("chicken", CookingMethod.BAKED))).contains("deep-frying"));
        assertDue("deep-frying", POT, Plan.of(new CookAnotherWay("chicken", CookingMethod.DEEP_FRIED)));
    }

    @Test
    void oil_that_things_are_fried_in_is_hot_even_without_a_key_of_its_own() {
        Food plainOil = Table.food("own oil", Set.of(), Set.of());
        Dish dish = Table.dish(Table.ingredient("oil", plainOil, new Preparation("", List.of(), true)));
        assertDue("hot-oil", dish, Plan.EMPTY);
    }

    @Test
    void evaporated_milk_for_coconut_cream_brings_in_milk() {
        // The published worked example of a swap that adds an allergen (EU Annex II lists milk; coconut is in no EU list).
        Plan plan = Plan.of(new Swap("cream", MILK, Quantity.grams(100)));
        Allergens allergens = Allergens.of(POT, plan);
        assertEquals(List.of(), allergens.before());
        assertEquals(List.of("milk"), allergens.after());
        assertEquals(List.of("milk"), allergens.added());
        assertEquals("Please note: our version brings in milk, which the usual dish does not have.",
                due("allergen-added", POT, plan).said());
        assertFalse(keys(POT, Plan.EMPTY).contains("allergen-added"));
    }

    @Test
    void the_allergen_card_lists_every_allergen_of_the_dish_as_served() {
        Dish dish = Table.dish(Table.ingredient("bread", BREAD), Table.ingredient("milk", MILK));
        assertTrue(due("allergen-card", dish, Plan.EMPTY).said().startsWith("Allergens in this dish: wheat (gluten), milk and sesame."));
        assertTrue(due("allergen-card", POT, Plan.EMPTY).said().startsWith("Allergens in this dish: none that we know of."));
        Allergens less = Allergens.of(dish, Plan.of(new LeaveOut("milk")));
        assertEquals(List.of("milk"), less.gone());
        assertEquals(List.of("gluten-wheat", "sesame"), less.after());
        assertEquals("Brazil nut", Allergens.words("brazil-nut"));
    }

    @Test
    void temperatures_tell_the_range_of_countries_and_the_local_rule() {
        // FoodSafety.gov chart of 12 April 2019: poultry 165 F; United Kingdom: 70 C for 2 minutes (second-hand).
        assertEquals("Keep raw poultry and its juices away from food that is ready to eat. "
                + "Cook it right through and check the thickest part with a thermometer. "
                + "Published figures differ. The lowest is 70 °C held for 2 minutes (United Kingdom). The highest is 73.9 °C or 165 °F "
                + "(United States). Follow your local rule.", due("raw-poultry", POT, Plan.EMPTY).said());
    }

    @Test
    void fahrenheit_and_celsius_of_a_figure_agree() {
        int compared = 0;
        for (Caution caution : CAUTIONS.all()) {
            for (Caution.Advised figure : caution.advice().figures()) {
                Matcher fahrenheit = FAHRENHEIT.matcher(figure.text());
                if (fahrenheit.find()) {
                    assertEquals((Double.parseDouble(fahrenheit.group(1)) - 32) / 1.8, figure.celsius().orElseThrow(), 0.05, figure.text());
                    compared++;
                }
            }
        }
        assertEquals(7, compared);
    }

    @Test
    void samples_are_out_for_two_hours_at_most_and_local_rules_come_first() {
        assertTrue(due("samples", POT, Plan.EMPTY).said().contains("two hours at most"));
        assertTrue(due("local-rules", POT, Plan.EMPTY).said().contains("licensed dietitian or doctor"));
    }

    @Test
    void what_is_said_is_short_and_filled_in() {
        Plan plan = Plan.of(new Swap("cream", MILK, Quantity.grams(100)));
        for (Caution caution : CAUTIONS.all()) {
            long sentences = caution.advice().say().chars().filter(c -> c == '.' || c == ':').count();
            assertTrue(sentences <= 4, caution.key());
        }
        CAUTIONS.of(POT, plan).forEach(due -> assertFalse(due.said().contains("{"), due.said()));
    }

    @Test
    void every_caution_of_the_file_can_be_called_for() {
        Set<String> met = new HashSet<>();
        for (Caution caution : CAUTIONS.all()) {
            for (Trigger trigger : caution.when()) {
                assertEquals(trigger, Trigger.parse(trigger.written()).orElseThrow());
                met.add(caution.key());
            }
        }
        assertEquals(24, met.size());
    }

    @Test
    void a_trigger_that_nothing_pulls_is_refused() {
        assertTrue(Trigger.parse("change polish").isEmpty());
        assertTrue(Trigger.parse("cooking frozen").isEmpty());
        assertTrue(Trigger.parse("always now").isEmpty());
        assertTrue(Trigger.parse("food").isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Cautions.from(List.of()));
    }
}
