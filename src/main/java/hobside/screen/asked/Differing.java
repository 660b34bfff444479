package hobside.screen.asked;

import hobside.screen.Glyphs;
import hobside.screen.Lines;

/** Two texts, each cut to a width so that the place where they begin to differ is seen. */
record Differing(String before, String after) {

    /** Letters that are kept in front of the first difference, to see where it is. */
    private static final int LEAD = 12;

    static Differing of(String before, String after, int width) {
        int same = 0;
        while (same < Math.min(before.length(), after.length()) && before.charAt(same) == after.charAt(same)) {
            same++;
        }
        int from = Math.max(before.length(), after.length()) <= width ? 0 : word(before, Math.max(0, same - LEAD));
        return new Differing(cut(before, from, width), cut(after, from, width));
    }

    /** The beginning of the word at a place. */
    private static int word(String text, int at) {
        int space = text.lastIndexOf(' ', at);
        return space < 0 ? 0 : space + 1;
    }

    private static String cut(String text, int from, int width) {
        return from == 0 ? Lines.fit(text, width) : Lines.fit(Glyphs.ELLIPSIS + text.substring(Math.min(from, text.length())), width);
    }
}
