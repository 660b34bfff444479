package hobside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Money, ranges and amounts at their edges. */
class QuantitiesTest {

    private static final Currency EURO = Currency.of("EUR").orElseThrow();

    /** ISO 4217: the euro has two digits, the yen none, the dinar of Kuwait three; CLF, a unit of account of Chile, has four. */
    @Test
    void a_currency_has_the_digits_that_the_standard_gives_it() {
        assertEquals(List.of(2, 0, 3, 4), List.of("EUR", "JPY", "KWD", "CLF").stream().map(code -> Currency.of(code).orElseThrow().minorDigits()).toList());
        assertEquals(List.of(100.0, 1.0, 1000.0), List.of("EUR", "JPY", "KWD").stream().map(code -> Currency.of(code).orElseThrow().minorPerMajor()).toList());
        assertEquals(2, Currency.of("XXX").orElseThrow().minorDigits());
    }

    @Test
    void a_code_is_three_capitals() {
        List.of("AAA", "ZZZ", "AZQ").forEach(code -> assertTrue(Currency.isCode(code), code));
        List.of("", "EU", "EURO", "eUR", "EuR", "EUr", "@UR", "E[R", "EU1").forEach(code -> {
            assertFalse(Currency.isCode(code), code);
            assertEquals(Optional.empty(), Currency.of(code), code);
            assertThrows(IllegalArgumentException.class, () -> new Currency(code, "coin", "coins", "", 2), code);
        });
        assertEquals(Optional.empty(), Currency.of("QQQ"), "the standard has no such code");
        assertThrows(IllegalArgumentException.class, () -> new Currency("EUR", "euro", "euros", "", -1));
        assertThrows(IllegalArgumentException.class, () -> new Currency("EUR", "euro", "euros", "", 5));
        assertEquals(4, new Currency("EUR", "euro", "euros", "", 4).minorDigits());
        assertEquals(0, new Currency("EUR", "euro", "euros", "", 0).minorDigits());
    }

    @Test
    void a_sum_is_read_to_its_last_digit_and_nothing_else_is_read_as_one() {
        assertEquals(List.of(1250L, 1250L, 1200L, 9L, 99_999_999_999L), List.of("12.50", "12,5", "12", "0.09", "999999999.99").stream()
                .map(text -> Money.parse(text, EURO).orElseThrow().minor()).toList());
        assertEquals(1234, Money.parse("1.234", Currency.of("KWD").orElseThrow()).orElseThrow().minor());
        assertEquals(5, Money.parse("5", Currency.of("JPY").orElseThrow()).orElseThrow().minor());
        assertEquals(Optional.empty(), Money.parse("5.0", Currency.of("JPY").orElseThrow()));
        List.of("", ".", "12.", ".50", "12.505", "1000000000", "-5", "1/2", "1:2", "1,2.3", "1.2,3", "1e3", " 5")
                .forEach(text -> assertEquals(Optional.empty(), Money.parse(text, EURO), text));
    }

    @Test
    void sums_are_rounded_half_up_added_within_one_currency_and_written_with_all_their_digits() {
        assertEquals(List.of(124L, 123L, -123L), List.of(123.5, 123.4, -123.4).stream().map(minor -> Money.rounded(minor, EURO).minor()).toList());
        assertEquals(Money.of(350, EURO), Money.of(300, EURO).plus(Money.of(50, EURO)));
        Money yen = Money.of(50, Currency.of("JPY").orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> yen.plus(Money.of(50, EURO)));
        assertEquals(List.of("12.50", "0.05", "-0.50", "50"), List.of(Money.of(1250, EURO).digits(), Money.of(5, EURO).digits(),
                Money.of(-50, EURO).digits(), yen.digits()));
    }

    @Test
    void a_range_holds_both_its_ends_and_is_turned_round_by_a_negative_factor() {
        Range range = Range.of(2, 3, 5);
        assertTrue(range.holds(2) && range.holds(5));
        assertFalse(range.holds(1.999) || range.holds(5.001));
        assertEquals(Range.of(4, 6, 10), range.times(2));
        assertEquals(Range.of(-10, -6, -4), range.times(-2));
        assertEquals(Range.exactly(0), range.times(0));
        assertEquals(3, range.width());
        assertFalse(range.isExact());
        assertTrue(Range.exactly(2).isExact());
    }

    @Test
    void a_range_of_shares_is_cut_off_at_both_ends() {
        assertEquals(Range.of(0, 0.5, 1), Range.of(-0.2, 0.5, 1.3).within(0, 1));
        assertEquals(Range.exactly(1), Range.of(1.1, 1.2, 1.3).within(0, 1));
        assertEquals(Range.of(0.1, 0.2, 0.9), Range.of(0.1, 0.2, 0.9).within(0, 1));
    }

    @Test
    void a_range_out_of_order_or_without_end_is_none() {
        assertThrows(IllegalArgumentException.class, () -> Range.of(3, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> Range.of(2, 6, 5));
        assertThrows(IllegalArgumentException.class, () -> Range.of(Double.NEGATIVE_INFINITY, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> Range.of(1, 2, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> Range.exactly(Double.NaN));
    }

    @Test
    void amounts_are_read_counted_and_written_as_a_cook_writes_them() {
        assertEquals(Optional.of(Amount.of(1.5, "cup")), Amount.parse("1 1/2 cups"));
        assertEquals(Optional.of(Amount.of(0.75, "kg")), Amount.parse("¾ kilograms").or(() -> Amount.parse("¾ kg")));
        assertEquals(Optional.empty(), Amount.parse("1/0 cup"));
        assertEquals(Optional.of(Amount.grams(1_000_000)), Amount.parse("1000000 g"));
        assertEquals(Optional.empty(), Amount.parse("1000001 g"));
        assertEquals(List.of("1/2 cup", "1 1/2 cups"), List.of(Amount.of(0.5, "cup").written(), Amount.of(1.5, "cup").written()));
        assertEquals(List.of("2 cups", "1 cup", "3", "2 kg"), List.of(Amount.of(2, "cup").written(), Amount.of(1, "cup").written(),
                Amount.of(3, "").written(), Amount.of(2, "kg").written()));
        assertEquals(Amount.grams(75), Amount.grams(50).times(1.5));
        assertThrows(IllegalArgumentException.class, () -> Amount.grams(-1));
        assertThrows(IllegalArgumentException.class, () -> Amount.grams(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Amount.grams(1_000_001));
    }
}
