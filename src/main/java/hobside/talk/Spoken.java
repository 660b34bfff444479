package hobside.talk;

import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a person says them aloud to neighbours: "about a third", "9 grams", "roughly half a crown". */
public final class Spoken {

    /** A share counts as a fraction's own when it lies this near to it. */
    private static final double NEAR = 0.035;

    /** A range of shares wider than this is told by its two ends. */
    private static final double VAGUE = 0.3;

    /** Grams of oil in a level metric teaspoon: 5 mL at 0.92 g/mL (FAO/INFOODS Density Database 2.0, "other oil"). */
    public static final double TEASPOON_OF_FAT = 4.6;

    private static final double[] FRACTIONS = {0.1, 0.2, 0.25, 1 / 3.0, 0.4, 0.5, 0.6, 2 / 3.0, 0.75, 0.8, 0.9};

    private static final String[] WORDS = {
        "a tenth", "a fifth", "a quarter", "a third", "two fifths", "half", "three fifths", "two thirds", "three quarters",
        "four fifths", "nine tenths"
    };

    private Spoken() {}

    /** A share from 0 to 1 in words, as fine as its range allows; the share is that of something that is less now. */
    public static String share(Range share) {
        if (share.width() > VAGUE) {
            return "somewhere between " + nearest(share.low()) + " and " + nearest(share.high());
        }
        return share(share.typical());
    }

    private static String share(double share) {
        if (share > 0.97) {
            return "nearly all";
        }
        if (share < 0.05) {
            return "hardly any";
        }
        double off = share - FRACTIONS[index(share)];
        String word = WORDS[index(share)];
        if (Math.abs(off) <= NEAR) {
            return "about " + word;
        }
        return (off > 0 ? "more than " : "nearly ") + word;
    }

    private static String nearest(double share) {
        if (share < 0.05) {
            return "next to nothing";
        }
        return share > 0.97 ? "nearly all" : WORDS[index(share)];
    }

    private static int index(double share) {
        int best = 0;
        for (int i = 1; i < FRACTIONS.length; i++) {
            best = Math.abs(FRACTIONS[i] - share) < Math.abs(FRACTIONS[best] - share) ? i : best;
        }
        return best;
    }

    /** A weight that can be said: "about 9 grams", "about half a gram", "less than half a gram". Negative ones lose their sign. */
    public static String grams(Range range) {
        return grams(range, !range.isExact());
    }

    static String grams(Range range, boolean about) {
        Range size = range.typical() < 0 ? range.times(-1) : range;
        if (size.typical() < 0.25) {
            return "less than half a gram";
        }
        double rounded = Rounded.of(size, size.typical() < 3 ? 0.5 : 1);
        boolean exact = !about && Math.abs(size.typical() - rounded) < 1e-9;
        return (exact ? "" : "about ") + gramsWritten(rounded);
    }

    private static String gramsWritten(double grams) {
        if (grams == 0.5) {
            return "half a gram";
        }
        String half = grams - Math.floor(grams) == 0.5 ? " and a half" : "";
        return (long) Math.floor(grams) + half + (grams == 1 ? " gram" : " grams");
    }

    /** "about 10"; "less than half a gram" where rounding would leave nothing of something. */
    static String numberOrLess(double rounded, double typical) {
        return rounded == 0 ? grams(Range.exactly(typical), true) : "about " + Rounded.written(rounded);
    }

    /** "about 220 kilocalories", to the ten or coarser. */
    public static String kilocalories(Range range) {
        Range size = range.typical() < 0 ? range.times(-1) : range;
        return "about " + Rounded.written(Rounded.of(size, 10)) + " kilocalories";
    }

    /** "about 3 level teaspoons of fat"; whole and half spoons. */
    public static String teaspoons(Range fatGrams) {
        double spoons = Rounded.of(fatGrams.times(1 / TEASPOON_OF_FAT), 0.5);
        if (spoons <= 0.5) {
            return spoons == 0 ? "less than a quarter of a level teaspoon" : "about half a level teaspoon";
        }
        String half = spoons - Math.floor(spoons) == 0.5 ? " and a half" : "";
        return "about " + (long) Math.floor(spoons) + half + (spoons == 1 ? " level teaspoon" : " level teaspoons");
    }

    /** A sum of money in the coin of the price list, to five hundredths: "about 1.85 crowns". The sign is dropped. */
    public static String money(Range minor, Currency currency) {
        Range major = (minor.typical() < 0 ? minor.times(-1) : minor).times(1 / currency.minorPerMajor());
        double rounded = Rounded.of(major, major.typical() < 10 ? 0.05 : 0.5);
        return "about " + coins(rounded, currency);
    }

    private static String coins(double major, Currency currency) {
        boolean whole = Math.abs(major - Math.round(major)) < 1e-9;
        String digits = whole ? Long.toString(Math.round(major)) : BigDecimal.valueOf(major)
                .setScale(currency.minorDigits(), RoundingMode.HALF_UP).toPlainString();
        return digits + " " + (Math.abs(major - 1) < 1e-9 ? currency.one() : currency.many());
    }

    /** "about 15 minutes", "about 1 minute", "nearly 3 hours", "about 2 and a half hours". */
    public static String minutes(int minutes) {
        if (minutes < 100) {
            return "about " + minutes + (minutes == 1 ? " minute" : " minutes");
        }
        double hours = Math.round(minutes / 30.0) / 2.0;
        String half = hours != Math.floor(hours) ? " and a half" : "";
        return (minutes < hours * 60 - 5 ? "nearly " : "about ") + (long) hours + half + " hours";
    }

    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** "at least " in front of a figure that is only the known part. */
    public static String atLeast(Figure figure, String words) {
        return figure.atLeast() ? "at least " + words.replaceFirst("^about ", "") : words;
    }
}
