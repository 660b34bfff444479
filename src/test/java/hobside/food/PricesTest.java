package hobside.food;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Money;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PricesTest {

    private static final Food RIBS = Food.whole(Label.of("ribs", "ribs"), Fixtures.composition(20, 9), Handling.PLAIN.withEdible(0.73));
    private static final PriceList LIST = PriceList.of(new PriceList.Heading("quay", "2026-11-02", true), Fixtures.CROWN, List.of());

    private static PriceList.Pack pack(Food food, String size, long minor) {
        return PriceList.Pack.of(food, Amount.parse(size).orElseThrow(), Money.of(minor, Fixtures.CROWN)).orElseThrow();
    }

    @Test
    void a_kilogram_and_100_grams_eaten_are_priced() {
        UnitPrice unit = UnitPrice.of(pack(RIBS, "500 g", 740), RIBS);
        assertEquals(1480, unit.kilogram(), 1e-9);
        assertEquals(148 / 0.73, unit.hundredEaten(), 1e-9);
        assertTrue(unit.litre().isEmpty());
    }

    @Test
    void what_is_sold_by_volume_has_a_price_by_the_litre_as_well() {
        UnitPrice unit = UnitPrice.of(pack(Fixtures.OIL, "750 ml", 600), Fixtures.OIL);
        assertEquals(800, unit.litre().getAsDouble(), 1e-9);
        assertEquals(800 / 0.92, unit.kilogram(), 1e-9);
        assertEquals(800, UnitPrice.of(pack(Fixtures.OIL, "2 l", 1600), Fixtures.OIL).litre().getAsDouble(), 1e-9);
    }

    @Test
    void a_pack_of_nothing_or_of_an_unknown_measure_is_no_pack() {
        Money price = Money.of(100, Fixtures.CROWN);
        assertTrue(PriceList.Pack.of(RIBS, Amount.grams(0), price).isEmpty());
        assertTrue(PriceList.Pack.of(RIBS, Amount.of(1, "bucket"), price).isEmpty());
        assertTrue(PriceList.Pack.of(RIBS, Amount.of(1, "l"), price).isEmpty(), "it has no density");
        assertTrue(PriceList.Pack.of(RIBS, Amount.of(1001, "kg"), price).isEmpty());
    }

    @Test
    void a_price_put_on_the_list_takes_the_place_of_the_older_one_and_the_old_list_stays() {
        PriceList one = LIST.with(pack(RIBS, "1 kg", 1480)).with(pack(Fixtures.OIL, "1 l", 500));
        PriceList two = one.with(pack(RIBS, "1 kg", 1300));
        assertEquals(List.of("ribs", "oil"), two.packs().stream().map(PriceList.Pack::foodId).toList());
        assertEquals(1300, two.packOf(RIBS).orElseThrow().price().minor());
        assertEquals(1480, one.packOf(RIBS).orElseThrow().price().minor());
    }

    @Test
    void a_price_taken_off_is_missing_and_not_zero() {
        PriceList without = LIST.with(pack(RIBS, "1 kg", 1480)).without("ribs");
        assertEquals(OptionalDouble.empty(), without.minorPerGram(RIBS));
        assertEquals(0, without.packs().size());
    }

    @Test
    void a_price_in_other_money_is_refused() {
        Currency euro = Currency.of("EUR").orElseThrow();
        PriceList.Pack dear = PriceList.Pack.of(RIBS, Amount.grams(100), Money.of(100, euro)).orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> LIST.with(dear));
    }

    @Test
    void iso_4217_says_how_many_digits_follow_the_point() {
        // ISO 4217: EUR 2, JPY 0, KWD 3 (from memory; the JDK carries the table).
        assertEquals(2, Currency.of("EUR").orElseThrow().minorDigits());
        assertEquals(0, Currency.of("JPY").orElseThrow().minorDigits());
        assertEquals(3, Currency.of("KWD").orElseThrow().minorDigits());
        assertEquals(2, Currency.of("XXX").orElseThrow().minorDigits());
        assertTrue(Currency.of("ZZZ").isEmpty());
        assertTrue(Currency.of("eur").isEmpty());
    }

    @Test
    void two_lists_are_compared_by_weight_and_a_missing_price_stays_missing() {
        PriceList one = LIST.with(pack(RIBS, "1 kg", 1000)).with(pack(Fixtures.OIL, "1 l", 500));
        PriceList other = LIST.with(pack(Fixtures.LARD, "250 g", 100)).with(pack(RIBS, "500 g", 600));
        PriceComparison compared = new PriceComparison(one, other);
        assertEquals(List.of("ribs", "oil", "lard"), compared.rows().stream().map(PriceComparison.Row::foodId).toList());
        assertEquals(0.2, compared.dearer(compared.rows().get(0)).getAsDouble(), 1e-9);
        assertEquals(OptionalDouble.empty(), compared.dearer(compared.rows().get(1)));
        assertEquals(OptionalDouble.empty(), compared.dearer(compared.rows().get(2)));
    }

    @Test
    void sums_of_different_money_are_never_subtracted() {
        Currency euro = Currency.of("EUR").orElseThrow();
        PriceList abroad = PriceList.of(LIST.heading(), euro, List.of(PriceList.Pack.of(RIBS, Amount.of(1, "kg"), Money.of(900, euro)).orElseThrow()));
        PriceComparison compared = new PriceComparison(LIST.with(pack(RIBS, "1 kg", 1000)), abroad);
        assertEquals(OptionalDouble.empty(), compared.dearer(compared.rows().get(0)));
    }
}
