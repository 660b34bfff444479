package hobside.stage.order;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The parts of the search by themselves, on examples that can be followed with a pencil. */
class PartsTest {

    private static final Reason NO_REASON = new Because(new Atoms());

    private static Facts facts(int capacity, int[]... durationsAndTakes) {
        List<Job> jobs = new ArrayList<>();
        for (int[] each : durationsAndTakes) {
            jobs.add(Job.of(each[0], List.of(each[1]), List.of()));
        }
        return Facts.of(new Problem(jobs, List.of(capacity)), 1);
    }

    /** Two hobs. Pot 0 stands on one for 10, pot 2 on the other from 4 to 7; pot 1 needs both for 5. */
    @Test
    void a_pot_fits_in_where_there_is_room_for_all_its_time() {
        Profile profile = new Profile(facts(2, new int[] {10, 1}, new int[] {5, 2}, new int[] {3, 1}, new int[] {0, 2}));
        profile.place(0, 0);
        assertEquals(10, profile.fit(1, 0));
        assertEquals(0, profile.fit(2, 0));
        profile.place(2, 4);
        assertEquals(0, profile.fit(2, 0));
        assertTrue(profile.fitsAt(2, 1));
        assertFalse(profile.fitsAt(2, 2));
        assertEquals(7, profile.fit(2, 2));
        assertEquals(7, profile.fit(2, 7));
        assertEquals(5, profile.fit(3, 5), "what takes no time takes no room");
        profile.place(3, 5);
        profile.place(1, 10);
        assertEquals(15, profile.fit(2, 8));
        assertEquals(7, profile.fit(2, 6));
        profile.clear();
        assertEquals(0, profile.fit(1, 0));
    }

    /** A number x from 0 to 10: side 0 says x is at least, side 1 that -x is. */
    private static Trail zeroToTen(int numbers) {
        Trail trail = new Trail(numbers);
        for (int i = 0; i < numbers; i++) {
            trail.least[2 * i + 1] = -10;
        }
        return trail;
    }

    @Test
    void a_bound_is_raised_until_it_meets_the_other() {
        Trail trail = zeroToTen(2);
        assertTrue(trail.raise(0, 3, NO_REASON));
        assertTrue(trail.isTrue(0, 3));
        assertFalse(trail.isTrue(0, 4));
        assertTrue(trail.isFalse(0, 11));
        assertFalse(trail.isFalse(0, 10));
        assertTrue(trail.raise(0, 3, NO_REASON));
        assertEquals(1, trail.size());
        assertFalse(trail.isFixed(0));
        assertTrue(trail.raise(0, 10, NO_REASON));
        assertTrue(trail.isFixed(0));
        assertFalse(trail.isFixed(1));
    }

    @Test
    void a_clash_says_which_statements_do_not_go_together() {
        Trail trail = zeroToTen(2);
        assertFalse(trail.raise(0, 11, new Because(new Atoms().add(2, 5))));
        Atoms clash = trail.clash();
        assertArrayEquals(new int[] {1, 2}, clash.sides());
        assertArrayEquals(new int[] {-10, 5}, clash.values());
        assertEquals(0, trail.size());
    }

    @Test
    void what_was_decided_is_taken_back_and_what_was_known_before_stays() {
        Trail trail = zeroToTen(2);
        trail.raise(0, 3, NO_REASON);
        trail.raise(0, 7, NO_REASON);
        trail.decide(2, 1);
        trail.raise(0, 9, NO_REASON);
        assertEquals(1, trail.level());
        assertEquals(2, trail.start(1));
        assertEquals(0, trail.start(0));
        assertEquals("2 0 1 1", trail.side(2) + " " + trail.before(2) + " " + trail.after(2) + " " + trail.level(2));
        assertNull(trail.why(2));
        assertSame(NO_REASON, trail.why(3));
        assertEquals(0, trail.position(0, 3));
        assertEquals(1, trail.position(0, 4));
        assertEquals(3, trail.position(0, 8));
        trail.backTo(1);
        assertEquals(4, trail.size());
        trail.backTo(0);
        assertEquals("7 0 2 0", trail.least[0] + " " + trail.least[2] + " " + trail.size() + " " + trail.level());
        assertEquals(1, trail.position(0, 7));
        trail.settle();
        assertEquals("0 7", trail.size() + " " + trail.root[0]);
    }

