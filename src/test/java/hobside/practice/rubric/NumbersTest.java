package hobside.practice.rubric;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.measure.Range;
import hobside.practice.rubric.Number.Hedge;
import hobside.practice.rubric.Number.Unit;
import hobside.talk.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as people say and type them, and which true figures they fit. Values and how finely they were said are worked by hand. */
class NumbersTest {

    /** Makes the tables of a language ready once for all rows: an answer, and its numbers as they are told. */
    private static void numbers(String language, String... rows) {
        Concepts concepts = Bundle.STUDY.rubric(Script.UNTOUCHED.in(language)).concepts();
        Spotter spotter = Spotter.of(concepts, Map.of());
        Numbers numbers = new Numbers(spotter, concepts);
        for (String row : rows) {
            String[] cells = row.split(" \\| ", 2);
            assertEquals(cells[1], told(numbers.in(spotter.hear(cells[0]))), row);
        }
    }

    private static String told(List<Number> numbers) {
        List<String> all = new ArrayList<>();
        for (Number each : numbers) {
            all.add(String.format(Locale.ROOT, "%.4g±%.2g %s", each.value(), each.fine(), each.unit()) + (each.hedge() == Hedge.NONE ? "" : " " + each.hedge()));
        }
        return String.join(", ", all);
    }

    @Test
    void an_english_number_has_a_value_and_is_said_so_finely() {
        numbers("en",
                "17 grams of saturated fat | 17.00±0.50 GRAM",
                "4.6 g | 4.600±0.050 GRAM",
                "4.06 g | 4.060±0.0050 GRAM",
                "9.9 g | 9.900±0.050 GRAM",
                "٣ grams | 0.000±0.50 GRAM",
                "٣.٥ grams | 0.000±0.050 GRAM",
                "0.125 g | 0.1250±0.00050 GRAM",
                "230 kcal | 230.0±5.0 KILOCALORIE",
                "235 kcal | 235.0±0.50 KILOCALORIE",
                "1,200 kcal | 1200±50 KILOCALORIE",
                "90 kJ | 90.00±0.50 KILOJOULE",
                "100 g | 100.0±5.0 GRAM",
                "300 mg of salt | 0.3000±0.0050 MILLIGRAM",
                "2 kilos | 2000±5.0e+02 KILO",
                "5 cents | 0.05000±0.0050 COIN",
                "3 crowns | 3.000±0.50 COIN",
                "2 teaspoons | 9.200±2.3 TEASPOON",
                "2 cups | 2.000±0.50 KITCHEN",
                "half a gram | 0.5000±0.13 GRAM",
                "a gram and a half | 1.500±0.25 GRAM",
                "gram and a half | 1.500±0.25 GRAM",
                "two and a half grams | 2.500±0.25 GRAM",
                "2 grams and a half | 2.500±0.25 GRAM",
                "two grams. And a half | 2.000±0.50 GRAM, 0.5000±0.0 SHARE",
                "a hundred grams | 100.0±5.0 GRAM",
                "one hundred and fifty grams | 150.0±5.0 GRAM",
                "two hundred and fifty-five grams | 255.0±0.50 GRAM",
                "two hundred grams | 200.0±5.0 GRAM",
                "two hundred five grams | 205.0±0.50 GRAM",
                "twenty-eight grams | 28.00±0.50 GRAM",
                "twelve eggs and five onions | 12.00±0.50 BARE, 5.000±0.50 BARE",
                "twenty and thirty | 20.00±0.50 BARE, 30.00±0.50 BARE",
                "five and six | 5.000±0.50 BARE, 6.000±0.50 BARE",
                "three fifths | 0.6000±0.0 SHARE",
                "a third of it | 0.3333±0.0 SHARE",
                "half of it | 0.5000±0.0 SHARE",
                "60 % | 0.6000±0.0050 SHARE",
                "60 percent | 0.6000±0.0050 SHARE",
                "60 per cent | 0.6000±0.0050 SHARE",
                "from 28 down to 11 | 28.00±0.50 BARE, 11.00±0.50 BARE",
                "a bowl of soup | ",
                "17. Grams | 17.00±0.50 BARE");
    }

    @Test
    void a_hedge_stands_near_before_or_right_behind() {
        numbers("en",
                "about 9 grams | 9.000±0.50 GRAM ABOUT",
                "9 grams or so | 9.000±0.50 GRAM ABOUT",
                "less than 9 grams | 9.000±0.50 GRAM UNDER",
                "nearly 9 grams | 9.000±0.50 GRAM NEARLY",
                "more than 9 grams | 9.000±0.50 GRAM MORE",
                "over the hill 9 grams | 9.000±0.50 GRAM MORE",
                "9 or so grams | 9.000±0.50 GRAM ABOUT",
                "9 grams less or so | 9.000±0.50 GRAM",
                "under the hill 9 grams | 9.000±0.50 GRAM UNDER",
                "over the big hill 9 grams | 9.000±0.50 GRAM",
                "nearly all of the 9 grams | 9.000±0.50 GRAM NEARLY",
                "nearly all of it, then 9 grams | 9.000±0.50 GRAM");
    }

    @Test
    void a_spanish_number_is_read_by_its_own_words() {
        numbers("es",
                "treinta y cinco gramos | 35.00±0.50 GRAM",
                "4,6 gramos | 4.600±0.050 GRAM",
                "1.200 kilocalorías | 1200±50 KILOCALORIE",
                "unos 9 gramos | 9.000±0.50 GRAM ABOUT");
    }

    @Test
    void a_number_knows_its_first_and_its_last_word() {
        Concepts concepts = Bundle.STUDY.rubric(Script.UNTOUCHED.in("en")).concepts();
        Spotter spotter = Spotter.of(concepts, Map.of());
        Numbers numbers = new Numbers(spotter, concepts);
        Number number = numbers.in(spotter.hear("We save about two and a half grams here")).get(0);
        assertEquals("3 to 7", number.first() + " to " + number.last());
        assertEquals(List.of(), numbers.in(spotter.hear("")));
        assertEquals(List.of(), numbers.in(spotter.hear("grams and grams")));
    }

    /** The true figure goes from 9 to 11 and is 10; rounding allows a half to either side, a hedge eight in a hundred of what is said. */
    @ParameterizedTest
    @CsvSource({
        "8.5, NONE, true", "8.4, NONE, false", "11.5, NONE, true", "11.6, NONE, false",
        "12, ABOUT, false", "11.9, ABOUT, true", "8.4, ABOUT, true", "8.3, ABOUT, false",
        "7, MORE, true", "6.6, MORE, false", "10, MORE, true", "12, MORE, false",
        "12.5, NEARLY, true", "12.6, NEARLY, false", "8, NEARLY, false",
        "15, UNDER, true", "15.1, UNDER, false", "8, UNDER, false"})
    void a_number_fits_within_its_hedge(double value, Hedge hedge, boolean fits) {
        assertEquals(fits, new Number(value, 0.5, 0, 1, Unit.GRAM, hedge).fits(Range.of(9, 10, 11), 0.5));
    }

    /** "Less than a gram" holds of any smaller amount, however small. */
    @ParameterizedTest
    @CsvSource({"1, true", "1.1, false"})
    void less_than_one_is_as_little_as_one_likes(double value, boolean fits) {
        assertEquals(fits, new Number(value, 0, 0, 1, Unit.GRAM, Hedge.UNDER).fits(Range.of(0.1, 0.2, 0.3), 0));
    }
}
