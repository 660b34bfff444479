package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Doubt;
import hobside.food.EnergyRule;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.PacketLabel;
import hobside.food.Plausibility;
import hobside.food.Printed;
import hobside.measure.Amount;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The checks of a packet, with the factors as they are shipped: Regulation (EU) No 1169/2011, Annex XIV. */
class PlausibilityTest {

    private static final EnergyRule EU = Shipped.BOOK.energy("eu-1169").orElseThrow().rule();

    /** Butter, USDA SR26, with the energy that Annex XIV gives it: 3,017 kJ and 734 kcal. */
    private static final Map<Printed, Double> BUTTER = Map.of(Printed.KILOJOULES, 3017.0, Printed.KILOCALORIES, 734.0, Printed.FAT, 81.11,
            Printed.SATURATES, 51.4, Printed.CARBOHYDRATE, 0.06, Printed.SUGARS, 0.06, Printed.FIBRE, 0.0, Printed.PROTEIN, 0.85, Printed.SALT, 1.6);

    private static Map<Printed, Double> butter(Printed changed, double figure) {
        Map<Printed, Double> figures = new EnumMap<>(BUTTER);
        figures.put(changed, figure);
        return figures;
    }

    private static List<Doubt> doubts(Map<Printed, Double> figures) {
        return Plausibility.of(new PacketLabel(PacketLabel.HUNDRED_GRAMS, figures), Optional.empty(), EU);
    }

    private static List<Doubt.Check> checks(Map<Printed, Double> figures) {
        return doubts(figures).stream().map(Doubt::check).toList();
    }

    @Test
    void butter_as_annex_xiv_reckons_it_raises_no_doubt() {
        assertEquals(List.of(), doubts(BUTTER));
        EnergyRule.Sum sum = EU.of(new EnergyRule.Sources(0.85, 81.11, 0.06, 0, 0));
        assertEquals(3016.54, sum.kilojoules(), 1e-9);
        assertEquals(733.63, sum.kilocalories(), 1e-9);
    }

    @Test
    void the_published_panel_of_fsanz_raises_no_doubt() {
        // Published example of an Australian panel (second-hand): 61.2 + 62.9 + 527 + 48.8 = 699.9, printed as 700 kJ.
        Map<Printed, Double> panel = Map.of(Printed.KILOJOULES, 700.0, Printed.PROTEIN, 3.6, Printed.FAT, 1.7, Printed.CARBOHYDRATE, 31.0, Printed.FIBRE, 6.1);
        assertEquals(List.of(), doubts(panel));
        assertEquals(699.9, EU.of(new EnergyRule.Sources(3.6, 1.7, 31.0, 6.1, 0)).kilojoules(), 1e-9);
    }

    @Test
    void energy_may_be_ten_per_cent_off_and_no_more() {
        assertEquals(List.of(), checks(Map.of(Printed.KILOJOULES, 630.0, Printed.PROTEIN, 3.6, Printed.FAT, 1.7, Printed.CARBOHYDRATE, 31.0, Printed.FIBRE, 6.1)));
        assertEquals(List.of(Doubt.Check.ENERGY), checks(Map.of(Printed.KILOJOULES, 629.0, Printed.PROTEIN, 3.6, Printed.FAT, 1.7, Printed.CARBOHYDRATE, 31.0, Printed.FIBRE, 6.1)));
        assertEquals(List.of(), checks(Map.of(Printed.KILOJOULES, 769.0, Printed.PROTEIN, 3.6, Printed.FAT, 1.7, Printed.CARBOHYDRATE, 31.0, Printed.FIBRE, 6.1)));
        assertEquals(List.of(Doubt.Check.ENERGY), checks(Map.of(Printed.KILOJOULES, 770.0, Printed.PROTEIN, 3.6, Printed.FAT, 1.7, Printed.CARBOHYDRATE, 31.0, Printed.FIBRE, 6.1)));
    }

    @Test
    void lean_food_may_be_40_kilojoules_off() {
        Map<Printed, Double> cucumber = Map.of(Printed.KILOJOULES, 99.0, Printed.PROTEIN, 1.0, Printed.FAT, 0.0, Printed.CARBOHYDRATE, 2.0, Printed.FIBRE, 1.0);
        assertEquals(List.of(), checks(cucumber)); // the parts come to 17 + 34 + 8 = 59
        Map<Printed, Double> more = new EnumMap<>(cucumber);
        more.put(Printed.KILOJOULES, 99.0001);
        assertEquals(List.of(Doubt.Check.ENERGY), checks(more));
    }

