package hobside.screen.rehearse;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Style;
import hobside.screen.live.CueFace;
import hobside.screen.live.Minutes;
import hobside.screen.live.Playing;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Standing;
import hobside.talk.Cue;
import java.util.ArrayList;
import java.util.List;

/** Draws the Rehearse screen: the cue above, below it what was planned and what is taken, for the cue and for the talk. */
final class RehearseView {

    private static final int MARGIN = 2;
    private static final int LOWER_ROWS = 8;
    private static final int BAR = 28;

    private final RehearseScreen screen;
    private final Playing playing;
    private final Standing standing;
    private final Frame frame;
    private final CueFace face;

    private RehearseView(RehearseScreen screen, Frame frame) {
        this.screen = screen;
        this.playing = screen.playing();
        this.standing = playing.standing();
        this.frame = frame;
        this.face = new CueFace(playing, frame);
    }

    static void draw(RehearseScreen screen, Frame frame) {
        RehearseView view = new RehearseView(screen, frame);
        view.face.title();
        view.cue();
        view.lower();
        Keys.line(frame, List.of(RehearseAction.values()));
    }

    private int rule() {
        return frame.height() - LOWER_ROWS;
    }

    private void cue() {
        if (playing.cue().isPresent()) {
            Cue cue = playing.cue().get();
            face.kind(cue, standing.isPaused() ? "Paused: the clock stands. p goes on." : screen.said());
            face.words(cue, rule(), screen.scroll());
            return;
        }
        CueFace.large(frame.part(new Area(2, MARGIN, 3, frame.width() - MARGIN)), "THE END", Style.BOARD);
        frame.put(CueFace.WORDS, MARGIN, "Everything has been told. Enter ends the run and shows its report;", Style.STRONG);
        frame.put(CueFace.WORDS + 1, MARGIN, "Left goes back to the last cue.", Style.STRONG);
    }

    private void lower() {
        long now = playing.now();
        frame.horizontal(rule(), 0, frame.width() - 1);
        long planned = standing.cue().map(playing::planned).orElse(0L);
        long here = standing.cue().isPresent() ? standing.onCue(now) : 0;
        long all = playing.planned();
        pair(rule() + 1, "this cue", new Pair(planned, here, Math.max(planned, here)));
        pair(rule() + 3, "the talk", new Pair(standing.elapsed(now) - standing.behind(now), standing.elapsed(now), Math.max(all, standing.elapsed(now))));
        frame.put(rule() + 5, MARGIN, marks(), Style.STRONG);
        List<Cue> coming = playing.toCome();
        if (coming.size() > 1) {
            face.line(frame.height() - 2, "next:", coming.get(1));
        } else if (!coming.isEmpty()) {
            frame.put(frame.height() - 2, MARGIN, "next: this is the last cue", Style.QUIET);
        }
    }

    /** What was planned by now and what was taken, in milliseconds, and how much a full bar is. */
    private record Pair(long planned, long taken, long full) {}

    private void pair(int row, String label, Pair pair) {
        frame.put(row, MARGIN, label, Style.STRONG);
        bar(row, "planned", pair.planned(), pair.full());
        bar(row + 1, "taken", pair.taken(), pair.full());
        int room = room();
        boolean over = pair.taken() > pair.planned();
        int eighths = pair.full() == 0 ? 0 : (int) (pair.planned() * room * 8 / pair.full());
        frame.put(row, BAR, String.valueOf(Glyphs.SHADE).repeat(Math.max(0, eighths) / 8), Style.QUIET);
        int taken = pair.full() == 0 ? 0 : (int) (pair.taken() * room * 8 / pair.full());
        frame.put(row + 1, BAR, Glyphs.bar(taken), over ? Style.WARN : Style.BOARD);
    }

    private int room() {
        return frame.width() - BAR - MARGIN;
    }

    private void bar(int row, String label, long time, long full) {
        frame.put(row, MARGIN + 10, label, Style.QUIET);
        frame.putRight(row, BAR - 2, Minutes.of(time), full == 0 ? Style.QUIET : Style.STRONG);
    }

    /** What was marked at this cue in this run. */
    private String marks() {
        String cue = standing.cue().orElse("");
        List<String> marks = new ArrayList<>();
        count(cue, What.STUMBLED, "stumbled", marks);
        count(cue, What.TOO_LONG, "too long", marks);
        count(cue, What.NOTE, "noted", marks);
        return marks.isEmpty() ? "" : "marked here: " + String.join(", ", marks);
    }

    private void count(String cue, What what, String word, List<String> marks) {
        int times = 0;
        for (Happening happening : playing.run().happenings()) {
            times += happening.what() == what && happening.cue().equals(cue) ? 1 : 0;
        }
        if (times > 0) {
            marks.add(times == 1 ? word : word + " " + times + " times");
        }
    }
}
