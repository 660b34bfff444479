package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Nutrient;
import hobside.measure.Density;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimTest {

    private static final Density WATERY = Density.of(1);

    private static Claim claim(String key) {
        return Shipped.BOOK.claim(key).orElseThrow(() -> new AssertionError("no claim " + key));
    }

    private static Sample holding(Nutrient nutrient, double per100g) {
        return Table.sample(Map.of(nutrient, per100g));
    }

    /** Saturated fat per 100 g in 1,000 kJ (239 kcal), trans fat known. */
    private static Sample saturated(double grams, double trans, double kilojoules) {
        return Table.sample(Map.of(Nutrient.FASAT, grams, Nutrient.FATRN, trans, Nutrient.ENERC, kilojoules,
                Nutrient.ENERC_KCAL, kilojoules / 4.184));
    }

    private static Verdict alone(String key, Sample dish) {
        return claim(key).check(dish, dish).verdict();
    }

    // CXG 23-1997 (from memory), Regulation (EC) No 1924/2006 Annex (second-hand), Food Standards Code Schedule 4 (confirmed).
    @ParameterizedTest
    @CsvSource({"2.99, MEETS", "3.0, MEETS", "3.01, MISSES"})
    void low_fat_ends_at_three_grams(double fat, Verdict verdict) {
        for (String key : List.of("codex-low-fat-100g", "eu-low-fat-100g", "fsanz-low-fat-100g")) {
            assertEquals(verdict, alone(key, holding(Nutrient.FAT, fat)), key);
        }
    }

    @ParameterizedTest
    @CsvSource({"1.49, MEETS", "1.5, MEETS", "1.51, MISSES"})
    void low_fat_of_a_liquid_ends_at_one_and_a_half(double fat, Verdict verdict) {
        for (String key : List.of("codex-low-fat-100ml", "eu-low-fat-100ml", "fsanz-low-fat-100ml")) {
            assertEquals(verdict, alone(key, holding(Nutrient.FAT, fat).asLiquid(WATERY)), key);
        }
    }

    @Test
    void a_hundred_millilitres_of_something_dense_hold_more() {
        Sample dense = holding(Nutrient.FAT, 1.4).asLiquid(Density.of(1.1));
        assertEquals(Verdict.MISSES, alone("eu-low-fat-100ml", dense));
    }

    @Test
    void a_row_for_liquids_says_nothing_about_a_solid_dish() {
        Claim.Finding finding = claim("eu-low-fat-100ml").check(holding(Nutrient.FAT, 1), holding(Nutrient.FAT, 1));
        assertEquals(Verdict.CANNOT_SAY, finding.verdict());
        assertTrue(finding.sentence().contains("100 ml of something liquid"), finding.sentence());
    }

    // 21 CFR 101.62(b), meals and main dishes, National Academies report (confirmed): 3 g per 100 g and 30 % of kcal.
    @ParameterizedTest
    @CsvSource({"3.0, 90.0, MEETS", "3.01, 200.0, MISSES", "3.0, 89.9, MISSES", "2.0, 60.0, MEETS"})
    void low_fat_in_the_us_also_asks_for_energy(double fat, double kilocalories, Verdict verdict) {
        assertEquals(verdict,
                alone("us-low-fat-main-dish", Table.sample(Map.of(Nutrient.FAT, fat, Nutrient.ENERC_KCAL, kilocalories))));
    }

    @ParameterizedTest
    @CsvSource({"0.49, MEETS, MEETS", "0.5, MISSES, MEETS", "0.51, MISSES, MISSES"})
    void fat_free_is_below_half_a_gram_in_the_us_and_up_to_it_elsewhere(double fat, Verdict us, Verdict eu) {
        assertEquals(us, alone("us-fat-free", holding(Nutrient.FAT, fat)));
        assertEquals(eu, alone("eu-fat-free-100g", holding(Nutrient.FAT, fat)));
        assertEquals(eu, alone("codex-fat-free-100g", holding(Nutrient.FAT, fat)));
    }

    // EU 30 % (second-hand), Codex and FSANZ 25 % (from memory), US 25 % (confirmed): the cut-offs at 24.99, 25, 29.99 and 30.
    @ParameterizedTest
    @CsvSource({"15.002, MISSES, MISSES", "15.0, MEETS, MISSES", "14.002, MEETS, MISSES", "14.0, MEETS, MEETS", "13.0, MEETS, MEETS"})
    void reduced_fat_asks_for_25_percent_but_30_in_the_eu(double after, Verdict quarter, Verdict eu) {
        Sample before = holding(Nutrient.FAT, 20);
        for (String key : List.of("codex-reduced-fat-100g", "fsanz-reduced-fat-100g", "us-reduced-fat")) {
            assertEquals(quarter, claim(key).check(before, holding(Nutrient.FAT, after)).verdict(), key);
        }
        assertEquals(eu, claim("eu-reduced-fat-100g").check(before, holding(Nutrient.FAT, after)).verdict());
    }

    @ParameterizedTest
    @CsvSource({"10.0, 7.0, MEETS", "10.0, 7.5, MISSES", "8.0, 5.01, MISSES", "8.0, 5.0, MEETS"})
    void codex_also_asks_for_the_absolute_difference_of_a_low_claim(double before, double after, Verdict verdict) {
        assertEquals(verdict, claim("codex-reduced-fat-100g").check(holding(Nutrient.FAT, before), holding(Nutrient.FAT, after)).verdict());
    }

    @Test
    void what_was_low_already_is_not_reduced_in_the_us() {
        assertEquals(Verdict.MISSES, claim("us-reduced-fat").check(holding(Nutrient.FAT, 3), holding(Nutrient.FAT, 1)).verdict());
        assertEquals(Verdict.MEETS, claim("us-reduced-fat").check(holding(Nutrient.FAT, 3.1), holding(Nutrient.FAT, 1)).verdict());
    }

    @Test
    void low_saturated_needs_the_number_and_the_share_of_energy() {
        // 1.5 x 37 = 55.5 kJ: a tenth of 555 kJ.
        for (String key : List.of("codex-low-saturated-100g", "eu-low-saturated-100g")) {
            assertEquals(Verdict.MEETS, alone(key, saturated(1.5, 0, 555)), key);
            assertEquals(Verdict.MISSES, alone(key, saturated(1.5, 0, 554)), key);
            assertEquals(Verdict.MISSES, alone(key, saturated(1.51, 0, 1000)), key);
        }
    }

    @Test
    void trans_counts_in_the_eu_and_at_fsanz_but_not_at_codex() {
        Sample some = saturated(1.4, 0.2, 1000);
        assertEquals(Verdict.MISSES, alone("eu-low-saturated-100g", some));
        assertEquals(Verdict.MISSES, alone("fsanz-low-saturated-100g", some));
        assertEquals(Verdict.MEETS, alone("codex-low-saturated-100g", some));
    }

    @Test
    void us_low_saturated_for_a_main_dish_is_one_gram_and_below_ten_percent() {
        // 21 CFR 101.62(c), National Academies report (confirmed). 1 g x 9 = 9 kcal: a tenth of 90 kcal, which is not below it.
        assertEquals(Verdict.MISSES, alone("us-low-saturated-main-dish", saturated(1, 0, 90 * 4.184)));
        assertEquals(Verdict.MEETS, alone("us-low-saturated-main-dish", saturated(1, 0, 91 * 4.184)));
        assertEquals(Verdict.MISSES, alone("us-low-saturated-main-dish", saturated(1.01, 0, 400 * 4.184)));
    }

    @Test
    void unknown_trans_leaves_saturated_claims_unsaid() {
        Sample before = Table.sample(Map.of(Nutrient.FASAT, 10.0, Nutrient.ENERC, 1000.0));
        Sample after = Table.sample(Map.of(Nutrient.FASAT, 0.05, Nutrient.ENERC, 1000.0));
        for (String key : List.of("eu-low-saturated-100g", "eu-saturated-free-100g", "eu-reduced-saturated-100g",
                "fsanz-low-saturated-100g", "fsanz-reduced-saturated-100g", "us-saturated-free")) {
            assertEquals(Verdict.CANNOT_SAY, claim(key).check(before, after).verdict(), key);
        }
        assertEquals(Verdict.MEETS, claim("codex-low-saturated-100g").check(before, after).verdict());
        assertTrue(claim("fsanz-reduced-saturated-100g").check(before, after).sentence()
                .contains("trans fat is not known for every food (not higher than before)"));
    }

    @Test
    void what_misses_without_its_trans_fat_misses_whatever_that_is() {
        Claim.Finding finding = claim("eu-low-saturated-100g").check(holding(Nutrient.FASAT, 5), holding(Nutrient.FASAT, 5));
        assertEquals(Verdict.MISSES, finding.verdict());
        assertTrue(finding.sentence().contains("saturated and trans fat at least 5 g per 100 g (at most 1.5 g)"), finding.sentence());
    }

    @Test
    void reduced_saturated_fails_when_trans_rises() {
        Sample before = saturated(10, 0.1, 1000);
        for (String key : List.of("eu-reduced-saturated-100g", "fsanz-reduced-saturated-100g")) {
            assertEquals(Verdict.MEETS, claim(key).check(before, saturated(5, 0.1, 1000)).verdict(), key);
            assertEquals(Verdict.MISSES, claim(key).check(before, saturated(5, 0.11, 1000)).verdict(), key);
        }
    }

    @Test
    void light_in_the_us_is_half_the_fat_or_a_third_of_the_energy() {
        Sample before = Table.sample(Map.of(Nutrient.FAT, 10.0, Nutrient.ENERC_KCAL, 300.0));
        Sample fatty = Table.sample(Map.of(Nutrient.FAT, 20.0, Nutrient.ENERC_KCAL, 300.0));
        Sample after = Table.sample(Map.of(Nutrient.FAT, 5.0, Nutrient.ENERC_KCAL, 200.0));
        assertEquals(Verdict.MEETS, claim("us-light-fat").check(before, after).verdict());
        assertEquals(Verdict.MEETS, claim("us-light-energy").check(before, after).verdict());
        assertEquals(Verdict.MISSES, claim("us-light-energy").check(fatty, after).verdict());
    }

    @ParameterizedTest
    @CsvSource({"eu-low-sodium-100g, 120", "fsanz-low-sodium-100g, 120", "codex-low-sodium-100g, 120", "us-low-sodium-main-dish, 140",
            "us-very-low-sodium-main-dish, 35", "eu-very-low-sodium-100g, 40", "eu-sodium-free-100g, 5"})
    void low_sodium_ends_at_its_edge(String key, double edge) {
        assertEquals(Verdict.MEETS, alone(key, holding(Nutrient.NA, edge)));
        assertEquals(Verdict.MISSES, alone(key, holding(Nutrient.NA, edge + 0.1)));
    }

    @ParameterizedTest
    @CsvSource({"eu-low-energy-100g, 170", "fsanz-low-energy-100g, 170", "codex-low-energy-100g, 170"})
    void low_energy_ends_at_170_kilojoules(String key, double edge) {
        assertEquals(Verdict.MEETS, alone(key, holding(Nutrient.ENERC, edge)));
        assertEquals(Verdict.MISSES, alone(key, holding(Nutrient.ENERC, edge + 0.1)));
    }

    @Test
    void the_sentence_says_whose_number_and_never_awards_it() {
        String sentence = claim("eu-reduced-fat-100g").check(holding(Nutrient.FAT, 20), holding(Nutrient.FAT, 14.002)).sentence();
        assertEquals("Misses the number for \"reduced fat\" under Regulation (EC) No 1924/2006, Annex (European Union): "
                + "fat 29.99 % less, from 20 to 14 g per 100 g (at least 30 % less).", sentence);
        String met = claim("fsanz-low-fat-100g").check(holding(Nutrient.FAT, 2.4), holding(Nutrient.FAT, 2.4)).sentence();
        assertEquals("Meets the number for \"low fat\" under Food Standards Code, Schedule 4 (Australia and New Zealand): "
                + "fat 2.4 g per 100 g (at most 3 g).", met);
    }

    @Test
    void more_than_before_is_said_plainly() {
        String sentence = claim("eu-reduced-fat-100g").check(holding(Nutrient.FAT, 10), holding(Nutrient.FAT, 11)).sentence();
        assertTrue(sentence.contains("fat no less but 10 % more, from 10 to 11 g"), sentence);
    }

    @Test
    void a_rule_from_memory_says_so() {
        String sentence = claim("codex-low-fat-100g").check(holding(Nutrient.FAT, 2), holding(Nutrient.FAT, 2)).sentence();
        assertTrue(sentence.endsWith("This figure is from memory: check it before you rely on it."), sentence);
    }

    @Test
    void nothing_less_than_nothing_is_reduced() {
        assertEquals(Verdict.MISSES, claim("eu-reduced-fat-100g").check(holding(Nutrient.FAT, 0), holding(Nutrient.FAT, 0)).verdict());
    }

    @Test
    void the_table_of_claims_is_complete() {
        assertEquals(86, Shipped.BOOK.claims().size());
        for (ClaimKind kind : ClaimKind.values()) {
            assertFalse(Shipped.BOOK.claims(kind).isEmpty(), kind.word());
        }
        Sample solid = holding(Nutrient.FAT, 1);
        assertEquals(4, Shipped.BOOK.claims(ClaimKind.LOW_FAT, solid).size());
        assertEquals(3, Shipped.BOOK.claims(ClaimKind.LOW_FAT, solid.asLiquid(WATERY)).size());
    }

    @Test
    void a_condition_that_cannot_be_is_refused() {
        assertThrows(IllegalArgumentException.class,
                () -> new Condition(Condition.Rule.AT_MOST, Component.FAT, 25, Unit.PERCENT_OF_BEFORE));
        assertThrows(IllegalArgumentException.class,
                () -> new Condition(Condition.Rule.LESS_BY, Component.FAT, 25, Unit.PERCENT_OF_KILOJOULES));
        assertTrue(Unit.parse("% of energy", Component.SODIUM).isEmpty());
    }
}
