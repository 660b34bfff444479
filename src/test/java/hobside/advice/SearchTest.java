package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.SmallerServe;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a search does not need to look at. */
class SearchTest {

    private static final Change HALF = new CutDown("cream", 0.5);

    /** Half the cream, more people, a smaller serve. */
    private static final Board BOARD = Board.of(new Stock(Fixtures.pot(), Plan.EMPTY, Fixtures.books()),
            Stream.of(HALF, new CutDown("lard", 0.5), new MorePeople(2), new SmallerServe(0.75)).map(change -> Wish.of(change, Fixtures.pot(), Plan.EMPTY, Fixtures.books())).toList());

    private static Frame frame(int settled) {
        return BOARD.frames().stream().filter(frame -> frame.settled().size() == settled).findFirst().orElseThrow();
    }

    /** Less saturated fat than the pot holds, and as few changes as can be: one of them will do. */
    private static Quest quest(Frame frame) {
        double now = BOARD.frames().get(0).start()[Tally.FASAT];
        return Quest.of(frame, Aim.FEWEST_CHANGES, List.of(Row.atMost(Tally.FASAT, now - 1)));
    }

    private static long lookedAt(Search search, Frame frame) {
        long before = search.looked();
        search.best(frame, quest(frame));
        return search.looked() - before;
    }

    @Test
    void people_who_share_are_looked_at_only_while_they_could_be_better_than_the_best_so_far() {
        Search search = new Search(BOARD, 1000);
        assertTrue(lookedAt(search, frame(0)) > 0);
        assertEquals(List.of(HALF), search.best().wishes().stream().map(Wish::change).toList());
        assertTrue(lookedAt(search, frame(1)) > 0, "another plan of one change might be as cheap");
        assertEquals(0, lookedAt(search, frame(2)), "begins with two changes");
    }

    @Test
    void for_the_frontier_everyone_is_looked_at() {
        Search search = new Search(BOARD, 1000);
        search.best(frame(0), quest(frame(0)));
        assertTrue(!search.all(frame(2), quest(frame(2)), false).isEmpty());
    }

    @Test
    void what_cannot_come_to_the_goal_any_more_is_not_looked_at() {
        Search search = new Search(BOARD, 1000);
        Quest never = Quest.of(frame(0), Aim.FEWEST_CHANGES, List.of(Row.atMost(Tally.FASAT, 0)));
        assertEquals(List.of(), search.all(frame(0), never, true));
        assertEquals(0, search.looked());
    }
}
