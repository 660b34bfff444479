package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.LeaveOut;
import hobside.dish.Plan;
import hobside.dish.Skim;
import hobside.dish.Taken;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StockTest {

    private static List<Wish> wishes(Change... changes) {
        return Stream.of(changes).map(change -> Wish.of(change, Fixtures.pot(), Plan.EMPTY, Fixtures.books())).toList();
    }

    private static List<List<Change>> sets(Stock.Ways ways) {
        return ways.sets().stream().map(set -> set.stream().map(Wish::change).toList()).toList();
    }

    @Test
    void of_each_kind_of_change_to_an_ingredient_there_is_one_at_most_in_a_set() {
        Change half = new CutDown("cream", 0.5);
        Change most = new CutDown("cream", 0.75);
        Change without = new LeaveOut("lard");
        Stock.Ways ways = Stock.ways(wishes(half, most, without), 6);
        assertEquals(List.of(List.of(), List.of(half), List.of(most), List.of(without), List.of(half, without), List.of(most, without)), sets(ways));
        assertTrue(ways.all());
    }

    @Test
    void of_all_fillings_there_is_one_at_most_in_a_set() {
        Change beans = new BulkOut(Fixtures.ingredient(Fixtures.BEANS, 300), 2);
        Change lean = new BulkOut(Fixtures.ingredient(Fixtures.LEAN, 300), 2);
        assertEquals(List.of(List.of(), List.of(beans), List.of(lean)), sets(Stock.ways(wishes(beans, lean), 100)));
    }

    @Test
    void when_there_are_more_sets_than_may_be_the_later_wishes_are_left_out_and_it_says_so() {
        Change half = new CutDown("cream", 0.5);
        Stock.Ways ways = Stock.ways(wishes(half, new LeaveOut("lard")), 3);
        assertEquals(List.of(List.of(), List.of(half)), sets(ways));
        assertFalse(ways.all());
    }

    @Test
    void what_was_blocked_already_may_stay_blocked_and_nothing_else() {
        Change skim = new Skim(Taken.TYPICAL);
        Stock stock = new Stock(Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100)), Plan.of(skim), Fixtures.books());
        assertTrue(stock.blocks(skim));
        assertFalse(stock.blocks(new LeaveOut("lard")));
        assertTrue(stock.works(stock.working(List.of(skim, new CutDown("lard", 0.5)))));
        assertFalse(stock.works(stock.working(List.of(skim, new CutDown("cream", 0.5)))));
        assertEquals(1, stock.dish().ingredients().size());
    }
}
