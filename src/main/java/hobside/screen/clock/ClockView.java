package hobside.screen.clock;

import hobside.dish.MethodStep;
import hobside.dish.Station;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.stage.Silence;
import hobside.stage.Slotted;
import hobside.stage.Task;
import hobside.talk.Setting;
import java.util.ArrayList;
import java.util.List;

/** Draws the Clock: the lanes above, the tasks with their times below, and in sentences whether it fits. */
final class ClockView {

    private static final int TIME = 3;
    private static final int WHO = 11;
    private static final int WHAT = 21;

    private final ClockScreen clock;
    private final Frame frame;

    private ClockView(ClockScreen clock, Frame frame) {
        this.clock = clock;
        this.frame = frame;
    }

    static void draw(ClockScreen clock, Frame frame) {
        ClockView view = new ClockView(clock, frame);
        view.title();
        int lanes = LanesPane.rows(clock.order(), clock.setting().hall());
        LanesPane.draw(clock.order(), clock.setting().hall(), frame.part(new Area(2, 0, lanes, frame.width())), clock.here().map(Entry::key).orElse(""));
        List<String> foot = view.foot();
        int top = 2 + lanes;
        frame.horizontal(top, 0, frame.width() - 1);
        int bottom = frame.height() - 2 - foot.size();
        view.list(top + 1, bottom);
        view.put(bottom, foot);
        Keys.line(frame, List.of(ClockAction.values()));
    }

