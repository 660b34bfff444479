package hobside.talk.check;

import hobside.ledger.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Picks from all figures of the ledger those that a figure can mean in its place. */
final class Meant {

    private static final Pattern TO_COME = Pattern.compile("\\b(?:will|bring|end|later|down to|finish|tonight|when we are done)\\b");
    private static final Pattern SINCE = Pattern.compile("\\b(?:so far|since|start|began|altogether|all in all|together|in all|by now|we have (?:cut|saved|taken))\\b");
    private static final Pattern A_STEP = Pattern.compile("\\b(?:steps?|changes?|trim|trimming|cut(?:ting)? off|pour|pouring|poured|skim|skimming|skins?|drain|draining|rinsing|thin|thinning|in place|instead"
            + "|swap|swapping|bulk|bulking|left out|grill|grilling|shar(?:e|ing))\\b");

    private final Facts facts;

    Meant(Facts facts) {
        this.facts = facts;
    }

    List<Known> by(Told told, Sentence sentence, Place place) {
        return by(told.topics(), told.bases(), told.meaning(), sentence, place);
    }

    List<Known> by(Set<Topic> topics, Set<Basis> bases, Told.Meaning meaning, Sentence sentence, Place place) {
        List<Known> meant = new ArrayList<>();
        for (Known known : facts.known()) {
            if (topics.contains(known.topic()) && bases.contains(known.basis()) && isMeant(known, meaning, place) && isAt(known, sentence.small(), place)) {
                meant.add(known);
            }
        }
        return meant;
    }

    private boolean isMeant(Known known, Told.Meaning meaning, Place place) {
        return switch (meaning) {
            case EITHER -> true;
            case SAVED -> !known.isAmount();
            case AMOUNT -> known.isAmount();
            case NOW -> isNow(known, place);
        };
    }

    /** "Now" is after the change at a step, the start in the welcome or where nothing is changed, and after any change elsewhere. */
    private boolean isNow(Known known, Place place) {
        if (place.kind() == Place.Kind.WELCOME || facts.last() < 0) {
            return known.isAmount();
        }
        return known.sense() == Known.Sense.AFTER && (place.kind() != Place.Kind.STEP || known.step() == place.step());
    }

    private boolean isAt(Known known, String small, Place place) {
        boolean end = known.step() == facts.last();
        return switch (place.kind()) {
            case WHOLE -> true;
            case WELCOME -> switch (known.sense()) {
                case START -> true;
                case AFTER -> end && TO_COME.matcher(small).find();
                case SAVED -> A_STEP.matcher(small).find();
                case SINCE -> end;
            };
            case RECAP -> switch (known.sense()) {
                case START -> true;
                case AFTER, SINCE -> end;
                case SAVED -> A_STEP.matcher(small).find();
            };
            case STEP -> isAtStep(known, small, place.step());
        };
    }

    private boolean isAtStep(Known known, String small, int step) {
        return switch (known.sense()) {
            case START -> true;
            case AFTER -> known.step() == step || known.step() == facts.before(step) || known.step() == facts.last() && TO_COME.matcher(small).find();
            case SAVED -> known.step() == step;
            case SINCE -> known.step() == step && SINCE.matcher(small).find();
        };
    }
}
