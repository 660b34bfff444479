package hobside.screen.terminal;

import hobside.screen.TextWidth;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Follows the few sequences that the painter sends, as a terminal does, and keeps the text that is to be seen. */
final class TinyTerminal {
    private static final Pattern PIECE = Pattern.compile("\033\\[(\\??[0-9;]*)([A-Za-z])|(.)");

    private final char[][] cells;
    private int row;
    private int column;

    TinyTerminal(int width, int height) {
        cells = new char[height][width];
        clear();
    }

    void take(String sent) {
        Matcher piece = PIECE.matcher(sent);
        while (piece.find()) {
            if (piece.group(3) != null) {
                write(piece.group(3).charAt(0));
            } else if (piece.group(2).equals("H")) {
                String[] numbers = piece.group(1).split(";");
                row = Integer.parseInt(numbers[0]) - 1;
                column = numbers.length > 1 ? Integer.parseInt(numbers[1]) - 1 : 0;
            } else if (piece.group(2).equals("J")) {
                clear();
            }
        }
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (char[] line : cells) {
            text.append(new String(line).replace("\0", "").stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private void clear() {
        for (char[] line : cells) {
            Arrays.fill(line, ' ');
        }
    }

    private void write(char sign) {
        loosen(column);
        cells[row][column] = sign;
        if (TextWidth.of(sign) == 2) {
            loosen(column + 1);
            cells[row][column + 1] = 0;
        }
        column += TextWidth.of(sign);
    }

    /** A terminal blanks the other half of a wide sign that is written over. */
    private void loosen(int at) {
        if (cells[row][at] == 0 && at > 0 && TextWidth.of(cells[row][at - 1]) == 2) {
            cells[row][at - 1] = ' ';
        }
        if (at + 1 < cells[row].length && cells[row][at + 1] == 0) {
            cells[row][at + 1] = ' ';
        }
        cells[row][at] = ' ';
    }
}
