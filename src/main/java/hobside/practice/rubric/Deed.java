package hobside.practice.rubric;

import hobside.dish.ChangeKind;
import hobside.practice.rubric.Sight.Ground;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether deed and food can be known from an answer. */
final class Deed {

    private final Sight sight;
    private final Subject.Told told;
    private final Optional<Found> deed;
    private final Optional<Found> food;
    private final Optional<Found> fresh;
    private final Optional<Found> shared;

    private Deed(Sight sight, Subject.Told told) {
        this.sight = sight;
        this.told = told;
        this.deed = sight.found("deed." + told.kind().word(), "deed");
        this.food = named("food").or(this::meat);
        this.fresh = named("new");
        this.shared = sight.found("deed.bulk-out.shared", "deed");
    }

    private Optional<Found> named(String gap) {
        return named("{" + gap + "}", "food");
    }

    private Optional<Found> named(String slot, String why) {
        return sight.heard().places(sight.spotter().slot(slot)).stream().findFirst()
                .map(at -> sight.heard().text().found(at[0], at[1], sight.say("found." + why)));
    }

    /** "The meat" is enough for what is cut off it or poured from it. */
    private Optional<Found> meat() {
        boolean ofMeat = told.kind() == ChangeKind.TRIM || told.kind() == ChangeKind.POUR_OFF || told.kind() == ChangeKind.SKIN_OFF;
        return ofMeat && deed.isPresent() ? named("@meat-any", "food") : Optional.empty();
    }

    static Judged of(Sight sight, Subject.Told told) {
        return new Deed(sight, told).judged();
    }

    private Judged judged() {
        Mark mark = mark();
        List<Found> found = new ArrayList<>();
        List.of(deed, food, fresh).forEach(each -> each.ifPresent(found::add));
        String title = sight.subject().told().flatMap(change -> change.cue("/do")).map(cue -> cue.words()).orElse("");
        String how = mark == Mark.YES ? "what-yes" : mark == Mark.PART ? "what-part" : strange();
        Ground ground = Ground.of(mark == Mark.NO ? List.of() : found, how, mark == Mark.PART ? Sight.LIKELY : Sight.CLEAR);
        return sight.judged(Point.WHAT, mark, ground.missing(sight.say("look.what", Map.of("deed", title))));
    }

    /** Why nothing of the change was found: kindly. */
    private String strange() {
        if (sight.heard().tokens().isEmpty()) {
            return "empty";
        }
        return sight.has("pasted") ? "pasted" : "off-topic";
    }

    private Mark mark() {
        boolean about = sight.isTopical() || sight.heard().tokens().size() < 25;
        if (told.kind() == ChangeKind.SWAP) {
            return swapped(about);
        }
        if (told.kind() == ChangeKind.BULK_OUT) {
            return bulked(about);
        }
        boolean whole = told.change().of().isEmpty();
        if (deed.isPresent() && (whole || food.isPresent())) {
            return Mark.YES;
        }
        boolean half = deed.isPresent() ? about : food.isPresent() && sight.isTopical();
        return half ? Mark.PART : Mark.NO;
    }

    private Mark swapped(boolean about) {
        if (fresh.isPresent() && (food.isPresent() || deed.isPresent())) {
            return Mark.YES;
        }
        boolean half = fresh.isPresent() && sight.isTopical() || food.isPresent() && (deed.isPresent() || sight.isTopical());
        return half && about ? Mark.PART : Mark.NO;
    }

    private Mark bulked(boolean about) {
        if (food.isPresent() && shared.isPresent()) {
            return Mark.YES;
        }
        return (food.isPresent() || shared.isPresent() && deed.isPresent()) && about ? Mark.PART : Mark.NO;
    }
}
