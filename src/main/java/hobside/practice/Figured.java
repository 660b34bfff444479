package hobside.practice;

import hobside.food.Nutrient;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.measure.Range;
import hobside.talk.Rounded;
import java.util.Map;

/** Figures of an exercise in words: for the ear in a choice, with the range in the truth that is told afterwards. */
final class Figured {

    private final Lesson lesson;

    Figured(Lesson lesson) {
        this.lesson = lesson;
    }

    /** "about 9 grams less", "about 9 grams more", "about the same". */
    String moved(Facet facet, double saved, Range like) {
        Range size = around(Math.abs(saved), like);
        if (saved == 0) {
            return lesson.say("amount.same");
        }
        return lesson.say(saved > 0 ? "amount.less" : "amount.more", Map.of("x", said(facet, size)));
    }

    /** A figure said as finely as the true one, so that no choice is given away by its roundness. */
    private static Range around(double value, Range like) {
        double half = like.width() / 2;
        return Range.of(Math.max(0, value - half), value, value + half);
    }

    private String said(Facet facet, Range size) {
        return switch (facet) {
            case SATURATED -> lesson.speech().grams(size);
            case ENERGY -> lesson.speech().kilocalories(size);
            case COST -> lesson.speech().money(size, lesson.stand().beside().currency());
            case SALT -> lesson.say("amount.salt", Map.of("n", lesson.speech().number(Rounded.of(size, 0.1))));
        };
    }

    /** What a plate really loses or gains, typical and from low to high; where it stays, how little it moves at most. */
    String truth(Facet facet, Comparison told) {
        Range saved = facet.saved(told);
        boolean more = saved.typical() < 0;
        String what = lesson.say("facet." + facet.word());
        if (facet.way(told).filter(way -> way == Facet.Way.STAYS).isPresent()) {
            double most = Math.max(Math.abs(saved.low()), Math.abs(saved.high()));
            return lesson.say("truth.stays", Map.of("what", what, "figure", written(facet, most)));
        }
        Range size = more ? saved.times(-1) : saved;
        String low = written(facet, size.low());
        String high = written(facet, size.high());
        String key = (more ? "truth.more" : "truth.less") + (low.equals(high) ? "-exact" : "");
        return lesson.say(key, Map.of("what", what, "figure", written(facet, size.typical()), "low", low, "high", high));
    }

    private String written(Facet facet, double value) {
        Figure figure = new Figure(Range.exactly(value), false);
        return switch (facet) {
            case SATURATED -> lesson.called().figure(Nutrient.FASAT, figure);
            case ENERGY -> lesson.called().figure(Nutrient.ENERC_KCAL, figure);
            case COST -> lesson.called().money(figure);
            case SALT -> lesson.speech().number(Math.round(value * 100) / 100.0) + " g";
        };
    }
}