    @Test
    void a_slip_in_the_energy_is_told_with_the_sum_and_the_room_there_was() {
        Doubt slip = doubts(butter(Printed.KILOJOULES, 301.7)).stream().filter(doubt -> doubt.check() == Doubt.Check.ENERGY).findFirst().orElseThrow();
        assertEquals(Printed.KILOJOULES, slip.about());
        assertEquals("The packet says 302 kJ; its fat, carbohydrate, protein and fibre come to 3,017 by the EU factors (37, 17, 17, 8 kJ a gram). "
                + "They may differ by 10 % or 40 kJ. Sweeteners, acids, alcohol or other factors explain larger differences.", slip.words());
    }

    @Test
    void kilojoules_and_kilocalories_that_have_changed_places_are_seen() {
        Map<Printed, Double> swapped = butter(Printed.KILOJOULES, 734);
        swapped.put(Printed.KILOCALORIES, 3017.0);
        assertTrue(checks(swapped).contains(Doubt.Check.AMOUNT), "100 g of no food hold 3,017 kcal");
        Map<Printed, Double> biscuit = Map.of(Printed.KILOJOULES, 100.0, Printed.KILOCALORIES, 418.0);
        assertEquals(List.of(Doubt.Check.UNITS), checks(biscuit));
    }

    @Test
    void every_pair_of_factors_in_annex_xiv_is_a_sound_ratio() {
        // Annex XIV: 17/4, 37/9, 8/2, 29/7, polyols 10/2.4, salatrims 25/6, organic acids 13/3.
        for (double[] pair : new double[][] {{17, 4}, {37, 9}, {8, 2}, {29, 7}, {10, 2.4}, {25, 6}, {13, 3}}) {
            assertEquals(List.of(), checks(Map.of(Printed.KILOJOULES, pair[0] * 40, Printed.KILOCALORIES, pair[1] * 40)), pair[0] + "/" + pair[1]);
        }
        assertEquals(List.of(Doubt.Check.UNITS), checks(Map.of(Printed.KILOJOULES, 790.0, Printed.KILOCALORIES, 200.0)));
        assertEquals(List.of(Doubt.Check.UNITS), checks(Map.of(Printed.KILOJOULES, 875.0, Printed.KILOCALORIES, 200.0)));
    }

    @Test
    void fibre_that_is_not_printed_may_be_there_unsaid() {
        Map<Printed, Double> oats = Map.of(Printed.KILOJOULES, 1580.0, Printed.PROTEIN, 11.0, Printed.FAT, 8.0, Printed.CARBOHYDRATE, 60.0);
        assertEquals(List.of(), checks(oats)); // 187 + 296 + 1020 = 1,503 without fibre, up to 120 more with it
    }

    @Test
    void without_fat_carbohydrate_or_protein_the_energy_is_not_judged() {
        assertEquals(List.of(), checks(Map.of(Printed.KILOJOULES, 2000.0, Printed.FAT, 1.0, Printed.PROTEIN, 1.0)));
        assertEquals(List.of(), checks(Map.of(Printed.KILOJOULES, 2000.0, Printed.FAT, 1.0, Printed.CARBOHYDRATE, 1.0)));
    }

