package hobside.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.dish.Station;
import hobside.file.Scripts;
import hobside.stage.Task.Body;
import hobside.stage.Task.Kind;
import hobside.stage.order.Window;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.paper.Block;
import hobside.talk.paper.Sheet;
import hobside.talk.paper.TextSheet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The running order on the wall, of a timetable made up for it: each row worked by hand. */
class OrderSheetTest {

    private static final Stand STAND = Scripts.stand(Bundle.demo(Bundle.DISHES.get(0)), Bundle.STUDY);

    private static Slotted slot(int start, int lane, String key, Kind kind, int seconds, boolean helper, Station on) {
        Body body = kind == Kind.COOKS || helper ? Body.NOTHING : kind == Kind.TALK ? Body.VOICE : Body.HANDS;
        return new Slotted(new Task(key, kind, "doing " + key, new Task.Load(seconds, body, helper, on), new Task.Ties(List.of(), Window.ANY, List.of())), start, lane);
    }

    private static RunningOrder order(List<Slotted> slots, Ahead ahead, List<Silence> silences) {
        Talk talk = new Talk(new Talk.Front("Rib pot", List.of()), List.of());
        return new RunningOrder(slots, new RunningOrder.Proof(1_269, 1_269, true), ahead, silences, new RunningOrder.Outlook(0, List.of(), List.of()),
                new RunningOrder.Telling(talk, List.of(), List.of()));
    }

    private static List<List<String>> rows(Sheet sheet) {
        return sheet.blocks().stream().filter(Block.Table.class::isInstance).map(Block.Table.class::cast).findFirst().orElseThrow().rows();
    }

    private static final Ahead NOTHING = new Ahead(List.of(), List.of(), 0);

    @Test
    void who_does_what_at_which_minute_and_for_how_long() {
        List<Slotted> slots = List.of(slot(0, 0, "welcome", Kind.TALK, 65, false, Station.BENCH), slot(65, 0, "step:1", Kind.HANDS, 9, true, Station.BENCH),
                slot(70, 2, "step:1/cooks", Kind.COOKS, 600, false, Station.HOB), slot(70, 1, "step:2/cooks", Kind.COOKS, 610, false, Station.OVEN),
                slot(71, 0, "step:3/cooks", Kind.COOKS, 59, false, Station.COLD), slot(700, 0, "step:4", Kind.HANDS, 60, false, Station.HOB));
        assertEquals(List.of(List.of("0:00", "you", "doing welcome", "1:05"), List.of("1:05", "helper", "doing step:1", "0:09"), List.of("1:10", "hob 2", "doing step:1/cooks", "10:00"),
                List.of("1:10", "oven 1", "doing step:2/cooks", "10:10"), List.of("1:11", "by itself", "doing step:3/cooks", "0:59"), List.of("11:40", "you", "doing step:4", "1:00")),
                rows(OrderSheet.of(order(slots, NOTHING, List.of()), STAND)));
    }

    @Test
    void a_wait_stands_where_it_comes_and_says_how_it_is_filled() {
        List<Slotted> slots = List.of(slot(30, 0, "a", Kind.TALK, 10, false, Station.BENCH), slot(300, 0, "b", Kind.TALK, 10, false, Station.BENCH));
        List<Silence> silences = List.of(new Silence(0, 30, List.of(), 30), new Silence(40, 300, List.of("questions:salt", "questions:oil"), 20),
                new Silence(310, 400, List.of(), 90), new Silence(410, 700, List.of("questions:cost"), 200));
        List<List<String>> rows = rows(OrderSheet.of(order(slots, NOTHING, silences), STAND));
        assertEquals(List.of("0:00", "0:30", "0:40", "5:00", "5:10", "6:50"), rows.stream().map(row -> row.get(0)).toList());
        assertEquals(List.of("0:30", "0:10", "4:20", "0:10", "1:30", "4:50"), rows.stream().map(row -> row.get(3)).toList());
        assertEquals(waits("wait", 0), rows.get(0).get(2));
        assertEquals(waits("wait-asked", 2), rows.get(2).get(2));
        assertEquals(waits("wait-open", 0), rows.get(4).get(2));
        assertEquals(waits("wait-silent", 1), rows.get(5).get(2));
    }

    private static String waits(String key, int questions) {
        return STAND.words().say("paper.order." + key, Map.of("n", Integer.toString(questions)));
    }

    @Test
    void a_pot_that_is_only_begun_is_said_to_be_and_takes_a_second_lot_of_food() {
        Ahead ahead = new Ahead(List.of(new Ahead.Item("step:1", "Chop it.", 5, false), new Ahead.Item("step:2", "Simmer it.", 40, true)), List.of("step:2"), 45);
        Sheet sheet = OrderSheet.of(order(List.of(slot(0, 1, "step:2", Kind.HANDS, 60, false, Station.HOB)), ahead, List.of()), STAND);
        assertEquals("Begun here; then the finished pot is brought in: doing step:2", rows(sheet).get(0).get(2));
        String text = TextSheet.of(sheet);
        assertTrue(text.contains("[ ] Chop it.\n") && text.contains("[ ] Simmer it. (Also shown on stage"), text);
        assertTrue(text.contains("food for a second pot") && text.contains("21:09"), text);
    }

    @Test
    void where_nothing_is_done_ahead_or_nothing_fits_it_says_so() {
        List<Slotted> slots = List.of(slot(0, 0, "a", Kind.TALK, 10, false, Station.BENCH));
        assertTrue(OrderSheet.of(order(slots, NOTHING, List.of()), STAND).blocks().contains(new Block.Paragraph(STAND.words().say("paper.order.nothing"))));
        Sheet none = OrderSheet.of(order(List.of(), NOTHING, List.of()), STAND);
        assertEquals(List.of(new Block.Paragraph(STAND.words().say("paper.order.none"))), none.blocks());
        assertTrue(none.front().title().startsWith("Rib pot"), none.front().title());
    }
}
