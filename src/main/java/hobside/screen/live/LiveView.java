package hobside.screen.live;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.board.BigDigits;
import hobside.talk.Cue;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;

/** Draws the Live screen: the cue above, the running board and the clock below, then what has to be watched and what comes next. */
final class LiveView {

    private static final int MARGIN = 2;
    private static final int FULL_HEIGHT = 24;
    private static final int TALL = 36;
    private static final int SHORT_DIGITS = 3;

    private final LiveScreen screen;
    private final Playing playing;
    private final Frame frame;
    private final CueFace face;

    private LiveView(LiveScreen screen, Frame frame) {
        this.screen = screen;
        this.playing = screen.playing();
        this.frame = frame;
        this.face = new CueFace(playing, frame);
    }

    static void draw(LiveScreen screen, Frame frame) {
        LiveView view = new LiveView(screen, frame);
        view.face.title();
        view.cue();
        frame.horizontal(view.rule(), 0, frame.width() - 1);
        view.figures();
        view.cares();
        view.ahead();
        Keys.line(frame, List.of(LiveAction.values()));
    }

    private int digits() {
        return frame.height() >= FULL_HEIGHT ? BigDigits.HEIGHT : SHORT_DIGITS;
    }

    /** How many of the cues to come are shown. */
    private int shown() {
        return frame.height() >= TALL ? 4 : 1;
    }

    private int next() {
        return frame.height() - 2 - shown();
    }

    private int care() {
        return frame.height() >= FULL_HEIGHT ? next() - 1 : rule();
    }

    private int top() {
        return (frame.height() >= FULL_HEIGHT ? next() - 1 : next()) - digits();
    }

    private int rule() {
        return top() - 1;
    }

    private void cue() {
        if (playing.cue().isPresent()) {
            Cue cue = playing.cue().get();
            face.kind(cue, playing.standing().isPaused() ? "Paused. p goes on." : screen.said());
            face.words(cue, rule(), screen.scroll());
            return;
        }
        CueFace.large(frame.part(new Area(2, MARGIN, SHORT_DIGITS, frame.width() - MARGIN)), "THE END", Style.BOARD);
        frame.put(CueFace.WORDS, MARGIN, "Everything has been told. Enter ends the run and shows how it went;", Style.STRONG);
        frame.put(CueFace.WORDS + 1, MARGIN, "Left goes back to the last cue.", Style.STRONG);
    }

    private void figures() {
        Frame rows = frame.part(new Area(top(), 0, digits(), frame.width()));
        int end = board(rows);
        String time = Minutes.of(playing.standing().elapsed(playing.now()));
        boolean fits = end + Figures.width(rows, time) + MARGIN < frame.width();
        Frame room = fits ? rows : frame.part(new Area(top(), 0, SHORT_DIGITS, frame.width()));
        Figures.draw(room, frame.width() - 1 - Figures.width(room, time), time);
    }

    /** The saturated fat of a serve after the changes told so far, what it was, and how far it has moved. */
    private int board(Frame rows) {
        Comparison whole = new Comparison(playing.ledger().start(), playing.board());
        var figure = whole.after().of(Nutrient.FASAT, Basis.SERVE);
        int at = Figures.draw(rows, MARGIN, Written.number(figure.typical())) + 2;
        String unit = figure.atLeast() ? "g at least" : "g";
        String moved = Written.moved(Nutrient.FASAT, whole.saved(Nutrient.FASAT, Basis.SERVE).range());
        boolean same = !Written.isMovement(moved);
        List<String> lines = new ArrayList<>(List.of(unit + " saturated fat", "a serve",
                same ? "as it is cooked here" : "was " + Written.number(whole.before().of(Nutrient.FASAT, Basis.SERVE).typical()) + " g"));
        int row = rows.height() >= BigDigits.HEIGHT ? 0 : -1;
        if (rows.height() < BigDigits.HEIGHT) {
            lines.set(1, unit + " saturated fat a serve");
        }
        for (String line : lines) {
            rows.put(row++, at, line, Style.STRONG);
        }
        if (!same) {
            boolean less = moved.charAt(0) == Glyphs.FALLING;
            rows.put(row, at, moved.substring(2) + (less ? " less" : " more"), less ? Style.GOOD : Style.WARN);
        }
        return at + lines.stream().mapToInt(TextWidth::of).max().orElse(0);
    }

    private void cares() {
        List<String> lines = screen.cares();
        if (!lines.isEmpty()) {
            String more = lines.size() > 1 ? "  c: seen to, " + (lines.size() - 1) + " more" : "  c: seen to";
            frame.put(care(), 0, " ".repeat(frame.width()));
            int at = frame.put(care(), MARGIN, Lines.fit("! " + lines.get(0), frame.width() - 2 * MARGIN - TextWidth.of(more)), Style.WARN);
            frame.put(care(), at, more, Style.KEY);
        }
    }

    private void ahead() {
        List<Cue> coming = playing.toCome();
        for (int i = 1; i <= shown(); i++) {
            if (i < coming.size()) {
                face.line(next() + i - 1, i == 1 ? "next:  " : "       ", coming.get(i));
            } else if (i == 1) {
                frame.put(next(), MARGIN, playing.cue().isPresent() ? "next:   this is the last cue" : "", Style.QUIET);
            }
        }
        helper(frame.height() - 2, coming);
    }

    private void helper(int row, List<Cue> coming) {
        for (int i = 1; i < coming.size(); i++) {
            if (coming.get(i).details().who() == Cue.Who.HELPER) {
                face.line(row, "helper: " + (i == 1 ? "next," : "in " + i + " cues,"), coming.get(i));
                return;
            }
        }
        boolean helped = playing.bench().demo().setting().hall().helper();
        frame.put(row, MARGIN, helped ? "helper: nothing more to do" : "", Style.QUIET);
    }
}
