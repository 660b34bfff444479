package hobside.screen.asked;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.stage.whatif.AnswerIndex;
import java.util.List;

/** Draws the question being typed, the prepared questions that fit, and the answer of the one under the cursor, large enough for two metres. */
final class AskedView {

    private static final int LIST = 4;
    private static final int TOP = 3;
    private static final int MARGIN = 4;

    private AskedView() {}

    static void draw(AskedScreen screen, Frame frame) {
        frame.put(0, 1, "Asked", Style.TITLE);
        frame.put(0, 8, Lines.fit("type a few words of the question, in any language we have", frame.width() - 9), Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        screen.typing().draw(frame, 2, 1, frame.width() - 2);
        list(screen, frame.part(new Area(TOP, 0, LIST, frame.width())));
        frame.horizontal(TOP + LIST, 0, frame.width() - 1);
        Frame below = frame.part(new Area(TOP + LIST + 1, 0, frame.height() - TOP - LIST - 2, frame.width()));
        if (screen.hits().isEmpty()) {
            nothing(below);
        } else {
            answer(screen, below);
        }
    }

    private static void list(AskedScreen screen, Frame frame) {
        List<AnswerIndex.Hit> hits = screen.hits();
        int first = Lines.firstShown(screen.cursor(), hits.size(), frame.height());
        for (int i = 0; i < frame.height() && first + i < hits.size(); i++) {
            Frame line = frame.part(new Area(i, 0, 1, frame.width()));
            line.put(0, 3, Lines.fit(hits.get(first + i).prepared().question(), frame.width() - 5), Style.PLAIN);
            Cursor.mark(line, first + i == screen.cursor());
        }
    }

    private static void answer(AskedScreen screen, Frame frame) {
        AnswerIndex.Hit hit = screen.hits().get(screen.cursor());
        boolean sure = screen.typing().text().isBlank() || hit.fits();
        frame.put(0, 1, sure ? "Prepared answer" : "Perhaps this was meant; if not, Ctrl-n notes the question", sure ? Style.HEADING : Style.WARN);
        List<String> lines = Lines.wrap(hit.prepared().answer(), frame.width() - 2 * MARGIN);
        int room = frame.height() - 2;
        int step = lines.size() * 2 - 1 <= room ? 2 : 1;
        for (int i = 0; i < lines.size() && i * step < room; i++) {
            boolean cut = (i + 1) * step >= room && i + 1 < lines.size();
            frame.put(2 + i * step, MARGIN, cut ? Lines.fit(lines.get(i) + Glyphs.ELLIPSIS, frame.width() - 2 * MARGIN) : lines.get(i), Style.STRONG);
        }
    }

    private static void nothing(Frame frame) {
        int row = 1;
        for (String line : Lines.wrap("Nothing that was prepared fits that. It is a good question all the same: say that you will find out.", frame.width() - 2 * MARGIN)) {
            frame.put(row++, MARGIN, line, Style.STRONG);
        }
        for (String line : Lines.wrap("Enter or Ctrl-n notes it in these words, to be answered later. Escape goes back to your place.", frame.width() - 2 * MARGIN)) {
            frame.put(++row, MARGIN, line, Style.PLAIN);
        }
    }
}
