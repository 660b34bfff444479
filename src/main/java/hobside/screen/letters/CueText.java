package hobside.screen.letters;

import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import java.util.List;

/**
 * The words of a cue as large as the room allows: in large letters; else in strong letters with a blank line between the lines; else
 * without the blank lines; and what is still too long is scrolled.
 */
public final class CueText {

    /** Longer lines are lost by an eye that comes back from the audience. */
    private static final int WIDEST = 64;

    private final Frame room;
    private final String words;

    private CueText(Frame room, String words) {
        this.room = room;
        this.words = words;
    }

    /** How it can be shown. */
    private enum Look {
        LARGE,
        SPACED,
        CLOSE,
        /** Close, on lines as long as there is room for; what is told is one line. */
        FULL
    }

    /** Draws the words into the whole of a frame, from a line of them on when they are too long for it. */
    public static void draw(Frame room, String words, int from) {
        new CueText(room, words).draw(from);
    }

    /** How far the words can be scrolled in a frame of this size: 0 when they are seen whole. */
    public static int hidden(Frame room, String words) {
        CueText text = new CueText(room, words);
        return text.look() == Look.FULL ? Math.max(0, text.lines(Look.FULL).size() - room.height()) : 0;
    }

    private Look look() {
        if (room.isTold()) {
            return Look.FULL;
        }
        if (Lettering.isCalm(words, room.width(), room.height(), room.isPlain())) {
            return Look.LARGE;
        }
        int narrow = lines(Look.CLOSE).size();
        if (2 * narrow - 1 <= room.height()) {
            return Look.SPACED;
        }
        return narrow <= room.height() ? Look.CLOSE : Look.FULL;
    }

    private List<String> lines(Look look) {
        return Lines.wrap(words, look == Look.FULL ? room.width() : Math.min(WIDEST, room.width()));
    }

    private void draw(int from) {
        Look look = look();
        if (look == Look.LARGE) {
            Lettering.of(words, room.width(), room.isPlain()).draw(room, 0, 0, room.height(), Style.STRONG);
            return;
        }
        List<String> lines = lines(look);
        int pitch = look == Look.SPACED ? 2 : 1;
        int first = Math.max(0, Math.min(from, hidden(room, words)));
        for (int row = 0; row * pitch < room.height() && first + row < lines.size(); row++) {
            room.put(row * pitch, 0, lines.get(first + row), Style.STRONG);
        }
        if (first < hidden(room, words)) {
            room.put(room.height() - 1, room.width() - 1, String.valueOf(Glyphs.DOWN), Style.KEY);
        }
    }
}
