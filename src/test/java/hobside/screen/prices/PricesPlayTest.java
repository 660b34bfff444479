package hobside.screen.prices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.file.PriceFile;
import hobside.food.PriceList;
import hobside.screen.Evening;
import hobside.screen.Glyphs;
import hobside.screen.Golden;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Price lists in a real kitchen folder: keys in, lines and files out. Places and prices are invented. */
class PricesPlayTest {

    @TempDir
    private Path folder;
    private Evening evening;

    @BeforeEach
    void open() {
        evening = new Evening(folder);
    }

    private VirtualStage lists(Size size) {
        return evening.at("ropewalk-rib-pot", size).play("P");
    }

    private VirtualStage lists() {
        return lists(Size.HOME);
    }

    private static boolean shows(VirtualStage stage, String words) {
        return String.join(" ", stage.frame().text().split("\\s+")).contains(words);
    }

    /** A new empty list, which opens for its first price. */
    private static VirtualStage fresh(VirtualStage lists, String place, String code) {
        return lists.play("n").type(place).play("enter enter ctrl-u").type(code).play("enter");
    }

    private static VirtualStage take(VirtualStage entry, String food, String pack, String price) {
        return entry.type(food).play("enter ctrl-u").type(pack).play("enter").type(price).play("enter");
    }

    private PriceList first() {
        return evening.library().priced().all().get(0).list();
    }

    private String price(String id) {
        return first().packOf(id).orElseThrow().price().digits();
    }

    @Test
    void the_lists_and_one_of_them_are_shown() {
        Golden.assertLooksAsKept("prices-80x24", lists().frame());
        Golden.assertLooksAsKept("prices-60x20", lists(Size.LEAST).frame());
        Golden.assertLooksAsKept("price-list-80x24", lists().play("enter down down").frame());
        Golden.assertLooksAsKept("price-list-60x20", lists(Size.LEAST).play("enter").frame());
        Golden.assertLooksAsKept("price-list-120x40", lists(new Size(120, 40)).play("enter end").frame());
    }

    @Test
    void a_new_list_asks_for_place_day_and_money_and_is_on_the_disk_at_once() {
        VirtualStage stage = fresh(lists(), "Hill shop", "jpy");
        assertTrue(shows(stage, "Take prices: Hill shop, 2026-11-02"), stage.frame().text());
        PriceFile made = evening.library().priced().all().get(0);
        assertEquals("hill-shop-2026-11-02", made.name());
        assertEquals(0, made.list().currency().minorDigits());
    }

    @Test
    void a_day_that_is_none_and_a_money_that_is_none_are_told_so() throws IOException {
        VirtualStage stage = lists().play("n enter");
        assertTrue(shows(stage, "A list needs a place"));
        assertTrue(shows(stage.type("Hill shop").play("enter").type("2026-02-30").play("enter"), "\"2026-02-30\" is no day"));
        stage.play("ctrl-u").type("2026-02-28").play("enter ctrl-u").type("ZZZ").play("enter");
        assertTrue(shows(stage, "ISO 4217 has no currency \"ZZZ\""), stage.frame().text());
        assertTrue(Files.notExists(folder.resolve("foods/own/prices")));
    }

    @Test
    void prices_are_taken_with_the_keyboard_alone_and_each_is_written_before_the_next_key() {
        VirtualStage stage = fresh(lists(), "Hill shop", "EUR");
        stage.type("beef short rib").play("enter ctrl-u").type("500 g").play("enter").type("7.3");
        Golden.assertLooksAsKept("take-price-80x24", stage.frame());
        assertTrue(shows(stage, "= 14.60 EUR a kg, 2.00 EUR for 100 g eaten"), stage.frame().text());
        stage.type("0").play("enter");
        assertEquals("7.30", price("beef-short-rib"));
        take(stage, "butter", "250 g", "2,60");
        assertEquals("2.60", price("butter"));
        Golden.assertLooksAsKept("take-prices-80x24", stage.type("oil").frame());
        assertEquals(2, first().packs().size());
    }

    @Test
    void the_unit_price_by_the_litre_is_shown_where_it_is_sold_so() {
        VirtualStage stage = fresh(lists(), "Hill shop", "EUR").type("olive oil").play("enter ctrl-u").type("750 ml").play("enter").type("9");
        assertTrue(shows(stage, "= 12.00 EUR a litre, 13.14 EUR a kg"), stage.frame().text());
    }

    @Test
    void a_pack_and_a_price_that_are_none_are_told_so_and_nothing_is_written() {
        VirtualStage stage = fresh(lists(), "Hill shop", "EUR").type("butter").play("enter").type("3 buckets").play("enter");
        assertTrue(shows(stage, "\"3 buckets\" is no pack of butter"), stage.frame().text());
        assertTrue(shows(stage.play("ctrl-u").type("250 g").play("enter").type("2.605").play("enter"), "\"2.605\" is no price"));
        assertEquals(0, first().packs().size());
    }

    @Test
    void escape_goes_back_one_step_at_a_time() {
        VirtualStage stage = fresh(lists(), "Hill shop", "EUR").type("butter").play("enter").type("250 g").play("enter escape");
        assertTrue(shows(stage, "What one pack holds"), stage.frame().text());
        assertTrue(shows(stage.play("escape"), "per 100 g"), "the search again");
        assertTrue(shows(stage.play("escape"), "No price yet"), "the list");
        assertTrue(shows(stage.play("escape"), "Price lists"));
        assertTrue(shows(stage.play("escape"), "Ropewalk rib pot"));
    }