    @Test
    void saturates_are_a_part_of_the_fat() {
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 12.0, Printed.SATURATES, 12.0)));
        assertEquals(List.of(Doubt.Check.FATTY_ACIDS), checks(Map.of(Printed.FAT, 12.0, Printed.SATURATES, 12.1)));
        // EU guidance of 2012 (second-hand): fat up to 0.5 g may be printed as 0, saturates only up to 0.1 g.
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 0.0, Printed.SATURATES, 0.4)));
    }

    @Test
    void all_fatty_acids_together_are_no_more_than_the_fat() {
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 10.0, Printed.SATURATES, 4.0, Printed.MONOUNSATURATES, 4.0, Printed.POLYUNSATURATES, 2.0)));
        assertEquals(List.of(Doubt.Check.FATTY_ACIDS),
                checks(Map.of(Printed.FAT, 10.0, Printed.SATURATES, 4.0, Printed.MONOUNSATURATES, 4.0, Printed.POLYUNSATURATES, 2.6)));
    }

    @Test
    void sugars_are_a_part_of_the_carbohydrate() {
        assertEquals(List.of(), checks(Map.of(Printed.CARBOHYDRATE, 60.0, Printed.SUGARS, 60.0)));
        assertEquals(List.of(Doubt.Check.CARBOHYDRATE), checks(Map.of(Printed.CARBOHYDRATE, 60.0, Printed.SUGARS, 60.5)));
        assertEquals(List.of(), checks(Map.of(Printed.TOTAL_CARBOHYDRATE, 4.8, Printed.SUGARS, 5.05))); // whole milk, USDA SR28 no. 01077
        assertEquals(List.of(Doubt.Check.CARBOHYDRATE), checks(Map.of(Printed.TOTAL_CARBOHYDRATE, 60.0, Printed.CARBOHYDRATE, 61.1)));
    }

    @Test
    void a_hundred_grams_hold_no_more_than_a_hundred_and_nothing_overrules_that() {
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 100.0)));
        Doubt doubt = doubts(Map.of(Printed.FAT, 100.1)).get(0);
        assertTrue(doubt.isImpossible());
        Doubt serving = Plausibility.of(new PacketLabel(Amount.grams(30), Map.of(Printed.FAT, 31.0)), Optional.empty(), EU).get(0);
        assertTrue(serving.words().startsWith("That is 103 g in 100 g"), serving.words());
    }

    @Test
    void the_parts_add_up_to_no_more_than_the_food() {
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 50.0, Printed.CARBOHYDRATE, 40.0, Printed.PROTEIN, 10.0, Printed.FIBRE, 2.5)));
        assertEquals(List.of(Doubt.Check.SUM), checks(Map.of(Printed.FAT, 50.0, Printed.CARBOHYDRATE, 40.0, Printed.PROTEIN, 10.0, Printed.FIBRE, 2.6)));
    }

    @Test
    void sodium_agrees_with_salt_and_is_of_the_size_that_packets_print() {
        assertEquals(List.of(), checks(Map.of(Printed.SALT, 1.2, Printed.SODIUM, 480.0)));
        assertEquals(List.of(Doubt.Check.SODIUM), checks(Map.of(Printed.SALT, 1.2, Printed.SODIUM, 1200.0)));
        assertEquals(List.of(Doubt.Check.SODIUM), checks(Map.of(Printed.SODIUM, 0.48)));
        assertEquals(List.of(Doubt.Check.SODIUM), checks(Map.of(Printed.SALT, 50.0)));
    }

    /** 25 mg and a twentieth of the sodium are left for rounding on either side: ours. Salt is 2.5 times the sodium: Regulation (EU) No 1169/2011, Annex I. */
    @Test
    void salt_and_sodium_may_differ_by_their_rounding_and_no_more() {
        assertEquals(List.of(), checks(Map.of(Printed.SALT, 1.2, Printed.SODIUM, 530.0)));
        assertEquals(List.of(), checks(Map.of(Printed.SALT, 1.2, Printed.SODIUM, 435.0)));
        assertEquals(List.of(Doubt.Check.SODIUM), checks(Map.of(Printed.SALT, 1.2, Printed.SODIUM, 430.0)));
        String words = doubts(Map.of(Printed.SALT, 1.2, Printed.SODIUM, 535.0)).get(0).words();
        assertEquals("1.2 g of salt hold 480 mg of sodium (salt = sodium × 2.5); here stand 535 mg.", words);
    }

    /** Fish sauce, USDA SR28 no. 06179, holds 7,851 mg of sodium in 100 g. */
    @Test
    void what_is_saltier_than_fish_sauce_is_doubted_whatever_the_figures_are_for() {
        assertEquals(List.of(), checks(Map.of(Printed.SODIUM, 7851.0)));
        assertEquals(List.of(), inThirtyGrams(Map.of(Printed.SODIUM, 2400.0)));
        String words = inThirtyGrams(Map.of(Printed.SODIUM, 2410.0)).get(0).words();
        assertTrue(words.startsWith("That is 8,033 mg of sodium in 100 g"), words);
    }

    @Test
    void sodium_below_a_milligram_was_meant_in_grams_and_none_at_all_was_not() {
        assertEquals(List.of(), checks(Map.of(Printed.SODIUM, 1.0)));
        assertEquals(List.of(), checks(Map.of(Printed.SODIUM, 0.0)));
        String words = doubts(Map.of(Printed.SODIUM, 0.99)).get(0).words();
        assertTrue(words.endsWith("Were grams meant? 0.99 g are 990 mg."), words);
    }

    /** The slack is ours: half a gram or 4 % of the fat. */
    @Test
    void fatty_acids_have_half_a_gram_or_a_twenty_fifth_of_the_fat_for_their_rounding() {
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 0.0, Printed.SATURATES, 0.5)));
        assertEquals(List.of(Doubt.Check.FATTY_ACIDS), checks(Map.of(Printed.FAT, 0.0, Printed.SATURATES, 0.6)));
        assertEquals(List.of(), checks(Map.of(Printed.FAT, 50.0, Printed.SATURATES, 20.0, Printed.MONOUNSATURATES, 20.0, Printed.POLYUNSATURATES, 12.0)));
        assertEquals(List.of(Doubt.Check.FATTY_ACIDS),
                checks(Map.of(Printed.FAT, 50.0, Printed.SATURATES, 20.0, Printed.MONOUNSATURATES, 20.0, Printed.POLYUNSATURATES, 12.1)));
    }

    @Test
    void fibre_is_a_part_of_the_carbohydrate_that_is_printed_with_it() {
        assertEquals(List.of(), checks(Map.of(Printed.TOTAL_CARBOHYDRATE, 10.0, Printed.FIBRE, 11.0)));
        List<Doubt> doubts = doubts(Map.of(Printed.TOTAL_CARBOHYDRATE, 10.0, Printed.FIBRE, 11.1));
        assertEquals(List.of(Printed.FIBRE), doubts.stream().map(Doubt::about).toList());
    }

    @Test
    void salt_is_reckoned_from_the_sodium_where_only_that_is_printed() {
        Map<Printed, Double> full = Map.of(Printed.FAT, 50.0, Printed.CARBOHYDRATE, 40.0, Printed.PROTEIN, 10.0, Printed.SODIUM, 1000.0);
        assertEquals(List.of(), checks(full));
        Map<Printed, Double> over = new EnumMap<>(full);
        over.put(Printed.SODIUM, 1040.0);
        assertEquals(List.of(Doubt.Check.SUM), checks(over));
    }

    /** Worked by hand with the factors of Annex XIV: 37, 17, 17 and 8 kJ a gram. Fibre unsaid is at most 15 g of 100, and what there is room for: ours. */
    @Test
    void fibre_unsaid_is_no_more_than_there_is_room_for() {
        // 40 x 37 + 10 x 17 + 45 x 17 = 2,415; room for 5 g more, 40 kJ.
        assertEnergy("2,415 to 2,455", HUNDRED, Map.of(Printed.KILOJOULES, 2750.0, Printed.FAT, 40.0, Printed.PROTEIN, 10.0, Printed.CARBOHYDRATE, 45.0));
        // 187 + 296 + 1,020 = 1,503; room for 21 g, of which 15 may be fibre, 120 kJ.
        assertEnergy("1,503 to 1,623", HUNDRED, Map.of(Printed.KILOJOULES, 1900.0, Printed.FAT, 8.0, Printed.PROTEIN, 11.0, Printed.CARBOHYDRATE, 60.0));
        // 15 g of 100 are 4.5 g of 30: 170, and 36 more.
        assertEnergy("170 to 206", Amount.grams(30), Map.of(Printed.KILOJOULES, 400.0, Printed.FAT, 0.0, Printed.PROTEIN, 0.0, Printed.CARBOHYDRATE, 10.0));
        // 15 of the 20 g may be fibre: 5 x 17 + 15 x 8 = 205, or 20 x 17 = 340.
        assertEnergy("205 to 340", HUNDRED, Map.of(Printed.KILOJOULES, 600.0, Printed.FAT, 0.0, Printed.PROTEIN, 0.0, Printed.TOTAL_CARBOHYDRATE, 20.0));
    }

    private static final Amount HUNDRED = PacketLabel.HUNDRED_GRAMS;

    private static void assertEnergy(String told, Amount per, Map<Printed, Double> figures) {
        List<Doubt> doubts = Plausibility.of(new PacketLabel(per, figures), Optional.empty(), EU);
        assertEquals(List.of(Doubt.Check.ENERGY), doubts.stream().map(Doubt::check).toList());
        assertTrue(doubts.get(0).words().contains("come to " + told + " by the EU factors"), doubts.get(0).words());
    }

    private static List<Doubt> inThirtyGrams(Map<Printed, Double> figures) {
        return Plausibility.of(new PacketLabel(Amount.grams(30), figures), Optional.empty(), EU);
    }

    /** SR28 itself: no. 14171 has 2.083 g of saturated fat in 2.08 g of fat; salt pork sums up to 103 g with its salt reckoned apart. */
    private static final java.util.Set<String> ODD_IN_THE_TABLE = java.util.Set.of("coconut-drink", "salt-pork");

    @Test
    void the_shelf_itself_raises_hardly_a_doubt() {
        // USDA SR28 reckons energy by factors of each food; the general ones differ most in spices, acids and pulses.
        int energy = 0;
        List<Food> foods = hobside.Bundle.STUDY.shelf().foods();
        for (Food food : foods) {
            if (ODD_IN_THE_TABLE.contains(food.id())) {
                continue;
            }
            List<Doubt> doubts = Plausibility.of(PacketLabel.from(food.composition()), Optional.empty(), EU);
            energy += (int) doubts.stream().filter(doubt -> doubt.check() == Doubt.Check.ENERGY).count();
            assertTrue(doubts.stream().allMatch(doubt -> doubt.check() == Doubt.Check.ENERGY
                    || (doubt.check() == Doubt.Check.SODIUM || doubt.check() == Doubt.Check.SUM) && food.per100g(Nutrient.NA) > 8000), food.id() + ": " + doubts);
        }
        assertTrue(energy > 0 && energy <= foods.size() * 0.06, energy + " of " + foods.size());
    }
}
