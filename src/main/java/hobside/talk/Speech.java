package hobside.talk;

import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** Figures as a person says them aloud to neighbours, in one language: "about a third", "9 grams", "about 1.85 crowns". */
public final class Speech {

    /** A share counts as a fraction's own when it lies this near to it. */
    private static final double NEAR = 0.035;

    /** A range of shares wider than this is told by its two ends. */
    private static final double VAGUE = 0.3;

    /** Grams of oil in a level metric teaspoon: 5 mL at 0.92 g/mL (FAO/INFOODS Density Database 2.0, "other oil"). */
    public static final double TEASPOON_OF_FAT = 4.6;

    private static final double NEARLY_ALL = 0.97;
    private static final double HARDLY_ANY = 0.05;

    private static final double[] FRACTIONS = {0.1, 0.2, 0.25, 1 / 3.0, 0.4, 0.5, 0.6, 2 / 3.0, 0.75, 0.8, 0.9};

    private final Words words;

    private Speech(Words words) {
        this.words = words;
    }

    public static Speech in(Words words) {
        return new Speech(words);
    }

    private String say(String key) {
        return words.say("speech." + key);
    }

    private String with(String key, String x) {
        return words.say("speech." + key, Map.of("x", x));
    }

    private String count(String key, double number) {
        String plain = Rounded.written(number);
        return words.count("speech." + key, plain, Map.of("n", words.language().number(plain)));
    }

    /** A rounded number as this language writes it. */
    public String number(double rounded) {
        return words.language().number(Rounded.written(rounded));
    }

    public String about(String figure) {
        return with("about", figure);
    }

    /** A share from 0 to 1 in words, as fine as its range allows; the share is that of something that is less now. */
    public String share(Range share) {
        return share.width() > VAGUE
                ? words.say("speech.between", Map.of("low", nearest(share.low()), "high", nearest(share.high())))
                : share(share.typical());
    }

    private String share(double share) {
        if (share > NEARLY_ALL) {
            return say("nearly-all");
        }
        if (share < HARDLY_ANY) {
            return say("hardly-any");
        }
        double off = share - FRACTIONS[index(share)];
        String fraction = fraction(index(share));
        return Math.abs(off) <= NEAR ? about(fraction) : with(off > 0 ? "more-than" : "nearly", fraction);
    }

    private String nearest(double share) {
        if (share < HARDLY_ANY) {
            return say("next-to-nothing");
        }
        return share > NEARLY_ALL ? say("nearly-all") : fraction(index(share));
    }

    private String fraction(int index) {
        return say("fraction." + (index + 1));
    }

    private static int index(double share) {
        int best = 0;
        for (int i = 1; i < FRACTIONS.length; i++) {
            best = Math.abs(FRACTIONS[i] - share) < Math.abs(FRACTIONS[best] - share) ? i : best;
        }
        return best;
    }

    /** A weight that can be said: "about 9 grams", "about half a gram", "less than half a gram". Negative ones lose their sign. */
    public String grams(Range range) {
        return grams(range, !range.isExact());
    }

    String grams(Range range, boolean about) {
        Range size = size(range);
        if (size.typical() < 0.25) {
            return say("less-than-half-gram");
        }
        double rounded = roundedGrams(size);
        boolean exact = !about && Math.abs(size.typical() - rounded) < 1e-9;
        return exact ? gramsWritten(rounded) : about(gramsWritten(rounded));
    }

    private static Range size(Range range) {
        return range.typical() < 0 ? range.times(-1) : range;
    }

    private static double roundedGrams(Range size) {
        return Rounded.of(size, size.typical() < 3 ? 0.5 : 1);
    }

    private String gramsWritten(double grams) {
        if (grams == 0.5) {
            return say("half-gram");
        }
        return withHalf("grams", grams);
    }

    /** "2 grams", "2 and a half grams". */
    private String withHalf(String key, double count) {
        double whole = Math.floor(count);
        return count - whole == 0.5 ? count(key + "-half", whole) : count(key, whole);
    }

    /** A weight in grams of which only the known part counts: "at least 9 grams". */
    String gramsAtLeast(Figure figure) {
        return figure.atLeast() ? with("at-least", gramsWritten(roundedGrams(size(figure.range())))) : grams(figure.range());
    }

    /** "about 10"; "less than half a gram" where rounding would leave nothing of something. */
    String numberOrLess(double rounded, double typical) {
        return rounded == 0 ? grams(Range.exactly(typical), true) : about(number(rounded));
    }

    /** "about 220 kilocalories", to the ten or coarser. */
    public String kilocalories(Range range) {
        return words.say("speech.kilocalories", Map.of("n", number(Rounded.of(size(range), 10))));
    }

    /** "about 3 level teaspoons"; whole and half spoons. */
    public String teaspoons(Range fatGrams) {
        double spoons = Rounded.of(size(fatGrams).times(1 / TEASPOON_OF_FAT), 0.5);
        if (spoons <= 0.5) {
            return say(spoons == 0 ? "quarter-spoon" : "half-spoon");
        }
        return withHalf("spoons", spoons);
    }

    /** A sum of money in the coin of the price list, to five hundredths: "about 1.85 crowns". The sign is dropped. */
    public String money(Range minor, Currency currency) {
        Range major = size(minor).times(1 / currency.minorPerMajor());
        double rounded = Rounded.of(major, major.typical() < 10 ? 0.05 : 0.5);
        return about(coins(rounded, currency));
    }

    private String coins(double major, Currency currency) {
        boolean whole = Math.abs(major - Math.round(major)) < 1e-9;
        String digits = whole ? Long.toString(Math.round(major))
                : BigDecimal.valueOf(major).setScale(currency.minorDigits(), RoundingMode.HALF_UP).toPlainString();
        boolean one = Math.abs(major - 1) < 1e-9;
        String coin = words.find("currency." + currency.many() + (one ? ".one" : ".other")).orElse(one ? currency.one() : currency.many());
        return words.say("speech.money", Map.of("n", words.language().number(digits), "coin", coin));
    }

    /** "about 15 minutes", "about 1 minute", "nearly 3 hours", "about 2 and a half hours". */
    public String minutes(int minutes) {
        if (minutes < 100) {
            return about(count("minutes", minutes));
        }
        double hours = Math.round(minutes / 30.0) / 2.0;
        String time = withHalf("hours", hours);
        return minutes < hours * 60 - 5 ? with("nearly", time) : about(time);
    }

    /** A weight of salt in grams: to a tenth of a gram. */
    String salt(Range grams) {
        return about(count("grams", Rounded.of(size(grams), 0.1)));
    }
}
