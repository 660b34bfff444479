package hobside.measure;

import java.util.Optional;

/**
 * An amount as somebody wrote it, read from the left: a count, and what follows is the unit.
 *
 * <p>Read by hand, because every start reads amounts, and reads them before a pattern could be compiled. A count is digits, with
 * a point or a comma in between where wanted, or a fraction with or without a whole number in front.
 */
final class WrittenAmount {

    /** So many digits are read before and after the point, and above and below the stroke of a fraction. */
    private static final int MOST_DIGITS = 9;
    private static final int MOST_OF_FRACTION = 7;

    private final String text;
    private int at;

    private WrittenAmount(String text) {
        this.text = text;
    }

    static Optional<Amount> read(String text) {
        WrittenAmount written = new WrittenAmount(plain(text));
        double fraction = written.fraction();
        double count = Double.isNaN(fraction) ? written.decimal() : fraction;
        return count <= Amount.MOST ? Optional.of(Amount.ofWritten(count, written.text.substring(written.at))) : Optional.empty();
    }

    /** "1/2" or "1 1/2"; no number where no fraction stands, infinite where it is divided by nothing. */
    private double fraction() {
        double whole = 0;
        double above = digits();
        if (isHere(' ') && digitsFrom(at + 1, MOST_OF_FRACTION) > 0) {
            at++;
            whole = above;
            above = digits();
        }
        pass(' ');
        if (!pass('/')) {
            return Double.NaN;
        }
        pass(' ');
        double below = digits();
        return below == 0 ? Double.POSITIVE_INFINITY : whole + above / below;
    }

    /** "2", "1.5" or "1,5" at the beginning; no number where none stands. */
    private double decimal() {
        at = digitsFrom(0, MOST_DIGITS);
        int after = at > 0 && (isHere('.') || isHere(',')) ? digitsFrom(at + 1, MOST_DIGITS) : 0;
        at = after == 0 ? at : at + 1 + after;
        if (after > 0) {
            return Double.parseDouble(text.substring(0, at).replace(',', '.'));
        }
        return at == 0 ? Double.NaN : whole(0);
    }

    /** The whole number that stands here, which is passed; no number where there is none. */
    private double digits() {
        int many = digitsFrom(at, MOST_OF_FRACTION);
        at += many;
        return many == 0 ? Double.NaN : whole(at - many);
    }

    /** The whole number from there to here: nine digits at most, so that none is lost. */
    private int whole(int from) {
        int number = 0;
        for (int i = from; i < at; i++) {
            number = number * 10 + text.charAt(i) - '0';
        }
        return number;
    }

    /** How many digits stand there; 0 when there are none, or more than are read. */
    private int digitsFrom(int from, int most) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end - from > most ? 0 : end - from;
    }

    private boolean isHere(char wanted) {
        return at < text.length() && text.charAt(at) == wanted;
    }

    private boolean pass(char wanted) {
        boolean here = isHere(wanted);
        at += here ? 1 : 0;
        return here;
    }

    /** The same with single blanks, none in front, and with ½ spelled 1/2. */
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length() + 3);
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            String fraction = spelled(each);
            if (fraction.isEmpty() && !Character.isWhitespace(each)) {
                plain.append(each);
            } else {
                plain.append(plain.length() == 0 || plain.charAt(plain.length() - 1) == ' ' ? "" : " ").append(fraction);
            }
        }
        return plain.toString();
    }

    private static String spelled(char sign) {
        return switch (sign) {
            case '½' -> "1/2";
            case '¼' -> "1/4";
            case '¾' -> "3/4";
            case '⅓' -> "1/3";
            case '⅔' -> "2/3";
            case '⅛' -> "1/8";
            default -> "";
        };
    }
}
