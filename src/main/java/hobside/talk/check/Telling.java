package hobside.talk.check;

import hobside.ledger.Basis;
import hobside.measure.Range;
import hobside.talk.Rounded;
import hobside.talk.Speech;

/** Tells figures of the ledger in words, rounded as their ranges allow, for reasons and for better wordings. */
final class Telling {

    private static final double HARDLY = 1e-9;

    private final Facts facts;
    private final Speech speech;

    Telling(Facts facts) {
        this.facts = facts;
        this.speech = facts.speech();
    }

    String source() {
        return "the ledger of this demo";
    }

    /** "about 7 grams of saturated fat a serve at the end". */
    String of(Known known) {
        return amount(known.topic(), size(known.range())) + movement(known) + " " + basis(known.basis()) + when(known);
    }

    /** A whole sentence to say instead. */
    String sentence(Known known) {
        if (known.isAmount()) {
            return capital(place(known.basis())) + (known.sense() == Known.Sense.START ? " held " : " now holds ") + amount(known.topic(), known.range()) + ".";
        }
        return "That is " + amount(known.topic(), size(known.range())) + movement(known) + " " + basis(known.basis()) + ".";
    }

    private static String movement(Known known) {
        return known.isAmount() ? "" : known.range().typical() >= 0 ? " less" : " more";
    }

    private static Range size(Range range) {
        return range.typical() < 0 ? range.times(-1) : range;
    }

    /** "about 410 kilocalories", "about 7 grams of saturated fat". */
    String amount(Topic topic, Range range) {
        return switch (topic) {
            case SATURATED, FAT -> speech.grams(range) + " of " + topic.word();
            case SALT -> "about " + Rounded.written(Rounded.of(range, topic.finest())) + " grams of salt";
            case SODIUM -> "about " + Rounded.written(Rounded.of(range, topic.finest())) + " milligrams of sodium";
            case KILOCALORIES -> speech.kilocalories(range);
            case KILOJOULES -> "about " + Rounded.written(Rounded.of(range, topic.finest())) + " kilojoules";
            case COST -> speech.money(range.times(facts.currency().minorPerMajor()), facts.currency());
        };
    }

    private static String basis(Basis basis) {
        return switch (basis) {
            case SERVE -> "a serve";
            case POT -> "for the whole pot";
            case HUNDRED_GRAMS -> "per 100 g as cooked";
        };
    }

    private static String place(Basis basis) {
        return switch (basis) {
            case SERVE -> "each serve";
            case POT -> "the whole pot";
            case HUNDRED_GRAMS -> "a hundred grams of it";
        };
    }

    private String when(Known known) {
        return switch (known.sense()) {
            case START -> " at the start";
            case AFTER -> known.step() == facts.last() ? " at the end" : " after this change";
            case SAVED -> " through this change";
            case SINCE -> " since the start";
        };
    }

    /** "about three quarters less saturated fat a serve", or that it is as much as before or more. */
    String share(Known known) {
        double typical = known.share().typical();
        if (Math.abs(typical) < 0.03 + HARDLY) {
            return "about as much " + known.topic().word() + " " + basis(known.basis()) + " as before";
        }
        return (typical < 0 ? "more " : speech.share(known.share()) + " less ") + known.topic().word() + " " + basis(known.basis());
    }

    /** "Each serve now holds about 7 grams of saturated fat." as the ledger has it at a place. */
    String now(Place place) {
        Range range = facts.at(place).range(Topic.SATURATED.of(Basis.SERVE, 1));
        return "Each serve " + (place.kind() == Place.Kind.WELCOME ? "holds " : "now holds ") + amount(Topic.SATURATED, range) + ".";
    }

    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
