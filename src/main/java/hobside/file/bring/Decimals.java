package hobside.file.bring;

import hobside.file.Numbers;
import java.util.OptionalDouble;

/**
 * How a table writes its figures: with a decimal point or a decimal comma. Decided once for the whole table by the figures that
 * leave no doubt; "1,234" alone could be either.
 *
 * @param sure false when no figure told: then a figure that could be read in two ways is refused
 */
record Decimals(char mark, boolean sure) {

    static final int MOST_DIGITS = 40;

    /** Counts the figures that tell. */
    static final class Votes {
        private int points;
        private int commas;

        void look(String written) {
            String figure = bare(written);
            int point = figure.lastIndexOf('.');
            int comma = figure.lastIndexOf(',');
            if (point >= 0 && comma >= 0) {
                points += point > comma ? 1 : 0;
                commas += comma > point ? 1 : 0;
            } else if (point >= 0 && !isGrouped(figure, '.')) {
                points += isFigure(figure, '.') ? 1 : 0;
            } else if (comma >= 0 && !isGrouped(figure, ',')) {
                commas += isFigure(figure, ',') ? 1 : 0;
            }
        }

        /** The majority; where there is none a figure without a mark is sound and one that could be grouped is not. */
        Decimals decided() {
            return points == commas ? new Decimals('.', false) : new Decimals(points > commas ? '.' : ',', true);
        }
    }

    /** Without a sign of money in front or behind. */
    static String bare(String written) {
        String text = written;
        if (!text.isEmpty() && Character.getType(text.charAt(0)) == Character.CURRENCY_SYMBOL) {
            text = text.substring(1).strip();
        } else if (!text.isEmpty() && Character.getType(text.charAt(text.length() - 1)) == Character.CURRENCY_SYMBOL) {
            text = text.substring(0, text.length() - 1).strip();
        }
        return text;
    }

    private static boolean isFigure(String text, char mark) {
        int marks = 0;
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            marks += each == mark ? 1 : 0;
            if (each != mark && (each < '0' || each > '9')) {
                return false;
            }
        }
        return marks == 1 && text.length() <= MOST_DIGITS;
    }

    /** "1,234" and "1.234.567": one to three digits and then threes. */
    private static boolean isGrouped(String text, char mark) {
        int since = 0;
        boolean any = false;
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (each == mark) {
                if (since == 0 || since > 3 || any && since != 3) {
                    return false;
                }
                any = true;
                since = 0;
            } else if (each >= '0' && each <= '9') {
                since++;
            } else {
                return false;
            }
        }
        return any && since == 3 && text.charAt(0) != '0';
    }

    /** The figure; empty when it is none, or when it could mean two things. */
    OptionalDouble figure(String written) {
        String text = written.replace("\u00a0", "").replace("\u202f", "");
        char other = mark == '.' ? ',' : '.';
        int last = text.lastIndexOf(mark);
        if (text.indexOf(other) >= 0) {
            String whole = last < 0 ? text : text.substring(0, last);
            if (!isGrouped(whole, other) || last < 0 && !(sure && mark == '.')) {
                return OptionalDouble.empty();
            }
            text = whole.replace(String.valueOf(other), "") + (last < 0 ? "" : text.substring(last));
        } else if (!sure && isGrouped(text, mark)) {
            return OptionalDouble.empty();
        }
        return isFigure(mark == ',' ? text.replace(',', '.') : text)
                ? OptionalDouble.of(Numbers.parse(mark == ',' ? text.replace(',', '.') : text)) : OptionalDouble.empty();
    }

    /** Whether a figure could be read in two ways in this table. */
    boolean isUnclear(String text) {
        return !sure && (isFigure(text, ',') || isFigure(text, '.') || isGrouped(text, ',') || isGrouped(text, '.'));
    }

    private static boolean isFigure(String text) {
        int digits = 0;
        int marks = 0;
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (each >= '0' && each <= '9') {
                digits++;
            } else if (each == '.') {
                marks++;
            } else if (each != '-' || i > 0) {
                return false;
            }
        }
        return digits > 0 && marks <= 1 && text.length() <= MOST_DIGITS;
    }

    String told() {
        return sure ? "Figures have a decimal " + (mark == '.' ? "point." : "comma.") : "No figure tells whether the comma or the point is the decimal mark.";
    }
}