    @Test
    void it_holds_hundreds_of_statements_and_levels() {
        Trail trail = new Trail(1);
        trail.least[1] = -1_000;
        for (int i = 1; i <= 300; i++) {
            trail.decide(0, i);
            trail.raise(0, i, NO_REASON);
        }
        assertEquals("300 300 300", trail.level() + " " + trail.size() + " " + trail.least[0]);
        trail.backTo(70);
        assertEquals("70 70 69", trail.least[0] + " " + trail.size() + " " + trail.start(70));
    }

    /** y is at least x plus 4. */
    @Test
    void an_arc_draws_in_what_follows() {
        Trail trail = zeroToTen(3);
        trail.raise(0, 3, NO_REASON);
        Arc arc = new Arc(0, 2, 4, Arc.ALWAYS, 0);
        assertTrue(arc.pass(trail));
        assertEquals(7, trail.least[2]);
        Atoms out = new Atoms();
        arc.because(2, 7, out);
        assertArrayEquals(new int[] {0, 3}, new int[] {out.side(0), out.value(0)});
        assertEquals(1, out.size());
        assertFalse(new Arc(0, 2, 8, Arc.ALWAYS, 0).pass(trail));
    }

    /** The same where c is 1: as long as y can be 7 nothing follows; where it can be 5 at most, c is 0; and where c is 1, y is 7. */
    @Test
    void an_arc_with_a_condition_rules_it_out_or_follows_it() {
        Arc arc = new Arc(0, 2, 4, 4, 1);
        Trail open = zeroToTen(3);
        open.least[5] = -1;
        open.raise(0, 3, NO_REASON);
        assertTrue(arc.pass(open));
        assertEquals("0 -1", open.least[2] + " " + open.least[5]);
        open.raise(3, -7, NO_REASON);
        assertTrue(arc.pass(open));
        assertEquals(-1, open.least[5], "seven is just enough");
        open.raise(3, -5, NO_REASON);
        assertTrue(arc.pass(open));
        assertEquals(0, open.least[5]);
        Atoms why = new Atoms();
        open.why(open.size() - 1).because(5, 0, why);
        assertArrayEquals(new int[] {0, 3}, why.sides());
        assertArrayEquals(new int[] {3, -6}, why.values());
        assertTrue(arc.pass(open), "nothing more follows");
        Trail held = zeroToTen(3);
        held.least[5] = -1;
        held.raise(0, 3, NO_REASON);
        held.raise(4, 1, NO_REASON);
        assertTrue(arc.pass(held));
        assertEquals(7, held.least[2]);
        Atoms out = new Atoms();
        arc.because(2, 7, out);
        assertArrayEquals(new int[] {0, 4}, out.sides());
        assertArrayEquals(new int[] {3, 1}, out.values());
        assertEquals(4, arc.condition());
    }

    @Test
    void a_statement_learned_is_a_reason_for_each_of_its_parts() {
        Clause clause = new Clause(new Atoms().add(0, 3).add(2, 5).add(5, -1), 2);
        clause.swap(0, 2);
        Atoms out = new Atoms();
        clause.because(2, 5, out);
        assertArrayEquals(new int[] {4, 1}, out.sides());
        assertArrayEquals(new int[] {2, -2}, out.values());
    }

    @Test
    void atoms_grow_and_change_places() {
        Atoms atoms = new Atoms();
        for (int i = 0; i < 40; i++) {
            atoms.add(i, 100 + i);
        }
        atoms.swap(0, 39);
        assertEquals("40 39 139 0 100", atoms.size() + " " + atoms.side(0) + " " + atoms.value(0) + " " + atoms.side(39) + " " + atoms.value(39));
        atoms.clear();
        assertEquals(0, atoms.sides().length);
    }

