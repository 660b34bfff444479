package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.Dish;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.ledger.Ledger;
import hobside.measure.Range;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuideTest {

    /** A serve of 100 g with 20 g of saturated fat in 8,400 kJ: the day of the EU's reference intakes. */
    private static final Sample A_DAY_IN_A_SERVE = Table.sample(
            Map.of(Nutrient.FASAT, 20.0, Nutrient.ENERC, 8400.0, Nutrient.ENERC_KCAL, 2000.0, Nutrient.NA, 2400.0));

    private static Guide guide(String key) {
        return Shipped.BOOK.guide(key).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"eu-ri, 1.0", "fsanz-di, 0.8333333333", "us-dv, 1.0", "uk-men, 0.6666666667", "uk-women, 1.0", "codex-nrv, 1.0"})
    void twenty_grams_of_saturated_fat_are_this_share_of_the_day(String key, double share) {
        Guide.Share found = guide(key).shareOf(Component.SATURATED, A_DAY_IN_A_SERVE).orElseThrow();
        assertEquals(share, found.part().typical(), 1e-9);
        assertFalse(found.isShareOfEnergy());
    }

    @Test
    void by_who_it_is_the_share_of_energy() {
        // 20 x 37 / 8400 = 8.8 % (worked out from the EU's figures).
        Guide.Share found = guide("who-2023").shareOf(Component.SATURATED, A_DAY_IN_A_SERVE).orElseThrow();
        assertTrue(found.isShareOfEnergy());
        assertEquals(0.08810, found.part().typical(), 1e-5);
        assertEquals("In a serve about 9 % of the energy comes from saturated fat. The guideline on saturated and trans fat "
                + "(World Health Organization): at most 10 % of energy, over a whole day. It speaks of the whole diet, not of one dish.",
                found.told());
    }

    @Test
    void ten_percent_of_energy_are_22_7_grams_at_8400_kilojoules() {
        Sample edge = Table.sample(Map.of(Nutrient.FASAT, 8400 * 0.10 / 37, Nutrient.ENERC, 8400.0));
        assertEquals(0.10, guide("who-2023").shareOf(Component.SATURATED, edge).orElseThrow().part().typical(), 1e-12);
        assertEquals(22.7, 8400 * 0.10 / 37, 0.01);
    }

    @Test
    void salt_is_two_and_a_half_times_the_sodium() {
        // Regulation (EU) No 1169/2011, Annex I: salt = sodium x 2.5, so 2,400 mg are the 6 g of the reference intake.
        assertEquals(1.0, guide("eu-ri").shareOf(Component.SALT, A_DAY_IN_A_SERVE).orElseThrow().part().typical(), 1e-12);
    }

    @Test
    void the_sentence_names_the_place_and_carries_its_wording() {
        assertEquals("A serve holds about 83 % of the day's saturated fat by the percentage daily intakes (Australia and New Zealand), "
                + "24 g a day. Percentage daily intakes are based on an average adult diet of 8 700 kJ.",
                guide("fsanz-di").shareOf(Component.SATURATED, A_DAY_IN_A_SERVE).orElseThrow().told());
        assertTrue(guide("eu-ri").sentence().contains("Reference intakes are not targets"));
    }

    @Test
    void every_shipped_guide_names_its_place_and_says_its_sentence_in_every_line() {
        Sample full = Table.sample(Map.of(Nutrient.FASAT, 5.0, Nutrient.FATRN, 0.1, Nutrient.FAT, 9.0, Nutrient.ENERC, 900.0,
                Nutrient.CHOCDF, 20.0, Nutrient.FIBTG, 4.0, Nutrient.SUGAR, 5.0, Nutrient.PROCNT, 9.0, Nutrient.NA, 300.0));
        assertEquals(9, Shipped.BOOK.guides().size());
        for (Guide guide : Shipped.BOOK.guides()) {
            for (Guide.Line line : guide.lines()) {
                String told = guide.shareOf(line.of(), full).orElseThrow().told();
                assertTrue(told.contains(guide.published().place()) && told.contains(guide.sentence()), told);
            }
        }
    }

    @Test
    void a_figure_from_memory_says_so() {
        String told = guide("uk-sacn").shareOf(Component.SATURATED, A_DAY_IN_A_SERVE).orElseThrow().told();
        assertTrue(told.endsWith("This figure is from memory: check it before you rely on it."), told);
    }

    @Test
    void without_the_energy_no_share_of_it_can_be_told() {
        Sample unknown = Table.sample(Map.of(Nutrient.FASAT, 5.0));
        assertEquals(Optional.empty(), guide("who-2023").shareOf(Component.SATURATED, unknown));
        assertTrue(guide("eu-ri").shareOf(Component.SATURATED, unknown).isPresent());
    }

    @Test
    void carbohydrate_less_an_unknown_fibre_is_unknown_not_at_least() {
        Sample noFibre = Table.sample(Map.of(Nutrient.CHOCDF, 50.0));
        assertEquals(Optional.empty(), guide("eu-ri").shareOf(Component.CARBOHYDRATE, noFibre));
    }

    @Test
    void a_missing_food_makes_it_at_least() {
        Food nuts = Food.whole(Label.of("nuts", "nuts"), Composition.of(Map.of(Nutrient.FAT, 44.0)), Handling.PLAIN);
        Food cream = Food.whole(Label.of("cream", "cream"), Composition.of(Map.of(Nutrient.FASAT, 20.0)), Handling.PLAIN);
        Dish dish = Table.dish(Table.ingredient("nuts", nuts), Table.ingredient("cream", cream));
        Guide.Share share = guide("eu-ri").shareOf(Component.SATURATED, Ledger.outcome(dish, List.of(), Table.books())).orElseThrow();
        assertTrue(share.part().atLeast());
        assertTrue(share.told().startsWith("A serve holds at least 25 % of the day's saturated fat"), share.told());
    }

    @Test
    void the_spread_of_the_totals_is_kept() {
        // 100 g with half separable fat of 40 % saturates, 40 to 60 % of it trimmed: 8 to 12 g are left for four, 2 to 3 g each.
        Food lean = Food.whole(Label.of("lean", "lean"), Composition.of(Map.of(Nutrient.FASAT, 0.0)), Handling.PLAIN);
        Food fat = Food.whole(Label.of("fat", "fat"), Composition.of(Map.of(Nutrient.FASAT, 40.0)), Handling.PLAIN);
        Food cut = Food.cut(Label.of("cut", "cut"), lean, List.of(new Part(Part.Kind.FAT, fat, Range.exactly(0.5))), Handling.PLAIN);
        Dish dish = Table.dish(Table.ingredient("cut", cut));
        Guide.Share share = guide("eu-ri")
                .shareOf(Component.SATURATED, Ledger.totals(dish, List.of(new Trim("cut", Taken.TYPICAL)), Table.books())).orElseThrow();
        assertEquals(0.10, share.part().range().low(), 1e-9);
        assertEquals(0.125, share.part().range().typical(), 1e-9);
        assertEquals(0.15, share.part().range().high(), 1e-9);
        assertTrue(share.told().contains("between about 10 and 15 %"), share.told());
    }

    @Test
    void a_guide_without_place_or_figures_is_refused() {
        Citation citation = Citation.of("somewhere", "2020", Mark.FROM_MEMORY);
        assertThrows(IllegalArgumentException.class, () -> new Published("key", "name", " ", citation));
        Published published = new Published("key", "name", "place", citation);
        assertThrows(IllegalArgumentException.class, () -> new Guide(published, "Sentence.", List.of()));
    }

    @Test
    void two_rows_with_one_key_are_refused() {
        assertThrows(IllegalArgumentException.class,
                () -> new GuideBook(List.of(), List.of(guide("eu-ri"), guide("eu-ri")), List.of(), List.of(), Shipped.BOOK.cautions()));
    }
}
