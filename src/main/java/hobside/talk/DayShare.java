package hobside.talk;

import hobside.guide.Guide;
import hobside.guide.Published;
import hobside.measure.Range;
import hobside.words.Words;
import java.util.Locale;
import java.util.Map;

/** What a serve is of a day, said aloud: never without the guide's own country or body. */
final class DayShare {

    /** A share up to this is told as a fraction of the day, one above it in times. */
    private static final double WHOLE = 1.12;

    private static final double ALMOST_WHOLE = 0.93;

    private static final double[] TIMES = {1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5};

    private final Words words;
    private final Speech speech;

    DayShare(Words words) {
        this.words = words;
        this.speech = Speech.in(words);
    }

    /** "That is about one and a half times a whole day's saturated fat, by the reference intakes (European Union) (20 g a day)." */
    String spoken(Guide.Share share) {
        Map<String, String> gaps = Map.of("guide", named(share.guide().published()), "line", line(share.line()),
                "share", ofDay(share.part().range()), "percent", Long.toString(Math.round(share.part().typical() * 100)));
        return words.say(share.isShareOfEnergy() ? "speech.day.said-energy" : "speech.day.said", gaps);
    }

    /** Name and place: "reference intakes (European Union)". */
    String named(Published published) {
        String key = published.place().toLowerCase(Locale.ROOT).replace(' ', '-');
        return words.find("guides." + published.key() + ".name").orElse(published.name()) + " (" + words.find("places." + key).orElse(published.place()) + ")";
    }

    private String line(Guide.Line line) {
        boolean energy = line.unit().isShareOfEnergy();
        String figure = speech.number(line.figure()) + (energy ? "" : " " + line.unit().wordFor(line.of()));
        String most = line.sense() == Guide.Sense.AT_MOST ? "-at-most" : "";
        return words.say("speech.day." + (energy ? "energy" : "a-day") + most, Map.of("figure", figure));
    }

    /** The sentence that the guide asks for, and a warning where its figure is from memory. */
    String small(Guide guide) {
        String sentence = words.find("guides." + guide.published().key() + ".sentence").orElse(guide.sentence()).strip();
        String mark = guide.published().citation().mark().word();
        String known = words.find("mark." + mark.replace(' ', '-')).orElse(mark);
        return sentence + (guide.published().citation().isConfirmed() ? "" : " " + words.say("speech.day.unsure", Map.of("mark", known)));
    }

    private String ofDay(Range share) {
        double typical = share.typical();
        if (typical > WHOLE) {
            return words.say("speech.day.in-times", Map.of("times", words.say("speech.day.times." + (nearest(typical) + 1))));
        }
        return typical >= ALMOST_WHOLE ? words.say("speech.day.whole") : words.say("speech.day.part", Map.of("share", speech.share(share)));
    }

    private static int nearest(double times) {
        int best = 0;
        for (int i = 1; i < TIMES.length; i++) {
            best = Math.abs(TIMES[i] - times) < Math.abs(TIMES[best] - times) ? i : best;
        }
        return best;
    }
}
