package hobside.screen.terminal;

import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Size;
import hobside.screen.Style;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tells frames line by line, for a screen reader or a Braille line: no boxes, one fact a line. A new screen is told whole; of the
 * same screen only the lines that have changed, and a clock that goes on is not worth a line.
 */
final class Teller implements Easel {

    /** Frames are drawn so wide that the longest cue one can type stands on one line, and tall, so that lists are long. */
    static final Size SIZE = new Size(1_200, 50);

    /** Said where a text was cut all the same, so that half a sentence is not taken for a whole one. */
    static final String CUT = " ... cut ";

    private static final String HERE = "here: ";

    private static final int GAP = 2;
    private static final String END = "\r\n";

    /** With less than one line in four as before, it is another screen. */
    private static final int SAME = 4;

    private List<String> told = List.of();

    @Override
    public void forget() {
        told = List.of();
    }

    @Override
    public String paint(Frame frame) {
        List<String> lines = lines(frame);
        List<String> news = changed(told, lines);
        boolean fresh = news.size() * SAME > lines.size() * (SAME - 1);
        told = lines;
        StringBuilder out = new StringBuilder(fresh && !lines.isEmpty() ? END : "");
        for (String line : fresh ? lines : news) {
            out.append(line).append(END);
        }
        return out.toString();
    }

    /** The facts of a frame. Where it stands in two columns, the left one is told before the right one. */
    static List<String> lines(Frame frame) {
        List<String> all = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (int row = 0; row < frame.height(); row++) {
            int wall = wall(frame, row);
            if (wall < 0) {
                all.addAll(right);
                right.clear();
            }
            add(fact(frame, row, 0, wall < 0 ? frame.width() : wall), all);
            if (wall >= 0) {
                add(fact(frame, row, wall + 1, frame.width()), right);
            }
        }
        all.addAll(right);
        return all;
    }

    private static void add(String fact, List<String> facts) {
        if (!fact.isEmpty()) {
            facts.add(fact);
        }
    }

    /** The column of a line that parts two columns of text; -1 where there is none. */
    private static int wall(Frame frame, int row) {
        for (int column = 1; column < frame.width() - 1; column++) {
            if (frame.signAt(row, column) == Glyphs.VERTICAL) {
                return column;
            }
        }
        return -1;
    }

    /** One row as a fact: its cells with commas between, and a mark where the cursor stands. */
    private static String fact(Frame frame, int row, int from, int to) {
        StringBuilder fact = new StringBuilder();
        int blank = 0;
        boolean here = false;
        for (int column = from; column < to; column++) {
            char sign = frame.signAt(row, column);
            here |= frame.styleAt(row, column) == Style.CURSOR || sign == Glyphs.POINTER;
            String word = sign == Frame.REACHED_INTO ? "" : word(sign);
            if (word.isBlank()) {
                blank++;
            } else {
                fact.append(fact.length() == 0 ? "" : blank > GAP ? ", " : blank > 0 ? " " : "").append(word);
                blank = 0;
            }
        }
        return fact.length() == 0 ? "" : (here ? HERE : "") + fact.toString().replaceAll(" {2,}", " ").replace(" ,", ",").strip();
    }

    /** What a sign says; nothing for what is only drawn. */
    private static String word(char sign) {
        return switch (sign) {
            case Glyphs.FALLING -> "less by ";
            case Glyphs.RISING -> "more by ";
            case Glyphs.RIGHT -> " to ";
            case '\u2265' -> "at least ";
            case '\u2264' -> "at most ";
            case Glyphs.ABOUT -> "about ";
            case Glyphs.ELLIPSIS -> CUT;
            default -> isDrawn(sign) ? " " : String.valueOf(Glyphs.plain(sign));
        };
    }

    /** Lines, boxes, bars and shades, and the signs that only point. */
    private static boolean isDrawn(char sign) {
        return sign >= '\u2500' && sign <= '\u259f' || sign == Glyphs.POINTER || sign == Glyphs.MIDDLE_DOT || sign == Glyphs.BULLET;
    }

    /** The lines that were not there before, in their order. A row that the cursor has only left is no news. */
    private static List<String> changed(List<String> before, List<String> after) {
        Map<String, Integer> known = new HashMap<>();
        for (String line : before) {
            known.merge(still(line), 1, Integer::sum);
        }
        List<String> news = new ArrayList<>();
        for (String line : after) {
            if (!taken(known, still(line)) && !taken(known, HERE + still(line))) {
                news.add(line);
            }
        }
        return news;
    }

    /** Takes a line out of those known; false when it is not among them. */
    private static boolean taken(Map<String, Integer> known, String line) {
        int times = known.getOrDefault(line, 0);
        if (times > 0) {
            known.put(line, times - 1);
        }
        return times > 0;
    }

    /** A line with its times taken out: a clock that goes on changes nothing. */
    private static String still(String line) {
        return line.replaceAll("\\d+:\\d\\d", "#");
    }
}
