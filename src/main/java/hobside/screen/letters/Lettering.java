package hobside.screen.letters;

import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * A text in large letters, broken at words: about twenty letters to a line of 80 columns. Each line is three rows high, drawn with half
 * blocks; on a terminal that knows only ASCII it is five rows of #, and six where a letter bears an accent.
 */
public final class Lettering {

    private static final int HALVES = 2;
    private static final int MOST_LINES = 5;

    private final List<String> lines;
    private final boolean plain;

    private Lettering(List<String> lines, boolean plain) {
        this.lines = lines;
        this.plain = plain;
    }

    /** The text in lines no wider than this; {@code plain} for ASCII alone. A single word that is wider gets a line of its own. */
    public static Lettering of(String text, int width, boolean plain) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Font.spelt(text).split("\\s+")) {
            if (line.length() > 0 && dots(line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return new Lettering(lines, plain);
    }

    /** Whether there is a letter for every sign of the text, and room for all of it. */
    public static boolean fits(String text, int width, int rows, boolean plain) {
        Lettering set = of(text, width, plain);
        return set.isComplete() && set.width() <= width && set.height() <= rows;
    }

    /** Whether it fits and stays calm: two lines at most, or a few with a row left free between them; a wall of letters is hard to read. */
    public static boolean isCalm(String text, int width, int rows, boolean plain) {
        Lettering set = of(text, width, plain);
        int count = set.lines.size();
        boolean airy = count <= 2 || count <= MOST_LINES && set.height() + count - 1 <= rows;
        return airy && fits(text, width, rows, plain);
    }

    private boolean isComplete() {
        return lines.stream().allMatch(line -> line.chars().allMatch(sign -> Font.shape((char) sign).isPresent()));
    }

    /** How many columns a text takes on one line. */
    public static int width(String text) {
        return dots(Font.spelt(text));
    }

    private static int dots(String spelt) {
        int wide = 0;
        for (int i = 0; i < spelt.length(); i++) {
            wide += Font.shape(spelt.charAt(i)).map(shape -> shape[0].length() + 1).orElse(1);
        }
        return Math.max(0, wide - 1);
    }

    public int width() {
        return lines.stream().mapToInt(Lettering::dots).max().orElse(0);
    }

    /** How many rows it takes, the lines close together. */
    public int height() {
        return lines.stream().mapToInt(this::rows).sum() + (plain ? lines.size() - 1 : 0);
    }

    private int rows(String line) {
        return plain ? Font.ALL - top(line) : Font.ALL / HALVES;
    }

    /** The first row of dots that is drawn in plain signs: the row of the accents only where there are some. */
    private static int top(String line) {
        boolean accents = line.chars().anyMatch(sign -> Font.shape((char) sign).map(shape -> shape[0].contains("#")).orElse(false));
        return accents ? 0 : 1;
    }

    /** Draws it with its left upper corner there, a row left free between the lines where there are rows enough. */
    public void draw(Frame frame, int row, int column, int rows, Style style) {
        int gap = (plain ? 1 : 0) + (height() + lines.size() - 1 <= rows ? 1 : 0);
        int at = row;
        for (String line : lines) {
            draw(frame, at, column, line, style);
            at += rows(line) + gap;
        }
    }

    private void draw(Frame frame, int row, int column, String line, Style style) {
        int at = column;
        for (int i = 0; i < line.length(); i++) {
            String[] shape = Font.shape(line.charAt(i)).orElse(new String[0]);
            if (shape.length > 0) {
                letter(frame, new Spot(row, at), plain ? hashes(shape, top(line)) : blocks(shape), style);
                at += shape[0].length();
            }
            at++;
        }
    }

    private record Spot(int row, int column) {}

    private static void letter(Frame frame, Spot spot, List<String> rows, Style style) {
        for (int y = 0; y < rows.size(); y++) {
            frame.put(spot.row() + y, spot.column(), rows.get(y), style);
        }
    }

    private static List<String> hashes(String[] shape, int top) {
        List<String> rows = new ArrayList<>();
        for (int y = top; y < shape.length; y++) {
            rows.add(shape[y].replace('.', ' '));
        }
        return rows;
    }

    /** Two rows of dots in each row of signs. */
    private static List<String> blocks(String[] shape) {
        List<String> rows = new ArrayList<>();
        for (int y = 0; y < shape.length; y += HALVES) {
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < shape[y].length(); x++) {
                row.append(block(shape[y].charAt(x) == '#', shape[y + 1].charAt(x) == '#'));
            }
            rows.add(row.toString());
        }
        return rows;
    }

    private static char block(boolean upper, boolean lower) {
        if (upper) {
            return lower ? Glyphs.BLOCK : Glyphs.UPPER_HALF;
        }
        return lower ? Glyphs.LOWER_HALF : ' ';
    }
}