    @Test
    void a_price_is_changed_and_taken_off_again() {
        VirtualStage stage = take(fresh(lists(), "Hill shop", "EUR"), "butter", "250 g", "2.60").play("escape enter enter").type("2.80").play("enter");
        assertEquals("2.80", price("butter"));
        assertTrue(shows(stage, "2.80"), stage.frame().text());
        stage.play("x");
        assertEquals(0, first().packs().size());
    }

    @Test
    void the_list_in_use_decides_every_cost_and_the_bench_knows_at_once() {
        VirtualStage stage = take(fresh(lists(), "Hill shop", "EUR"), "beef short rib", "1 kg", "10.00").play("escape escape home space");
        assertEquals("Hill shop", evening.library().prices().heading().place());
        assertTrue(shows(stage, "in use"), stage.frame().text());
        assertTrue(shows(stage.play("escape"), "cost ≥ 2.50 EUR"), stage.frame().text());
        assertTrue(shows(stage.play("P end space escape"), "cost 4.37 cr"), stage.frame().text());
    }

    @Test
    void a_copy_for_another_day_begins_with_the_same_prices_and_the_list_of_ours_stays() {
        VirtualStage stage = lists().play("c enter").type("2026-11-09").play("enter");
        assertEquals("ostrey-landing-quay-market-2026-11-09", evening.library().priced().all().get(0).name());
        assertTrue(first().heading().invented(), "invented prices stay invented");
        assertTrue(shows(stage, "2026-11-09"), stage.frame().text());
        stage.play("enter enter").type("15.00").play("enter");
        assertEquals("15.00", price("beef-short-rib"));
        assertEquals("14.80", evening.library().priced().all().get(1).list().packOf("beef-short-rib").orElseThrow().price().digits());
    }

    @Test
    void a_list_of_ours_is_neither_changed_nor_deleted() {
        assertTrue(shows(lists().play("enter x"), "stays as it is"));
        assertTrue(shows(lists().play("enter a"), "stays as it is"));
        assertTrue(shows(lists().play("x"), "It comes with the program and stays"));
        assertTrue(shows(lists().play("d"), "There is only one list"));
    }

    @Test
    void an_own_list_is_deleted_after_a_question() {
        VirtualStage stage = lists().play("c enter").type("2026-11-09").play("enter escape home x enter");
        assertEquals(2, evening.library().priced().all().size());
        stage.play("x down enter");
        assertEquals(1, evening.library().priced().all().size());
        assertTrue(shows(stage, "Deleted"), stage.frame().text());
    }

    @Test
    void two_lists_are_compared_food_by_food_and_for_the_dish_on_the_bench() {
        VirtualStage stage = lists().play("c ctrl-u").type("Hill shop").play("enter").type("2026-11-09").play("enter enter enter").type("18.50").play("enter down x");
        stage.play("escape end d enter");
        assertTrue(shows(stage, "A Ostrey Landing quay market, 2026-11-02 (invented), in crowns"), stage.frame().text());
        assertTrue(shows(stage, "beef short rib, lean and fat 14.80 18.50 +25 %"), stage.frame().text());
        Golden.assertLooksAsKept("compare-80x24", stage.frame());
        assertTrue(shows(lists().play("end d enter page-down"), "no price"));
    }

    @Test
    void a_price_that_is_missing_on_one_list_makes_its_cost_at_least_and_names_the_food() {
        VirtualStage stage = take(fresh(lists(), "Hill shop", "EUR"), "beef short rib", "1 kg", "10.00").play("escape escape home d enter");
        assertTrue(shows(stage, "A ≥ 20.00 EUR at least; no price of:"), stage.frame().text());
        assertTrue(shows(stage, "The money differs"), stage.frame().text());
    }

    @Test
    void the_till_takes_whole_packs_and_a_swap_says_where_it_breaks_even() {
        VirtualStage stage = evening.at("lantern-night-pumpkin-pot", Size.HOME).play("down enter down enter P t");
        Golden.assertLooksAsKept("till-80x24", stage.frame());
        assertTrue(shows(stage, "paid at the till, whole packs"), stage.frame().text());
        Golden.assertLooksAsKept("till-60x20", evening.at("ropewalk-rib-pot", Size.LEAST).play("P t").frame());
    }

    @Test
    void a_food_is_priced_from_its_own_page() {
        VirtualStage stage = evening.at("ropewalk-rib-pot", Size.HOME).play("f").type("lard").play("enter p");
        assertTrue(shows(stage, "Make one of your own first"), stage.frame().text());
        fresh(stage, "Hill shop", "EUR").play("escape escape home space escape p ctrl-u").type("250 g").play("enter").type("1.10").play("enter");
        assertEquals("1.10", price("lard"));
        assertTrue(shows(stage, "250 g for 1.10 EUR"), stage.frame().text());
    }

    @Test
    void every_screen_of_the_prices_has_its_keys_on_the_last_line_and_is_plain_in_ascii() {
        for (String way : List.of("", "enter", "n", "c", "t", "?", "enter ?", "c enter enter a", "c enter enter enter", "c enter enter enter enter", "end d enter")) {
            for (Size size : List.of(Size.LEAST, Size.HOME, new Size(120, 40))) {
                VirtualStage stage = lists(size).play(way);
                assertTrue(stage.line(size.height() - 1).strip().length() > 10, way + ": " + stage.frame().text());
                stage.frame().text().chars().filter(each -> each != '\n').forEach(each ->
                        assertTrue(each == '?' || Glyphs.plain((char) each) != Glyphs.UNKNOWN, way + " shows " + (char) each));
            }
        }
    }
}
