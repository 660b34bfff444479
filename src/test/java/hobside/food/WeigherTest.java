package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hobside.Fixtures;
import hobside.measure.Amount;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A made-up food of which three quarters are eaten, with measures of both kinds: invented round figures. */
class WeigherTest {

    private static final Weigher METRIC = new Weigher(SpoonSet.METRIC);

    private static final List<Measure> MEASURES = List.of(new Measure("cup, chopped", Grams.of(150), false), new Measure("cup, chopped fine", Grams.of(180), false),
            new Measure("bunch", Grams.of(400), true));

    private static Food food(Optional<Density> density) {
        return Food.whole(Label.of("greens", "greens"), Composition.of(Map.of(Nutrient.FAT, 1.0)),
                new Handling(0.75, Optional.empty(), 9, density, MEASURES, Handling.Warnings.NONE));
    }

    private static final Food DRY = food(Optional.empty());
    private static final Food POURED = food(Optional.of(Density.of(0.5)));

    private static void assertWeighs(double bought, double eaten, String amount, Food food) {
        Weigher.Weights weights = METRIC.weigh(Amount.parse(amount).orElseThrow(), food).orElseThrow();
        assertEquals(bought, weights.asBought().value(), 1e-9, amount);
        assertEquals(eaten, weights.edible().value(), 1e-9, amount);
    }

    @Test
    void a_weight_is_as_bought_and_three_quarters_of_it_are_eaten() {
        assertWeighs(400, 300, "400 g", DRY);
        assertWeighs(2000, 1500, "2 kg", DRY);
        assertWeighs(2 * 453.59237, 1.5 * 453.59237, "2 lb", DRY);
        assertWeighs(453.59237, 0.75 * 453.59237, "16 oz", DRY);
    }

    @Test
    void a_measure_says_whether_it_is_as_bought() {
        assertWeighs(800, 600, "2 bunches", DRY);
        assertWeighs(400, 300, "2 cups, chopped", DRY);
        assertWeighs(240, 180, "1 cup, chopped fine", DRY);
    }

    @Test
    void the_plain_name_finds_the_first_measure_of_that_name() {
        assertWeighs(200, 150, "1 cup", DRY);
        assertWeighs(200, 150, "1 cup", POURED);
    }

    /** A metric tablespoon holds 15 mL, so of something half as heavy as water 7.5 g, which are eaten whole; 10 g are bought for them. */
    @Test
    void a_spoon_weighs_by_density_and_is_of_what_is_eaten() {
        assertWeighs(10, 7.5, "1 tbsp", POURED);
        assertWeighs(2000 / 3.0, 500, "1 l", POURED);
        assertEquals(Optional.empty(), METRIC.weigh(Amount.of(1, "tbsp"), DRY));
        assertEquals(20 * 0.5, new Weigher(SpoonSet.AUSTRALIAN).weigh(Amount.of(1, "tbsp"), POURED).orElseThrow().edible().value(), 1e-9);
    }

    @Test
    void what_the_food_is_not_measured_in_has_no_weight() {
        for (String unit : List.of("tin", "chopped", "", "bunch, large")) {
            assertEquals(Optional.empty(), METRIC.weigh(Amount.of(1, unit), POURED), unit);
        }
        assertEquals(List.of("cup, chopped", "cup, chopped fine", "bunch", "g", "kg", "lb", "oz"), METRIC.unitsFor(DRY));
        assertEquals(List.of("cup, chopped", "cup, chopped fine", "bunch", "cup", "tbsp", "tsp", "ml", "l", "g", "kg", "lb", "oz"), METRIC.unitsFor(POURED));
    }

    @Test
    void a_measure_weighs_more_than_nothing_and_at_most_a_hundred_kilograms() {
        assertEquals(100_000, new Measure("sack", Grams.of(100_000), true).grams().value());
        assertThrows(IllegalArgumentException.class, () -> new Measure("sack", Grams.of(100_001), true));
        assertThrows(IllegalArgumentException.class, () -> new Measure("pinch", Grams.of(0), true));
    }

    /** English spelling of plurals: common practice, no source. */
    @Test
    void kitchen_nouns_take_their_plurals() {
        Map<String, String> plurals = Map.ofEntries(Map.entry("tin", "tins"), Map.entry("bunch", "bunches"), Map.entry("dish", "dishes"), Map.entry("glass", "glasses"),
                Map.entry("box", "boxes"), Map.entry("leaf", "leaves"), Map.entry("loaf", "loaves"), Map.entry("half", "halves"), Map.entry("potato", "potatoes"),
                Map.entry("tomato", "tomatoes"), Map.entry("berry", "berries"), Map.entry("kidney", "kidneys"), Map.entry("large", "large"), Map.entry("g", "g"),
                Map.entry("y", "ys"));
        plurals.forEach((one, many) -> assertEquals(many, Plural.of(one)));
        assertEquals(List.of("tins, drained", "bunches"), List.of(Weigher.plural("tin, drained"), Weigher.plural("bunch")));
    }

    @Test
    void a_cut_is_the_mix_of_its_parts_and_says_which_it_has() {
        Food cut = Fixtures.CUT.withShare(Part.Kind.FAT, hobside.measure.Range.exactly(0.5));
        assertEquals(42.5, cut.per100g(Nutrient.FAT), 1e-9); // half of 5 and half of 80
        assertEquals(21, cut.per100g(Nutrient.FASAT), 1e-9); // half of 2 and half of 40
        assertEquals(Optional.empty(), cut.part(Part.Kind.SKIN));
        assertEquals(cut.id(), Fixtures.CUT.withShare(Part.Kind.SKIN, hobside.measure.Range.exactly(0.5)).id());
        assertEquals(30, Fixtures.CUT.withShare(Part.Kind.SKIN, hobside.measure.Range.exactly(0.5)).per100g(Nutrient.FAT), 1e-9);
    }

    /** A third lean of 5, a third fat of 80 and a third skin of 35 make 40. */
    @Test
    void a_cut_with_two_parts_is_the_mix_of_all_three() {
        Food skin = Fixtures.plain("skin", 35, 10);
        hobside.measure.Range third = hobside.measure.Range.of(0.3, 1 / 3.0, 0.35);
        List<Part> parts = List.of(new Part(Part.Kind.FAT, Fixtures.FAT, third), new Part(Part.Kind.SKIN, skin, third));
        assertEquals(40, Food.cut(Label.of("c", "c"), Fixtures.LEAN, parts, Handling.PLAIN).per100g(Nutrient.FAT), 1e-9);
        List<Part> all = List.of(new Part(Part.Kind.FAT, Fixtures.FAT, hobside.measure.Range.of(0.3, 0.4, 0.5)),
                new Part(Part.Kind.SKIN, skin, hobside.measure.Range.of(0.3, 0.4, 0.5)));
        assertThrows(IllegalArgumentException.class, () -> Food.cut(Label.of("c", "c"), Fixtures.LEAN, all, Handling.PLAIN), "nothing would be left");
        assertThrows(IllegalArgumentException.class, () -> Food.cut(Label.of("c", "c"), Fixtures.LEAN, List.of(), Handling.PLAIN));
        assertThrows(IllegalArgumentException.class, () -> new Part(Part.Kind.FAT, skin, hobside.measure.Range.of(0.5, 0.6, 1)));
        assertThrows(IllegalArgumentException.class, () -> new Part(Part.Kind.FAT, skin, hobside.measure.Range.of(-0.1, 0, 0.1)));
    }
}