    @Test
    void the_first_plan_is_always_granted_and_then_so_many_as_were_asked_for() {
        Meter meter = new Meter(Effort.nodes(2));
        assertTrue(meter.spend());
        assertTrue(meter.spend());
        assertFalse(meter.isOver());
        assertFalse(meter.spend());
        assertTrue(meter.isOver());
        assertFalse(meter.spend());
        assertEquals(2, meter.nodes());
        Meter enough = new Meter(new Effort(10, () -> true));
        assertTrue(enough.spend());
        assertFalse(enough.spend());
    }

    /** One thing of 4 seconds after the other of 6; no shortest plan is longer than ten. */
    @Test
    void the_best_plan_is_the_shortest_so_far() {
        Best best = new Best(facts(1, new int[] {4, 1}, new int[] {6, 1}), 10);
        assertEquals(11, best.upper());
        best.offer(null);
        best.offer(new int[] {0, 5});
        assertNull(best.starts());
        best.offer(new int[] {6, 0});
        best.offer(new int[] {0, 4});
        assertArrayEquals(new int[] {6, 0}, best.starts(), "as short as the first is not shorter");
        best.atLeast(7);
        best.atLeast(3);
        assertEquals("7 10", best.lower() + " " + best.upper());
        assertFalse(best.isSettled());
        best.atLeast(12);
        assertEquals(10, best.lower());
        assertTrue(best.isSettled());
    }

    /** Three pots of 4, 6 and 2 on two hobs: one has to be put off until the first of the others is done. */
    @Test
    void of_three_pots_on_two_hobs_one_is_put_off_the_shortest_way_first() {
        Bare bare = Bare.of(facts(2, new int[] {4, 1}, new int[] {6, 1}, new int[] {2, 1})).orElseThrow();
        Moment moment = new Moment(bare);
        moment.begin();
        assertEquals(0b111, moment.ready());
        moment.startAll();
        assertEquals(0b111, moment.running);
        Ways ways = moment.ways;
        assertTrue(ways.find(moment, 100));
        assertEquals(0b100, ways.next(100), "the 2 after the 4 makes 6");
        assertEquals(0b001, ways.next(100), "the 4 after the 2 makes 6 as well, and has more to come");
        assertEquals(0, ways.next(8), "the 6 after the 2 makes 8");
        assertEquals(0b010, ways.next(9));
        assertEquals(0, ways.next(100));
        assertFalse(ways.areTooMany());
        assertTrue(ways.find(moment, 8));
        ways.next(100);
        ways.next(100);
        assertEquals(0, ways.next(100), "a way that is too long is not looked for");
    }

    @Test
    void a_moment_goes_on_to_the_next_end() {
        Bare bare = Bare.of(facts(2, new int[] {4, 1}, new int[] {6, 1}, new int[] {2, 1})).orElseThrow();
        Moment first = new Moment(bare);
        first.begin();
        first.startAll();
        Moment then = new Moment(bare);
        then.follow(first, 0b100);
        assertEquals("4 1 10 10", then.time + " " + Long.toBinaryString(then.over) + " " + Long.toBinaryString(then.running) + " " + Long.toBinaryString(then.held));
        int[] left = new int[3];
        then.left(left);
        assertArrayEquals(new int[] {0, 2, 2}, left);
        assertEquals(0b100, then.ready());
        then.startAll();
        assertFalse(then.ways.find(then, 100), "there is room for both");
        assertEquals(6, then.end(2));
        then.step();
        assertEquals("6 111 0", then.time + " " + Long.toBinaryString(then.over) + " " + Long.toBinaryString(then.running));
        assertArrayEquals(new int[] {0, 0, 4}, then.starts());
    }
}
