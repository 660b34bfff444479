package hobside.screen;

import java.text.Normalizer;

/**
 * The signs Hobside draws with, and the plain letter each becomes on a terminal that knows only ASCII. Every sign takes
 * one column before and after, so that columns stay aligned. What is cut never ends in a full stop: it would sound whole.
 */
public final class Glyphs {
    public static final char HORIZONTAL = '─';
    public static final char VERTICAL = '│';
    public static final char BLOCK = '█';
    public static final char UPPER_HALF = '▀';
    public static final char LOWER_HALF = '▄';
    public static final char SHADE = '░';
    public static final char LEFT = '←';
    public static final char UP = '↑';
    public static final char RIGHT = '→';
    public static final char DOWN = '↓';
    public static final char RISING = '▲';
    public static final char FALLING = '▼';
    public static final char POINTER = '►';
    public static final char BULLET = '•';
    public static final char MIDDLE_DOT = '·';
    public static final char MINUS = '−';
    public static final char TIMES = '×';
    public static final char ABOUT = '≈';
    public static final char ELLIPSIS = '…';
    public static final char TICK = '✓';
    /** What stands in for a sign that cannot be shown. */
    public static final char UNKNOWN = '?';

    /** Widths of a bar's last cell, from one eighth to seven eighths. */
    private static final String EIGHTHS = "▏▎▍▌▋▊▉";
    /** Sign and look-alike in turn. */
    private static final String LOOK_ALIKES = ""
            + "─-│|┌+┐+└+┘+├+┤+┬+┴+┼+"
            + "█#▀\"▄_░:▒%▓%▏:▎:▍|▌|▋|▊#▉#"
            + "←<↑^→>↓v▲^▼v►>◄<•*·.−-×x÷/≈~≤<≥>±~…~"
            + "✓v✗x‘'’'“\"”\"–-—-‑-§S°o£L€E¢cßs\u00a0 "
            + "æaÆAøoØOłlŁLðdÐDþtÞT«<»>¡!′'●*○o■#□o◆*";

    private Glyphs() {}

    /** The ASCII letter for a sign: itself, its look-alike, its letter without the accent, or {@link #UNKNOWN}. */
    public static char plain(char sign) {
        if (sign >= ' ' && sign <= '~') {
            return sign;
        }
        for (int i = 0; i < LOOK_ALIKES.length(); i += 2) {
            if (LOOK_ALIKES.charAt(i) == sign) {
                return LOOK_ALIKES.charAt(i + 1);
            }
        }
        return withoutAccent(sign);
    }

    /** A bar of blocks, an eighth of a cell fine; {@code eighths} from 0. It takes one column for each eight begun. */
    public static String bar(int eighths) {
        String whole = String.valueOf(BLOCK).repeat(Math.max(0, eighths) / 8);
        int rest = Math.max(0, eighths) % 8;
        return rest == 0 ? whole : whole + EIGHTHS.charAt(rest - 1);
    }

    private static char withoutAccent(char sign) {
        char first = Normalizer.normalize(String.valueOf(sign), Normalizer.Form.NFD).charAt(0);
        return first >= ' ' && first <= '~' ? first : UNKNOWN;
    }
}
