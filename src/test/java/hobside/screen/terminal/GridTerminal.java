package hobside.screen.terminal;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;

/**
 * A terminal that follows exactly what we may send and fails at anything else: a judge that shares no code with the painter.
 * Sources: ECMA-48 (CUP, ED, SGR), DEC's VT100 user guide (DECCKM 1, DECAWM 7), VT220 manual (DECTCEM 25), xterm's control
 * sequences (1049, 2004). Widths by script and by Unicode's blocks of pictures, as wcwidth has them.
 */
final class GridTerminal {
    private static final String BLANK = " ";
    /** The right half of a wide sign. */
    private static final String HALF = "";

    private final boolean second;
    private final Set<String> modes = new TreeSet<>();
    private final Set<String> looks = new TreeSet<>();
    private final StringBuilder pending = new StringBuilder();
    private Picture picture;
    private Picture below;
    private boolean wraps = true;
    private boolean caret = true;
    private String look = "";
    private int enteredSecond;

    /** The cells of one of the two screens, and where the cursor stands on it. */
    private static final class Picture {
        String[][] signs;
        String[][] looks;
        int row;
        int column;

        Picture(int width, int height) {
            signs = filled(width, height, BLANK);
            looks = filled(width, height, "");
        }

        void resize(int width, int height) {
            Picture next = new Picture(width, height);
            for (int line = 0; line < Math.min(height, signs.length); line++) {
                int kept = Math.min(width, signs[line].length);
                System.arraycopy(signs[line], 0, next.signs[line], 0, kept);
                System.arraycopy(looks[line], 0, next.looks[line], 0, kept);
            }
            signs = next.signs;
            looks = next.looks;
            row = Math.min(row, height - 1);
            column = Math.min(column, width - 1);
        }

        private static String[][] filled(int width, int height, String with) {
            String[][] cells = new String[height][width];
            for (String[] line : cells) {
                Arrays.fill(line, with);
            }
            return cells;
        }
    }

    GridTerminal(int width, int height) {
        this(width, height, true);
    }

    /** {@code second}: whether it has a second screen, which the Linux console and the vt100 do not. */
    GridTerminal(int width, int height, boolean second) {
        this.second = second;
        picture = new Picture(width, height);
        below = new Picture(width, height);
    }

    /** The window gets another size: what lies beyond the new edge is lost, new room is empty. */
    void resize(int width, int height) {
        picture.resize(width, height);
        below.resize(width, height);
    }

    /** Takes what was sent; a sequence may be torn anywhere. */
    void take(String sent) {
        pending.append(sent);
        int at = 0;
        while (at < pending.length()) {
            int end = pending.charAt(at) == '\033' ? sequence(at) : sign(at);
            if (end < 0) {
                break;
            }
            at = end;
        }
        pending.delete(0, at);
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (String[] line : picture.signs) {
            text.append(String.join("", line).stripTrailing()).append('\n');
        }
        return text.toString();
    }

    /** Text and looks of every cell: two pictures that look alike are equal. */
    String everything() {
        StringBuilder all = new StringBuilder(text());
        for (String[] line : picture.looks) {
            all.append(String.join("|", line)).append('\n');
        }
        return all.append(caret ? "caret " + picture.row + " " + picture.column : "no caret").toString();
    }

    /** The columns at which a sign stands in a row. */
    String row(int row) {
        return String.join("", picture.signs[row]).stripTrailing();
    }

    /** The cell a text begins in, or -1: counted in columns of the screen, not in letters. */
    int columnOf(int row, String text) {
        for (int column = 0; column < picture.signs[row].length; column++) {
            String rest = String.join("", Arrays.copyOfRange(picture.signs[row], column, picture.signs[row].length));
            if (!picture.signs[row][column].equals(HALF) && rest.startsWith(text)) {
                return column;
            }
        }
        return -1;
    }

    int height() {
        return picture.signs.length;
    }

    boolean isOnSecond() {
        return enteredSecond > 0;
    }

    boolean isCaretShown() {
        return caret;
    }

    boolean wraps() {
        return wraps;
    }

    int caretRow() {
        return picture.row;
    }

    int caretColumn() {
        return picture.column;
    }

    /** The modes set now, other than those a terminal starts with. */
    Set<String> modes() {
        return modes;
    }

    /** All looks that were ever asked for, as the numbers of SGR. */
    Set<String> looksAskedFor() {
        return looks;
    }

    private int sequence(int at) {
        if (at + 1 == pending.length()) {
            return -1;
        }
        if (pending.charAt(at + 1) != '[') {
            throw new AssertionError("a sequence that not every terminal knows: " + Pty.printable(pending.substring(at)));
        }
        int end = at + 2;
        while (end < pending.length() && pending.charAt(end) < '@') {
            end++;
        }
        if (end == pending.length()) {
            return -1;
        }
        control(pending.substring(at + 2, end), pending.charAt(end));
        return end + 1;
    }