    private void title() {
        int slot = clock.order().outlook().slot();
        String time = clock.order().slots().isEmpty() ? "no order" : Verdict.clock(clock.order().seconds()) + (slot == 0 ? "" : " of " + Verdict.clock(slot));
        String right = time + " " + Glyphs.MIDDLE_DOT + " " + hall() + measured() + " " + Glyphs.MIDDLE_DOT + " Clock";
        frame.put(0, 1, Lines.fit(clock.demo().dish().name(), Math.max(1, frame.width() - right.length() - 4)), Style.TITLE);
        frame.putRight(0, frame.width() - 1, right, Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
    }

    private String measured() {
        return clock.runs() == 0 ? "" : " " + Glyphs.MIDDLE_DOT + " " + clock.runs() + (clock.runs() == 1 ? " run" : " runs");
    }

    private String hall() {
        Setting.Hall hall = clock.setting().hall();
        return hall.hobs() + (hall.hobs() == 1 ? " hob" : " hobs") + (hall.helper() ? ", helper" : ", alone");
    }

    private void list(int top, int bottom) {
        List<Entry> entries = clock.entries();
        int rows = bottom - top;
        int first = Lines.firstShown(clock.cursor(), entries.size(), rows);
        for (int i = 0; i < rows && first + i < entries.size(); i++) {
            row(frame.part(new Area(top + i, 0, 1, frame.width())), entries.get(first + i), first + i == clock.cursor());
        }
    }

    private void row(Frame line, Entry entry, boolean here) {
        int end = line.width() - 9;
        entry.ahead().ifPresent(item -> {
            line.put(0, TIME, "ahead", Style.STRONG);
            line.put(0, WHO, item.second() ? "2nd lot" : "", Style.QUIET);
            line.put(0, WHAT, Lines.fit(number(entry) + item.label(), end - WHAT), Style.PLAIN);
            line.putRight(0, line.width() - 1, item.minutes() + " min", Style.QUIET);
        });
        entry.slot().ifPresent(slot -> {
            line.putRight(0, TIME + 6, Verdict.clock(slot.start()), Style.STRONG);
            line.put(0, WHO, who(slot), Style.QUIET);
            line.put(0, WHAT, Lines.fit(number(entry) + how(slot) + slot.task().label(), end - WHAT), Style.PLAIN);
            line.putRight(0, line.width() - 1, Verdict.clock(slot.task().seconds()), Style.QUIET);
        });
        entry.silence().ifPresent(silence -> wait(line, silence));
        Cursor.mark(line, here);
    }

    private String how(Slotted slot) {
        boolean begun = slot.task().kind() == Task.Kind.HANDS && clock.order().ahead().swaps().contains(slot.task().key());
        return slot.task().kind() == Task.Kind.COOKS ? "it cooks: " : begun ? "begun, then the finished pot: " : "";
    }

    private static String number(Entry entry) {
        return entry.methodIndex().map(index -> (index + 1) + " ").orElse("");
    }

    private void wait(Frame line, Silence silence) {
        line.putRight(0, TIME + 6, Verdict.clock(silence.from()), Style.STRONG);
        line.put(0, WHO, "wait", silence.isLong() ? Style.WARN : Style.QUIET);
        int asked = silence.filled().size();
        String filled = asked == 0 ? "" : asked + (asked == 1 ? " prepared question" : " prepared questions") + " to put to people";
        String then = asked == 0 ? "" : ", then ";
        String left = silence.isLong() ? then + Verdict.clock(silence.left()) + " of silence" : silence.isOpen() ? then + "questions from the room" : asked == 0 ? "a breath" : "";
        line.put(0, WHAT, Lines.fit(filled + left, line.width() - 9 - WHAT), silence.isLong() ? Style.WARN : Style.PLAIN);
        line.putRight(0, line.width() - 1, Verdict.clock(silence.until() - silence.from()), Style.QUIET);
    }

    private static String who(Slotted slot) {
        Task.Load load = slot.task().load();
        String station = load.on() == Station.HOB ? "hob " + slot.lane() : load.on() == Station.OVEN ? "oven " + slot.lane() : "";
        return slot.task().kind() == Task.Kind.COOKS ? station.isEmpty() ? "by itself" : station : load.helper() ? "helper" : slot.task().kind() == Task.Kind.TALK ? "speak" : "hands";
    }

    private List<String> foot() {
        List<String> lines = new ArrayList<>();
        for (String sentence : Verdict.of(clock.order())) {
            lines.addAll(Lines.wrap(sentence, frame.width() - 2));
        }
        clock.sooner().ifPresent(plan -> lines.addAll(Lines.wrap("Told in another order it takes less time: press r.", frame.width() - 2)));
        List<String> shown = new ArrayList<>(lines.subList(0, Math.min(lines.size(), Math.max(2, frame.height() / 4))));
        shown.add(Lines.fit(clock.said().isEmpty() ? about() : clock.said(), frame.width() - 2));
        return shown;
    }

    private void put(int row, List<String> lines) {
        frame.horizontal(row, 0, frame.width() - 1);
        for (int i = 0; i < lines.size(); i++) {
            boolean last = i == lines.size() - 1;
            frame.put(row + 1 + i, 1, lines.get(i), last ? clock.said().isEmpty() ? Style.QUIET : Style.STRONG : clock.order().fits() ? Style.PLAIN : Style.WARN);
        }
    }

    /** What is known and wished of the task under the cursor. */
    private String about() {
        return clock.here().filter(entry -> !entry.key().isEmpty()).map(entry -> {
            Setting.Wanted wanted = clock.setting().of(entry.wishKey());
            List<String> said = new ArrayList<>();
            ClockUpdate.step(clock).ifPresent(step -> said.add(step(step)));
            said.add(wish(wanted.shown()));
            wanted.who().ifPresent(who -> said.add("by the " + who.word()));
            if (wanted.earliest() > 0) {
                said.add("not before " + wanted.earliest() + " min");
            }
            if (wanted.latest() > 0) {
                said.add("over by " + wanted.latest() + " min");
            }
            if (wanted.talkedOver()) {
                said.add("you speak meanwhile");
            }
            said.removeIf(String::isEmpty);
            return String.join(" " + Glyphs.MIDDLE_DOT + " ", said);
        }).orElse("");
    }

    private static String step(MethodStep step) {
        return step.stage().word() + ", " + step.on().word() + ", " + step.minutes() + " min, hands " + step.hands() + " of it" + (step.course().meanwhile() ? ", beside the step before" : "");
    }

    private static String wish(Setting.Shown shown) {
        return switch (shown) {
            case OPEN -> "";
            case WHOLE -> "all of it on stage, as you wish";
            case BEGUN -> "begun on stage, as you wish";
            case AHEAD -> "done ahead, as you wish";
        };
    }
}
