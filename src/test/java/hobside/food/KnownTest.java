package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.measure.Amount;
import hobside.measure.Grams;
import hobside.measure.Money;
import hobside.measure.Range;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a kitchen knows besides its foods: typical shares, exchanges, prices, and how foods behave. */
class KnownTest {

    private static Map<Factors.Name, Factor> shares(Range fish) {
        Map<Factors.Name, Factor> all = new EnumMap<>(Factors.Name.class);
        for (Factors.Name name : Factors.Name.values()) {
            all.put(name, new Factor(Range.exactly(name.ordinal() / 20.0), "invented for tests"));
        }
        all.put(Factors.Name.FRIED_FISH, new Factor(fish, "invented for tests"));
        return all;
    }

    private static final Factors FACTORS = Factors.of(shares(Range.exactly(0.3)));

    @Test
    void a_share_is_between_nothing_and_all_and_none_may_be_missing() {
        assertEquals(Range.of(0, 0.5, 1), Factors.of(shares(Range.of(0, 0.5, 1))).of(Factors.Name.FRIED_FISH).range());
        assertThrows(IllegalArgumentException.class, () -> Factors.of(shares(Range.of(-0.1, 0.5, 1))));
        assertThrows(IllegalArgumentException.class, () -> Factors.of(shares(Range.of(0, 0.5, 1.1))));
        Map<Factors.Name, Factor> fewer = shares(Range.exactly(0.3));
        fewer.remove(Factors.Name.DRAINED);
        assertThrows(IllegalArgumentException.class, () -> Factors.of(fewer));
    }

    private static Food of(String id, String group, Handling handling) {
        return Food.whole(new Label(id, id, List.of(), group, Source.OWN), Composition.of(Map.of(Nutrient.FAT, 1.0)), handling);
    }

    @Test
    void what_a_food_drinks_in_the_pan_goes_by_what_it_is() {
        Map<Food, Factors.Name> names = Map.of(of("cod", "fish", Handling.PLAIN.withMelts(MeltClass.FISH)), Factors.Name.FRIED_FISH,
                of("chop", "meat", Handling.PLAIN.withMelts(MeltClass.BEEF_CUT)), Factors.Name.FRIED_MEAT, of("sweet-potato", "vegetables", Handling.PLAIN),
                Factors.Name.FRIED_POTATO, of("aubergine", "vegetables", Handling.PLAIN), Factors.Name.FRIED_VEGETABLES, of("bun", "bread", Handling.PLAIN),
                Factors.Name.FRIED_DOUGH, of("rice", "grains", Handling.PLAIN), Factors.Name.FRIED_DOUGH);
        names.forEach((food, name) -> assertEquals(FACTORS.of(name), FACTORS.fryingUptake(food), food.id()));
    }

    private static final Substitute.Words WORDS = new Substitute.Words("why", "handling", "not");
    private static final Substitutes BOOK = new Substitutes(List.of(swap("lard", "oil", Substitute.Direction.LESS), swap("cream", "milk", Substitute.Direction.LESS),
            swap("lard", "butter", Substitute.Direction.SAME)), List.of(new Substitute.Bulk("beans", 40, Set.of("meat", "pork"), WORDS),
                    new Substitute.Bulk("carrots", 60, Set.of("vegetable"), WORDS)));

    private static Substitute swap(String food, String instead, Substitute.Direction saturated) {
        return new Substitute(new Substitute.Pair(food, instead), 0.8, "frying fat", WORDS, Map.of(Nutrient.FASAT, saturated));
    }

    @Test
    void the_book_of_exchanges_is_opened_at_a_food() {
        assertEquals(List.of("oil", "butter"), BOOK.of("lard").stream().map(each -> each.pair().instead()).toList());
        assertEquals(Optional.of(BOOK.swaps().get(2)), BOOK.between("lard", "butter"));
        assertEquals(Optional.empty(), BOOK.between("lard", "milk"));
        assertEquals(List.of(true, true, false), BOOK.swaps().stream().map(Substitute::helps).toList());
    }

    @Test
    void what_a_pot_is_bulked_out_with_goes_with_its_foods() {
        assertEquals(List.of("beans"), BOOK.bulkWith(List.of("fish", "meat, raw")).stream().map(Substitute.Bulk::food).toList());
        assertEquals(List.of("beans", "carrots"), BOOK.bulkWith(List.of("vegetables", "pork")).stream().map(Substitute.Bulk::food).toList());
        assertEquals(List.of(), BOOK.bulkWith(List.of("fish")));
        assertEquals(Optional.of(60.0), BOOK.bulkOf("carrots").map(Substitute.Bulk::gramsPerServe));
        assertEquals(Optional.empty(), BOOK.bulkOf("meat"));
    }

