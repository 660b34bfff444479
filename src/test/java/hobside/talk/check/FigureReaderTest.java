package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.measure.Currency;
import hobside.talk.Rounded;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read as a figure of the dish, and of what; what is a kitchen weight, a time or another food's own figure is passed over. */
class FigureReaderTest {

    private static final Currency CROWNS = Bundle.STUDY.books().prices().currency();

    private static List<Told> read(String words) {
        List<Sentence> sentences = Sentence.of(words);
        return new FigureReader(CROWNS).read(sentences.get(sentences.size() - 1));
    }

    private static String told(List<Told> told) {
        return String.join("; ", told.stream().map(each -> Rounded.written(each.value()) + " " + each.topics()).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Each plate holds 500 kJ.|500 [KILOJOULES]", "Each plate holds 500 kilojoules.|500 [KILOJOULES]", "It has 200 kcal.|200 [KILOCALORIES]",
        "It has 200 kilocalories.|200 [KILOCALORIES]", "It has 200 calories.|200 [KILOCALORIES]", "Each serve has 200 mg of sodium.|200 [SODIUM]",
        "Each serve costs 3 crowns.|3 [COST]", "Each serve costs 3 cr.|3 [COST]", "Each plate holds 20 g of fat.|20 [FAT]",
        "Each plate holds 3 g of saturated fat and 2 g of salt.|3 [SATURATED]; 2 [SALT]", "Each plate holds 20 grams: that is fat.|20 [FAT]",
        "Ribs hold 20 grams, most of it fat.|20 [FAT]", "20 grams, all of it saturated.|20 [SATURATED]", "20 grams of fat in all.|20 [FAT]",
        "Buy ribs: each plate holds 20 g of saturated fat.|20 [SATURATED]", "That is 10 grams off each plate.|10 [SATURATED, FAT]",
        "It holds 2 grams of saturated fat per 100 grams.|2 [SATURATED]", "It holds 100 grams of saturated fat.|100 [SATURATED]"})
    void a_figure_is_read_with_what_it_is_about(String words, String expected) {
        assertEquals(expected, told(read(words)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Put in 200 mg of saffron.", "The knife cost 3 crowns.", "Each plate gets 120 g of meat with little fat.",
        "Melt 20 grams, then watch the fat.", "The pot wants 6 g of salt.", "Buy 500 g of fat for the pot.", "A hen holds 10 grams.", "Each plate holds 2 g of sodium.",
        "By law it holds 20 grams of fat.", "Butter has 51 grams of saturated fat in 100 grams.", "A spoon of oil holds 14 grams of fat.", "Boil it for 20 minutes."})
    void what_is_no_figure_of_the_dish_is_passed_over(String words) {
        assertEquals("", told(read(words)));
    }

    /** A level teaspoon of fat is 4.6 g; two are 9.2 g, and half a spoon to either side is meant as well. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"That takes 2 teaspoons of fat off each plate.|9.2 [FAT]", "That is 2 teaspoons less fat on each plate.|9.2 [FAT]",
        "That takes 2 teaspoons of saturated fat off each plate.|9.2 [SATURATED]", "Stir 2 teaspoons of oil round the pot of fat.|''",
        "Keep 2 teaspoons for the fat.|''", "Two teaspoons of fat for each plate from the jar.|''"})
    void teaspoons_are_of_fat_where_the_plate_is_spoken_of(String words, String expected) {
        assertEquals(expected, told(read(words)));
    }

    @Test
    void spoons_are_coarser_than_grams() {
        assertEquals(2.3, read("That takes 2 teaspoons of fat off each plate.").get(0).slack(), 1e-9);
        assertEquals(0.5, read("That takes 9 grams of fat off each plate.").get(0).slack(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Each plate holds 20 g of salt; it was 30.|20 [SALT]; 30 [SALT]", "Each plate held 20 grams of saturated fat. Now it is 8.|8 [SATURATED, FAT]",
        "Each plate held 20 grams of fat. Now it is 8.|''", "Saturated fat is what we watch. Now it is 8.|''", "Each plate held 20 grams of saturated fat. The limit is 30.|''",
        "Each plate holds 20 grams of saturated fat; it was one.|20 [SATURATED]", "The fat on each plate is 4.6 grams.|4.6 [FAT]"})
    void a_bare_figure_borrows_its_unit_from_the_one_before(String words, String expected) {
        assertEquals(expected, told(read(words)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"It was saturated fat. Now each plate is at 10 grams.|10 [SATURATED, FAT]", "Saturated fat is what we watch. A hen holds 10 grams.|''",
        "We begin. Now each plate is at 10 grams.|''"})
    void the_sentence_before_says_what_the_grams_are_of(String words, String expected) {
        assertEquals(expected, told(read(words)));
    }

    @Test
    void a_coin_without_a_sign_turns_no_bare_number_into_money() {
        assertEquals("", told(new FigureReader(Currency.NONE).read(Sentence.of("The pot feeds 12 , as before.").get(0))));
        assertEquals("12 [COST]", told(new FigureReader(Currency.NONE).read(Sentence.of("The pot costs 12 coins.").get(0))));
    }
}
