package hobside.screen;

import java.text.Normalizer;

/**
 * Counts text in the columns it takes on a screen, and makes any text safe to show.
 *
 * <p>Letters are put together with their accents; accents that stay apart and invisible marks are dropped; a control
 * character becomes a visible {@code ·}; a sign outside the basic plane, such as an emoji, becomes {@code ?}. Chinese,
 * Japanese and Korean signs take two columns. Source of the widths: Unicode Standard Annex 11, classes W and F.
 */
public final class TextWidth {
    /** First and last sign of each range that takes two columns. */
    private static final char[] WIDE = {
        '\u1100', '\u115f', '\u2e80', '\u303e', '\u3041', '\u33ff', '\u3400', '\u4dbf', '\u4e00', '\ua4cf', '\ua960',
        '\ua97c', '\uac00', '\ud7a3', '\uf900', '\ufaff', '\ufe10', '\ufe19', '\ufe30', '\ufe6b', '\uff01', '\uff60',
        '\uffe0', '\uffe6'
    };
    /** Little pictures that some terminals draw over two columns and some over one: never sent. */
    private static final String PICTURES = "\u2329\u232a"
            + "⌚⌛⏩⏪⏫⏬⏰⏳◽◾☔☕♈♉♊♋♌♍♎♏♐♑♒♓♿⚓⚡⚪⚫⚽⚾⛄⛅⛎⛔⛪⛲⛳⛵⛺⛽✅✊✋✨❌❎❓❔❕❗➕➖➗➰➿⬛⬜⭐⭕";

    private TextWidth() {}

    /** The columns the text takes once made safe. */
    public static int of(String text) {
        String safe = safe(text);
        int columns = 0;
        for (int i = 0; i < safe.length(); i++) {
            columns += of(safe.charAt(i));
        }
        return columns;
    }

    /** The columns one safe sign takes: 1, or 2 for a wide one. */
    public static int of(char sign) {
        if (sign < WIDE[0]) {
            return 1;
        }
        for (int i = 0; i < WIDE.length; i += 2) {
            if (sign >= WIDE[i] && sign <= WIDE[i + 1]) {
                return 2;
            }
        }
        return 1;
    }

    /** The text as it may go to a terminal: no controls, no loose accents, no surrogates. */
    public static String safe(String text) {
        if (isPlain(text)) {
            return text;
        }
        String whole = hasMarks(text) ? Normalizer.normalize(text, Normalizer.Form.NFC) : text;
        StringBuilder safe = new StringBuilder(whole.length());
        for (int i = 0; i < whole.length(); i += Character.charCount(whole.codePointAt(i))) {
            appendSafe(safe, whole.codePointAt(i));
        }
        return safe.toString();
    }

    /** The text cut to at most so many columns, ending in {@code …} when something was left out. */
    public static String cut(String text, int columns) {
        String safe = safe(text);
        if (of(safe) <= columns) {
            return safe;
        }
        return columns < 1 ? "" : head(safe, columns - 1) + Glyphs.ELLIPSIS;
    }

    /** The text cut or filled with spaces to exactly so many columns. */
    public static String pad(String text, int columns) {
        String cut = cut(text, columns);
        return cut + " ".repeat(Math.max(0, columns - of(cut)));
    }

    private static String head(String safe, int columns) {
        int end = 0;
        for (int room = columns; end < safe.length() && of(safe.charAt(end)) <= room; end++) {
            room -= of(safe.charAt(end));
        }
        return safe.substring(0, end);
    }

    /** The common case, answered without loading the tables of Unicode. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            boolean plain = sign >= ' ' && sign <= '~' || sign >= '\u2500' && sign <= '\u25bf';
            if (!plain) {
                return false;
            }
        }
        return true;
    }

    private static boolean hasMarks(String text) {
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign >= '\u0300' && (isMark(Character.getType(sign)) || of(sign) == 2)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isMark(int type) {
        return type == Character.NON_SPACING_MARK
                || type == Character.ENCLOSING_MARK
                || type == Character.COMBINING_SPACING_MARK;
    }

    private static void appendSafe(StringBuilder safe, int sign) {
        int type = Character.getType(sign);
        if (isMark(type) || type == Character.FORMAT) {
            return;
        }
        if (type == Character.CONTROL || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR) {
            safe.append(Glyphs.MIDDLE_DOT);
        } else {
            safe.append(isShown(sign, type) ? (char) sign : Glyphs.UNKNOWN);
        }
    }

    private static boolean isShown(int sign, int type) {
        return Character.isBmpCodePoint(sign)
                && type != Character.SURROGATE
                && type != Character.PRIVATE_USE
                && type != Character.UNASSIGNED
                && PICTURES.indexOf(sign) < 0;
    }
}
