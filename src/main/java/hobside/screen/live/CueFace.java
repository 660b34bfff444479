package hobside.screen.live;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.letters.CueText;
import hobside.screen.letters.Lettering;
import hobside.talk.Cue;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What stands at the top while a talk is run, before an audience or not: where one is, the kind of the cue, and its words. */
public final class CueFace {

    /** The row where the words of the cue begin. */
    public static final int WORDS = 6;

    private static final int KIND = 2;
    private static final int KIND_ROWS = 3;
    private static final int MARGIN = 2;

    private final Playing playing;
    private final Frame frame;
    private final Words words;

    public CueFace(Playing playing, Frame frame) {
        this.playing = playing;
        this.frame = frame;
        this.words = playing.bench().desk().study().words(playing.bench().demo().script().language());
    }

    /** The first row: what is cooked, where one is in it, and the time. */
    public void title() {
        long now = playing.now();
        String behind = playing.isTooLong() ? Minutes.of(playing.over()) + " too long" : Minutes.standing(playing.standing().behind(now));
        String time = behind + "  " + Minutes.of(playing.standing().elapsed(now)) + " of " + Minutes.of(playing.allowed());
        int end = frame.width() - 1;
        frame.putRight(0, end, time, Style.STRONG);
        String number = playing.cue().isPresent() ? "cue " + playing.number() + " of " + playing.size() : "the end";
        int room = end - TextWidth.of(time) - 3;
        String where = " " + Glyphs.MIDDLE_DOT + " " + number;
        frame.put(0, 1, Lines.fit(heading(), room - TextWidth.of(where)) + where, Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
    }

    /** The dish and the part of the talk; where there is little room, the part alone. */
    private String heading() {
        String dish = playing.bench().demo().dish().name();
        String part = playing.cue().map(cue -> playing.section(cue).heading()).orElse("");
        return part.isEmpty() ? dish : frame.width() < 100 ? part : dish + " " + Glyphs.MIDDLE_DOT + " " + part;
    }

    /** The kind of the cue in large letters, and beside it who does it and what is said to the presenter. */
    public void kind(Cue cue, String said) {
        Frame rows = frame.part(new Area(KIND, MARGIN, KIND_ROWS, frame.width() - 2 * MARGIN));
        int at = large(rows, word(cue), cue.kind() == Cue.Kind.TAKE_CARE ? Style.WARN : Style.BOARD) + 3;
        rows.put(0, at, Lines.fit(who(cue), rows.width() - at), Style.QUIET);
        List<String> beside = Lines.wrap(said.isEmpty() ? needs(cue) : said, rows.width() - at);
        Style style = said.isEmpty() ? Style.QUIET : Style.STRONG;
        if (beside.size() >= KIND_ROWS) {
            frame.put(KIND + KIND_ROWS, MARGIN, Lines.fit(said.isEmpty() ? needs(cue) : said, frame.width() - 2 * MARGIN), style);
            return;
        }
        for (int i = 0; i < beside.size(); i++) {
            rows.put(i + 1, at, beside.get(i), style);
        }
    }

    /** A word in large letters; in ASCII in a box, which takes no more room. Returns the column after it. */
    public static int large(Frame rows, String word, Style style) {
        if (!rows.isPlain()) {
            Lettering.of(word, rows.width(), false).draw(rows, 0, 0, KIND_ROWS, style);
            return Lettering.width(word);
        }
        if (rows.isTold()) {
            return rows.put(0, 0, word, style);
        }
        String wide = String.join(" ", word.split(""));
        rows.box(new Area(0, 0, KIND_ROWS, wide.length() + 6));
        rows.put(1, 3, wide, style);
        return wide.length() + 6;
    }

    /** "SAY"; a caution has a sign of its own, so that it does not hang on colour. */
    private String word(Cue cue) {
        String word = words.say("talk.cue." + cue.kind().word()).toUpperCase(Locale.ROOT);
        return cue.kind() == Cue.Kind.TAKE_CARE ? "! " + word : word;
    }

    private String who(Cue cue) {
        List<String> parts = new ArrayList<>();
        if (cue.details().who() == Cue.Who.HELPER) {
            parts.add("the helper does this");
        }
        parts.add(cue.details().must() ? Minutes.of(playing.planned(cue.key())) + " planned" : Minutes.of(playing.planned(cue.key())) + " planned, may be dropped");
        return String.join(", ", parts);
    }

    private static String needs(Cue cue) {
        List<String> needs = new ArrayList<>(cue.details().needs().equipment());
        needs.addAll(cue.details().needs().props());
        return needs.isEmpty() ? "" : "at hand: " + String.join(", ", needs);
    }

    /** The words of the cue, down to a row. */
    public void words(Cue cue, int bottom, int from) {
        CueText.draw(room(bottom), cue.words(), from);
    }

    private Frame room(int bottom) {
        return frame.part(new Area(WORDS, MARGIN, bottom - WORDS, frame.width() - 2 * MARGIN));
    }

    /** One line about another cue: a label, its kind and its words. */
    public void line(int row, String label, Cue cue) {
        int at = frame.put(row, MARGIN, label, Style.QUIET) + 1;
        String kind = word(cue);
        at = frame.put(row, at, kind, cue.kind() == Cue.Kind.TAKE_CARE ? Style.WARN : Style.STRONG) + 1;
        frame.put(row, at, Lines.fit(cue.words(), frame.width() - at - 1), Style.PLAIN);
    }
}