    @Test
    void an_exchange_puts_in_more_than_nothing_and_at_most_twenty_times_as_much() {
        assertEquals(20, new Substitute(new Substitute.Pair("a", "b"), 20, "", WORDS, Map.of()).ratio());
        for (double ratio : new double[] {0, 20.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> new Substitute(new Substitute.Pair("a", "b"), ratio, "", WORDS, Map.of()));
        }
    }

    /** A quarter of a kilo for 500 are 2 a gram. */
    @Test
    void a_food_costs_what_its_pack_costs_by_the_gram_water_nothing_and_others_are_not_known() {
        PriceList.Pack pack = new PriceList.Pack("lard", Amount.grams(250), Grams.of(250), Money.of(500, Fixtures.CROWN));
        PriceList list = PriceList.of(new PriceList.Heading("here", "2026-01-01", true), Fixtures.CROWN, List.of(pack));
        assertEquals(OptionalDouble.of(2), list.minorPerGram(Fixtures.LARD));
        assertEquals(OptionalDouble.of(0), list.minorPerGram(Fixtures.WATER));
        assertEquals(OptionalDouble.empty(), list.minorPerGram(Fixtures.OIL));
        assertTrue(PriceList.isFree(Fixtures.WATER) && !PriceList.isFree(Fixtures.LARD));
        PriceList.Heading tomorrow = new PriceList.Heading("here", "2026-01-02", true);
        assertEquals(tomorrow, list.under(tomorrow).heading());
        assertEquals(List.of(pack), List.copyOf(list.under(tomorrow).packs()));
        assertEquals(List.of("here", "2026-01-01"), List.of(list.heading().place(), list.heading().date()));
    }

    @Test
    void what_costs_nothing_on_one_list_cannot_be_dearer_on_another() {
        PriceList.Pack gift = new PriceList.Pack("lard", Amount.grams(250), Grams.of(250), Money.of(0, Fixtures.CROWN));
        PriceList.Pack sold = new PriceList.Pack("lard", Amount.grams(500), Grams.of(500), Money.of(500, Fixtures.CROWN));
        assertEquals(OptionalDouble.empty(), new PriceComparison.Row("lard", Optional.of(gift), Optional.of(sold)).dearer());
        assertEquals(OptionalDouble.of(-1), new PriceComparison.Row("lard", Optional.of(sold), Optional.of(gift)).dearer());
    }

    @Test
    void a_food_is_eaten_in_part_or_whole_and_its_fat_has_the_energy_of_fat() {
        assertEquals(List.of(0.01, 1.0), Stream.of(0.01, 1.0).map(share -> Handling.PLAIN.withEdible(share).edible()).toList());
        for (double share : new double[] {0, 1.01, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> Handling.PLAIN.withEdible(share));
        }
        assertEquals(List.of(1.0, 10.0), Stream.of(1.0, 10.0).map(energy -> fat(energy).fatEnergy()).toList());
        for (double energy : new double[] {0.9, 10.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> fat(energy));
        }
    }

    private static Handling fat(double energy) {
        return new Handling(1, Optional.empty(), energy, Optional.empty(), List.of(), Handling.Warnings.NONE);
    }

    /** The tagnames and units of INFOODS; energy in kJ, sodium and cholesterol in mg, all else in g. */
    @Test
    void a_nutrient_is_known_by_its_tagname_and_has_its_unit() {
        assertEquals(Optional.of(Nutrient.FASAT), Nutrient.parse("FASAT"));
        assertEquals(Optional.empty(), Nutrient.parse("fasat"));
        assertEquals(List.of("kJ", "kcal", "g", "mg", "mg"), Stream.of(Nutrient.ENERC, Nutrient.ENERC_KCAL, Nutrient.FAT, Nutrient.NA, Nutrient.CHOLE).map(Nutrient::unit).toList());
        assertEquals(List.of("saturated fat", "fibre"), Stream.of(Nutrient.FASAT, Nutrient.FIBTG).map(Nutrient::word).toList());
        assertEquals(Set.of(Nutrient.FAT, Nutrient.FASAT, Nutrient.FAMS, Nutrient.FAPU, Nutrient.FATRN),
                Set.copyOf(Stream.of(Nutrient.values()).filter(Nutrient::isFat).toList()));
        assertFalse(Nutrient.ENERC.isFat());
    }
}
