package hobside.screen.talk;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.talk.Timing;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;

/** Draws the talk: its cues below their headings, the one under the cursor in full, and below what is known of it. */
final class TalkView {

    private static final int LABEL = 13;
    private static final int FOOT = 4;

    private final TalkScreen screen;
    private final Words words;
    private final Timing timing;
    private final Frame frame;

    private TalkView(TalkScreen screen, Frame frame) {
        this.screen = screen;
        this.words = screen.bench().desk().study().words(screen.script().language());
        this.timing = Timing.at(screen.script().pacing());
        this.frame = frame;
    }

    /** One line of the list: a heading, or a line of a cue. */
    private record Line(int cue, String label, String text, Style style) {}

    static void draw(TalkScreen screen, Frame frame) {
        TalkView view = new TalkView(screen, frame);
        view.title();
        view.list();
        view.foot();
        Keys.line(frame, List.of(TalkAction.values()));
    }

    private void title() {
        frame.put(0, 1, Lines.fit(screen.talk().title(), frame.width() / 2), Style.TITLE);
        frame.putRight(0, frame.width() - 1, time() + " " + Glyphs.MIDDLE_DOT + " " + words.language().name() + " " + Glyphs.MIDDLE_DOT + " Talk", Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
    }

    private String time() {
        int slot = screen.script().pacing().slot();
        int seconds = timing.seconds(screen.talk());
        String planned = clock(seconds) + " min";
        return slot == 0 ? planned : planned + " of " + slot + (seconds > slot * 60 ? ", too long" : "");
    }

    static String clock(int seconds) {
        return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        int cue = 0;
        for (Talk.Section section : screen.talk().sections()) {
            if (!lines.isEmpty()) {
                lines.add(new Line(-1, "", "", Style.PLAIN));
            }
            lines.add(new Line(-1, "", section.heading(), Style.HEADING));
            for (Cue each : section.cues()) {
                lines.addAll(cue(each, cue++));
            }
        }
        return lines;
    }

    private List<Line> cue(Cue cue, int index) {
        String label = words.say("talk.cue." + cue.kind().word()) + (screen.script().edit(cue.key()).isPresent() ? "*" : "");
        Style style = cue.kind() == Cue.Kind.TAKE_CARE ? Style.WARN : cue.details().must() ? Style.PLAIN : Style.QUIET;
        int width = frame.width() - LABEL - 4;
        if (index != screen.cursor()) {
            return List.of(new Line(index, label, Lines.fit(cue.words(), width), style));
        }
        List<Line> lines = new ArrayList<>();
        for (String text : Lines.wrap(cue.words(), width)) {
            lines.add(new Line(index, lines.isEmpty() ? label : "", text, style));
        }
        return lines;
    }

    private void list() {
        List<Line> lines = lines();
        int rows = frame.height() - 2 - FOOT;
        int first = firstShown(lines, rows);
        for (int row = 0; row < rows && first + row < lines.size(); row++) {
            put(frame.part(new Area(2 + row, 0, 1, frame.width())), lines.get(first + row));
        }
    }

    /** So that the cue under the cursor is seen whole, with a little of what comes before it. */
    private int firstShown(List<Line> lines, int rows) {
        int top = 0;
        int bottom = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).cue() == screen.cursor()) {
                bottom = i;
                top = lines.get(Math.max(0, i - 1)).cue() == screen.cursor() ? top : i;
            }
        }
        int wanted = Math.max(0, top - rows / 3);
        int least = Math.max(0, bottom - rows + 2);
        return Math.min(Math.max(wanted, least), Math.max(0, lines.size() - rows));
    }

    private void put(Frame line, Line shown) {
        if (shown.cue() < 0) {
            line.put(0, 1, shown.text(), shown.style());
            return;
        }
        boolean here = shown.cue() == screen.cursor();
        if (here && !shown.label().isEmpty()) {
            line.put(0, 1, String.valueOf(Glyphs.POINTER), Style.STRONG);
        }
        line.put(0, 3, shown.label(), here ? Style.STRONG : Style.KEY);
        line.put(0, LABEL + 2, shown.text(), here ? Style.STRONG : shown.style());
    }

    private void foot() {
        int row = frame.height() - FOOT;
        frame.horizontal(row, 0, frame.width() - 1);
        Cue cue = screen.cue();
        frame.put(row + 1, 1, Lines.fit(about(cue), frame.width() - 2), Style.QUIET);
        String waiting = waiting();
        String said = screen.said().isEmpty() ? needs(cue) + waiting : screen.said();
        frame.put(row + 2, 1, Lines.fit(said, frame.width() - 2), screen.said().isEmpty() ? Style.QUIET : Style.STRONG);
    }

    private String about(Cue cue) {
        String dot = " " + Glyphs.MIDDLE_DOT + " ";
        String hands = cue.details().seconds() == 0 ? "" : ", hands " + cue.details().seconds() + " s of it";
        String own = cue.isOwn() ? "your own" : screen.script().edit(cue.key()).isPresent() ? "edited by you" : "";
        return words.say("talk.who." + cue.details().who().word()) + dot + (cue.details().must() ? "must be kept" : "may be dropped") + dot
                + timing.seconds(cue) + " s" + hands + (own.isEmpty() ? "" : dot + own);
    }

    private String needs(Cue cue) {
        List<String> needs = new ArrayList<>(cue.details().needs().equipment());
        needs.addAll(cue.details().needs().props());
        return needs.isEmpty() ? "" : "at hand: " + String.join(", ", needs);
    }

    /** Edits whose cue is away are not lost. */
    private String waiting() {
        long waiting = screen.editing().waiting().size();
        return waiting == 0 ? "" : "   (" + waiting + (waiting == 1 ? " edit waits" : " edits wait") + " for a change that is out of the plan)";
    }
}
