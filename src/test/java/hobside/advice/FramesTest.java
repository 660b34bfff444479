package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Fixtures;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.dish.Skim;
import hobside.dish.SmallerServe;
import hobside.dish.MorePeople;
import hobside.dish.Taken;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who shares the pot, and whether it is skimmed. */
class FramesTest {

    private static final Change SKIM = new Skim(Taken.TYPICAL);

    /** Lard for ten in half a litre of water. */
    private static Dish soup(double lard) {
        return Fixtures.dish(Fixtures.ingredient(Fixtures.LARD, lard), Fixtures.ingredient(Fixtures.WATER, 500));
    }

    private static final Dish BAKE = Larder.baked(10, Fixtures.ingredient(Fixtures.LARD, 100));

    private static List<Frame> frames(Dish dish, Plan plan, Change... changes) {
        List<Wish> wishes = Stream.of(changes).map(change -> Wish.of(change, dish, plan, Fixtures.books())).toList();
        List<Change> told = plan.told().stream().filter(change -> change.kind() != ChangeKind.SKIM).toList();
        return new Frames(new Stock(dish, plan, Fixtures.books()), told, wishes, true).all();
    }

    private static List<Change> settled(Frame frame) {
        return frame.settled().stream().map(Wish::change).toList();
    }

    private static double[] sum(double free, double liquid, double grams) {
        double[] sum = new double[Tally.SIZE];
        sum[Tally.FREE_GRAMS] = free;
        sum[Tally.LIQUID] = liquid;
        sum[Tally.GRAMS] = grams;
        return sum;
    }

    @Test
    void where_nothing_is_wished_for_there_is_the_pot_as_it_stands() {
        Frame frame = frames(soup(100), Plan.EMPTY).get(0);
        assertEquals(40, frame.start()[Tally.FASAT], 1e-9);
        assertEquals(10, frame.plates(), 1e-9);
        assertEquals(0, frame.skimmed());
        assertEquals(List.of(), frame.settled());
        assertTrue(frame.holds(sum(0, 0, 100)));
    }

    @Test
    void more_people_and_a_smaller_serve_make_more_plates_of_the_pot() {
        List<Frame> frames = frames(soup(100), Plan.EMPTY, new MorePeople(5), new SmallerServe(0.75));
        assertEquals(List.of(10.0, 15.0, 10 / 0.75, 20.0), frames.stream().map(Frame::plates).toList());
        assertEquals(List.of(0.0, 1.0, 1.0, 2.0), frames.stream().map(frame -> frame.start()[Tally.CHANGES]).toList());
        assertEquals(List.of(new MorePeople(5)), settled(frames.get(1)));
    }

    @Test
    void what_cannot_be_made_settles_nothing() {
        assertEquals(1, frames(soup(100), Plan.EMPTY, new BulkOut(Fixtures.ingredient(Fixtures.LARD, 10), 2)).size());
    }

    @Test
    void a_skimming_that_is_wished_for_is_made_or_not() {
        List<Frame> frames = frames(soup(100), Plan.EMPTY, SKIM);
        assertEquals(List.of(0.0, 0.8), frames.stream().map(Frame::skimmed).toList());
        assertEquals(List.of(), settled(frames.get(0)));
        assertEquals(List.of(SKIM), settled(frames.get(1)));
        assertEquals(List.of(0.0, 1.0), frames.stream().map(frame -> frame.start()[Tally.CHANGES]).toList());
        assertEquals(List.of(0.0, 5.0), frames.stream().map(frame -> frame.start()[Tally.MINUTES]).toList());
        assertEquals(1, frames(BAKE, Plan.EMPTY, SKIM).size(), "what does not simmer is not skimmed");
    }

    /** Five grams of free fat, and a tenth of the pot that is liquid: what a skimming asks for. */
    @Test
    void a_pot_is_skimmed_only_with_fat_to_lift_and_liquid_to_rise_on() {
        Frame skimmed = frames(soup(100), Plan.EMPTY, SKIM).get(1);
        assertTrue(skimmed.holds(sum(5, 10, 100)));
        assertFalse(skimmed.holds(sum(4.9, 10, 100)));
        assertFalse(skimmed.holds(sum(5, 9.9, 100)));
    }

    @Test
    void a_skimming_that_stands_is_made_in_every_frame() {
        List<Frame> frames = frames(soup(100), Plan.of(new Skim(Taken.share(0.5))), new MorePeople(5));
        assertEquals(List.of(0.5, 0.5), frames.stream().map(Frame::skimmed).toList());
        assertEquals(List.of(), settled(frames.get(0)));
        assertFalse(frames.get(0).holds(sum(4.9, 10, 100)));
    }

    @Test
    void a_skimming_that_stands_and_was_blocked_may_stay_so() {
        List<Frame> frames = frames(soup(2), Plan.of(SKIM));
        assertEquals(List.of(0.8, 0.0, 0.0), frames.stream().map(Frame::skimmed).toList());
        Frame lean = frames.get(1);
        assertTrue(lean.holds(sum(4.9, 10, 100)));
        assertFalse(lean.holds(sum(5, 10, 100)));
        Frame dry = frames.get(2);
        assertTrue(dry.holds(sum(5, 9.9, 100)));
        assertFalse(dry.holds(sum(5, 10, 100)));
        List<Frame> bake = frames(BAKE, Plan.of(SKIM));
        assertEquals(List.of(0.0), bake.stream().map(Frame::skimmed).toList());
        assertTrue(bake.get(0).holds(sum(5, 10, 100)));
    }
}
