package hobside.talk;

import hobside.guide.Guide;
import hobside.measure.Range;

/** What a serve is of a day, said aloud: never without the guide's own country or body. */
final class DayShare {

    /** A share up to this is told as a fraction of the day, one above it in times. */
    private static final double WHOLE = 1.12;

    private static final double[] TIMES = {1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5};

    private static final String[] WORDS = {"one and a quarter times", "one and a half times", "nearly twice", "twice", "two and a half times",
        "three times", "four times", "five times"};

    private DayShare() {}

    /** "By the reference intakes (European Union), 20 g a day, one serve is about one and a half times a day's saturated fat." */
    static String spoken(Guide.Share share) {
        return share.isShareOfEnergy() ? ofEnergy(share) : "By the " + share.guide().published().named() + ", " + share.line().written()
                + ", one serve is " + ofDay(share.part().range()) + ".";
    }

    /** The sentence that the guide asks for, and a warning where its figure is from memory. */
    static String small(Guide guide) {
        String sentence = guide.sentence().strip();
        return sentence + (guide.published().citation().isConfirmed() ? "" : " (The figure is " + guide.published().citation().mark().word()
                + "; check it before you rely on it.)");
    }

    private static String ofEnergy(Guide.Share share) {
        return "About " + Math.round(share.part().typical() * 100) + " per cent of the energy of one serve comes from saturated fat. The "
                + share.guide().published().named() + " says: " + share.line().written() + ", over the whole day.";
    }

    private static String ofDay(Range share) {
        double typical = share.typical();
        if (typical > WHOLE) {
            return (WORDS[nearest(typical)].startsWith("nearly") ? "" : "about ") + WORDS[nearest(typical)] + " a whole day's saturated fat";
        }
        return typical >= 0.93 ? "about a whole day's saturated fat" : Spoken.share(share) + " of a day's saturated fat";
    }

    private static int nearest(double times) {
        int best = 0;
        for (int i = 1; i < TIMES.length; i++) {
            best = Math.abs(TIMES[i] - times) < Math.abs(TIMES[best] - times) ? i : best;
        }
        return best;
    }
}
