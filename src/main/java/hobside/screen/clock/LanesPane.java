package hobside.screen.clock;

import hobside.dish.Station;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Style;
import hobside.stage.RunningOrder;
import hobside.stage.Slotted;
import hobside.stage.Task;
import hobside.talk.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The running order as lanes over time: who speaks, whose hands are busy, what stands on which hob. */
final class LanesPane {

    private static final int NAME = 11;
    private static final char SPEAKS = '\u2592';
    private static final char WORKS = Glyphs.BLOCK;
    private static final char COOKS = '=';

    /** One lane: its name, and what goes on it. */
    private record Lane(String name, Predicate<Slotted> holds) {}

    private final RunningOrder order;
    private final Frame frame;
    private final int end;

    private LanesPane(RunningOrder order, Frame frame) {
        this.order = order;
        this.frame = frame;
        this.end = Math.max(60, Math.max(order.seconds(), order.outlook().slot()));
    }

    /** Rows that the lanes take, their scale with them. */
    static int rows(RunningOrder order, Setting.Hall hall) {
        return lanes(order, hall).size() + 1;
    }

    static void draw(RunningOrder order, Setting.Hall hall, Frame frame, String here) {
        LanesPane pane = new LanesPane(order, frame);
        pane.scale();
        int row = 1;
        for (Lane lane : lanes(order, hall)) {
            pane.lane(row++, lane, here);
        }
    }

    /** Only hobs and ovens that are used; the presenter always, the helper where there is one. */
    private static List<Lane> lanes(RunningOrder order, Setting.Hall hall) {
        List<Lane> lanes = new ArrayList<>();
        lanes.add(new Lane("you", slot -> slot.task().isSeen()));
        if (hall.helper()) {
            lanes.add(new Lane("helper", slot -> slot.task().load().helper()));
        }
        stations(order, Station.HOB, "hob", lanes);
        stations(order, Station.OVEN, "oven", lanes);
        lanes.add(new Lane("by itself", slot -> slot.task().kind() == Task.Kind.COOKS && slot.lane() == 0));
        lanes.removeIf(lane -> lane.name().equals("by itself") && order.slots().stream().noneMatch(lane.holds()));
        return lanes;
    }

    private static void stations(RunningOrder order, Station station, String name, List<Lane> lanes) {
        int most = order.slots().stream().filter(slot -> slot.task().load().on() == station).mapToInt(Slotted::lane).max().orElse(0);
        for (int lane = 1; lane <= most; lane++) {
            int each = lane;
            lanes.add(new Lane(name + " " + lane, slot -> slot.task().load().on() == station && slot.lane() == each));
        }
    }

    private int room() {
        return frame.width() - NAME - 2;
    }

    private int column(int seconds) {
        return NAME + (int) Math.round((double) seconds * room() / end);
    }

    /** A mark every five minutes; every ten, twenty ... where they would stand too close. */
    private void scale() {
        frame.put(0, 1, "minutes", Style.QUIET);
        int step = 5;
        while (column(step * 60) - NAME < 5) {
            step *= 2;
        }
        for (int minute = 0; minute * 60 <= end; minute += step) {
            frame.put(0, column(minute * 60), Integer.toString(minute), Style.QUIET);
        }
    }

    private void lane(int row, Lane lane, String here) {
        frame.put(row, 1, lane.name(), Style.PLAIN);
        frame.put(row, NAME, String.valueOf(Glyphs.MIDDLE_DOT).repeat(Math.max(0, column(end) - NAME)), Style.QUIET);
        for (Slotted slot : order.slots()) {
            if (lane.holds().test(slot) && slot.task().seconds() > 0) {
                block(row, slot, slot.task().key().equals(here));
            }
        }
    }

    /** A task is a bar with its number or letter in front, so that neighbours can be told apart. */
    private void block(int row, Slotted slot, boolean here) {
        int from = column(slot.start());
        int to = Math.max(from + 1, column(slot.end()));
        char sign = slot.task().kind() == Task.Kind.COOKS ? COOKS : slot.task().kind() == Task.Kind.HANDS ? WORKS : SPEAKS;
        frame.put(row, from, String.valueOf(sign).repeat(to - from), here ? Style.CURSOR : slot.task().kind() == Task.Kind.TALK ? Style.PLAIN : Style.STRONG);
        String mark = slot.task().step() > 0 ? Integer.toString(slot.task().step()) : "";
        if (mark.length() < to - from) {
            frame.put(row, from, mark, here ? Style.CURSOR : Style.STRONG);
        } else if (mark.isEmpty() && to - from > 1) {
            frame.put(row, from, "|", here ? Style.CURSOR : Style.QUIET);
        }
    }
}
