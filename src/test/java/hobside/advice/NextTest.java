package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Fixtures;
import hobside.dish.LeaveOut;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NextTest {

    private static final Outcome POT = Ledger.outcome(Fixtures.pot(), List.of(), Fixtures.books());

    private static Next next(String id, double saved, double extraCost, int minutes) {
        return new Next(new Wish(new LeaveOut(id), id, 1, minutes, 0, !id.equals("unpriced")), POT, saved, extraCost, minutes);
    }

    private static List<String> sorted(Comparator<Next> order, Next... all) {
        return Stream.of(all).sorted(order).map(each -> each.wish().change().of()).toList();
    }

    @Test
    void by_the_coin_comes_first_what_costs_nothing_then_what_saves_most_for_each_coin() {
        assertEquals(List.of("free", "cheaper", "four a coin", "two a coin", "one a coin", "unpriced"), sorted(Next.perCoin(), next("unpriced", 9, 0, 0),
                next("one a coin", 3, 3, 0), next("cheaper", 0.5, -2, 0), next("two a coin", 2, 1, 0), next("free", 1, 0, 0), next("four a coin", 2, 0.5, 0)));
    }

    @Test
    void by_the_minute_comes_first_what_takes_no_time_then_what_saves_most_for_each_minute() {
        assertEquals(List.of("at once", "at once too", "one a minute", "half a minute"), sorted(Next.perMinute(), next("half a minute", 5, 0, 10),
                next("at once too", 0.5, 0, 0), next("one a minute", 2, 0, 2), next("at once", 1, 9, 0)));
    }

    @Test
    void of_two_that_save_as_much_for_each_coin_the_bigger_saving_comes_first() {
        assertEquals(List.of("big", "small"), sorted(Next.perCoin(), next("small", 2, 1, 0), next("big", 4, 2, 0)));
        assertEquals(List.of("big", "small"), sorted(Next.perMinute(), next("small", 2, 0, 1), next("big", 4, 0, 2)));
    }
}