    private void control(String numbers, char what) {
        switch (what) {
            case 'H' -> {
                String[] place = numbers.split(";");
                picture.row = clamp(number(place[0]), height());
                picture.column = clamp(place.length > 1 ? number(place[1]) : 1, width());
            }
            case 'J' -> {
                expect(numbers.equals("2"), "ED", numbers);
                Picture blank = new Picture(width(), height());
                picture.signs = blank.signs;
                picture.looks = blank.looks;
            }
            case 'm' -> {
                expect(numbers.matches("(0(;([147]|3[0-7]))*)?"), "SGR", numbers);
                looks.addAll(Arrays.asList(numbers.split(";")));
                look = numbers.equals("0") ? "" : numbers;
            }
            case 'h', 'l' -> mode(numbers, what == 'h');
            default -> throw new AssertionError("unknown: CSI " + numbers + what);
        }
    }

    private void mode(String mode, boolean on) {
        switch (mode) {
            case "?7" -> wraps = on;
            case "?25" -> caret = on;
            case "?1049" -> second(on);
            case "?1", "?2004" -> {
                if (on) {
                    modes.add(mode);
                } else {
                    modes.remove(mode);
                }
            }
            default -> throw new AssertionError("unknown mode " + mode);
        }
    }

    /** Entering clears the second screen; leaving brings the first back with its cursor. */
    private void second(boolean on) {
        enteredSecond += on ? 1 : -1;
        expect(enteredSecond == (on ? 1 : 0), "1049", on ? "h twice" : "l twice");
        if (second) {
            Picture other = on ? new Picture(width(), height()) : below;
            below = picture;
            picture = other;
        }
    }

    private int sign(int at) {
        int sign = pending.codePointAt(at);
        if (Character.isHighSurrogate(pending.charAt(at)) && at + 1 == pending.length()) {
            return -1;
        }
        if (sign == '\r') {
            picture.column = 0;
        } else if (sign == '\n') {
            feed();
        } else {
            int type = Character.getType(sign);
            expect(type != Character.CONTROL && type != Character.FORMAT && sign != 0x2028 && sign != 0x2029, "a control character",
                    "U+" + Integer.toHexString(sign));
            write(Character.toString(sign), width(sign));
        }
        return at + Character.charCount(sign);
    }

    private void feed() {
        if (picture.row < height() - 1) {
            picture.row++;
            return;
        }
        System.arraycopy(picture.signs, 1, picture.signs, 0, height() - 1);
        System.arraycopy(picture.looks, 1, picture.looks, 0, height() - 1);
        Picture blank = new Picture(width(), 1);
        picture.signs[height() - 1] = blank.signs[0];
        picture.looks[height() - 1] = blank.looks[0];
    }

    private void write(String sign, int columns) {
        if (columns == 0) {
            int before = Math.max(0, picture.column - 1);
            picture.signs[picture.row][before] += sign;
            return;
        }
        if (picture.column + columns > width()) {
            if (!wraps) {
                picture.column = width() - columns;
            } else {
                picture.column = 0;
                feed();
            }
        }
        for (int i = 0; i < columns; i++) {
            loosen(picture.column + i);
            picture.signs[picture.row][picture.column + i] = i == 0 ? sign : HALF;
            picture.looks[picture.row][picture.column + i] = look;
        }
        picture.column += columns;
        if (!wraps) {
            picture.column = Math.min(picture.column, width() - 1);
        }
    }

    /** The other half of a wide sign that is written over becomes blank. */
    private void loosen(int column) {
        String[] line = picture.signs[picture.row];
        if (line[column].equals(HALF) && column > 0) {
            line[column - 1] = BLANK;
        }
        if (column + 1 < line.length && line[column + 1].equals(HALF)) {
            line[column + 1] = BLANK;
        }
    }

    private int width() {
        return picture.signs[0].length;
    }

    private static int width(int sign) {
        int type = Character.getType(sign);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        Character.UnicodeScript script = Character.UnicodeScript.of(sign);
        boolean fullWidth = sign >= 0xff01 && sign <= 0xff60 || sign >= 0x3000 && sign <= 0x303e;
        boolean picture = sign >= 0x1f300 && sign <= 0x1faff;
        return fullWidth || picture ? 2 : switch (script) {
            case HAN, HIRAGANA, KATAKANA, HANGUL, BOPOMOFO -> 2;
            default -> 1;
        };
    }

    private static int number(String text) {
        return text.isEmpty() ? 1 : Integer.parseInt(text);
    }

    private static int clamp(int counted, int end) {
        return Math.min(Math.max(counted, 1), end) - 1;
    }

    private static void expect(boolean holds, String what, String found) {
        if (!holds) {
            throw new AssertionError(what + " is not what a plain terminal knows: " + found);
        }
    }
}
