package hobside.file.bring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.food.PriceList;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PriceTableTest {

    private static final Shelf SHELF = Bundle.STUDY.shelf();
    private static final PriceList OURS = Bundle.STUDY.books().prices();

    private static Read<Review> read(String text) throws IOException {
        return PriceTable.review(Input.of(RawFile.of("p.csv", text)), SHELF, Fixtures.CROWN, "quay-prices");
    }

    private static PriceList list(Review review) {
        return ((Review.Goods.Prices) review.goods()).list();
    }

    @Test
    void foods_are_known_by_id_name_or_other_name() throws IOException {
        Review review = read("food,pack,price (EUR)\nonion,1 kg,2.50\nScallions,1 bunch,1.20\nCarrots,500 g,0.9\n").value().orElseThrow();
        assertEquals(List.of(), review.faults());
        assertEquals(List.of("onion", "spring-onion", "carrot"), list(review).packs().stream().map(PriceList.Pack::foodId).toList());
        assertEquals("EUR", list(review).currency().code());
        assertEquals(List.of(250L, 120L, 90L), list(review).packs().stream().map(pack -> pack.price().minor()).toList());
    }

    @Test
    void commas_signs_and_a_column_of_currencies_are_understood() throws IOException {
        Review review = read("name;pack;price;currency;place;date\nonion;1 kg;€ 2,50;EUR;Quay market;2026-11-02\ncarrot;1,5 kg;3,10 €;eur;;\n").value().orElseThrow();
        assertEquals(List.of(), review.faults().stream().map(InputProblem::written).toList());
        assertEquals(310, list(review).packs().stream().skip(1).findFirst().orElseThrow().price().minor());
        assertEquals(new PriceList.Heading("Quay market", "2026-11-02", false), list(review).heading());
    }

    @Test
    void without_a_currency_the_money_of_the_kitchen_is_taken_and_said() throws IOException {
        Review review = read("food,pack,price\nonion,1 kg,2.50\n").value().orElseThrow();
        assertEquals(Fixtures.CROWN, list(review).currency());
        assertTrue(review.told().contains("No currency is named: the prices are taken as crowns."));
    }

    @Test
    void every_fault_comes_with_its_line_and_nothing_is_guessed() throws IOException {
        Review review = read("food,pack,price,currency\nonion,1 kg,2.50,EUR\nonoin,1 kg,1,EUR\ncarrot,1 bathtub,1,EUR\nginger,1 kg,1.234,EUR\ngarlic,1 kg,2,GBP\nonion,2 kg,4,EUR\ncelery,1 kg,-1,EUR\n"
                + "butter,1 kg,2,euro\nrice-long,,2,EUR\n").value().orElseThrow();
        List<String> faults = review.faults().stream().map(InputProblem::written).toList();
        assertEquals(1, list(review).packs().size());
        assertEquals(List.of(3, 4, 5, 6, 7, 8, 9, 10), review.faults().stream().map(InputProblem::line).toList(), faults.toString());
        assertTrue(faults.get(0).contains("did you mean onion (onion)"), faults.get(0));
        assertTrue(faults.get(1).contains("in one of its units"), faults.get(1));
        assertTrue(faults.get(3).contains("one currency in a table, EUR"), faults.get(3));
        assertTrue(faults.get(4).contains("the first stands in line 2"), faults.get(4));
        assertEquals(new Review.Counts(9, 1, 0, 0, 0, 8), review.counts());
    }

    @Test
    void a_table_without_packs_is_refused() throws IOException {
        assertTrue(read("food,price\nonion,2\n").problems().get(0).written().contains("headings food (or id, or name), pack and price"));
    }

    @Test
    void our_price_list_is_read_back_from_its_table_and_from_its_file(@TempDir Path folder) throws IOException {
        String table = PriceTable.written(OURS, SHELF);
        Review review = PriceTable.review(Input.of(RawFile.of("p.csv", table)), SHELF, OURS.currency(), "quay").value().orElseThrow();
        assertEquals(List.of(), review.faults().stream().map(InputProblem::written).toList());
        assertEquals(List.copyOf(OURS.packs()), List.copyOf(list(review).packs()));
        assertEquals(OURS.heading().place(), list(review).heading().place());
        Kitchen kitchen = Kitchen.at(folder);
        assertInstanceOf(Saving.Saved.class, new Taking(kitchen, SHELF).take(review));
        PriceList again = Library.load(kitchen).prices();
        assertEquals(List.copyOf(OURS.packs()), List.copyOf(again.packs()));
        assertEquals(OURS.currency(), again.currency());
    }
}
