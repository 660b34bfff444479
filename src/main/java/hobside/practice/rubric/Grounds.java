package hobside.practice.rubric;

import hobside.practice.rubric.Sight.Ground;
import hobside.talk.Cue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The reason, what the change does not do, and the care it needs: each by the tables and by the books' own words. */
final class Grounds {

    private final Sight sight;
    private final Subject.Told told;
    private final String kind;

    private Grounds(Sight sight, Subject.Told told) {
        this.sight = sight;
        this.told = told;
        this.kind = told.kind().word();
    }

    static Judged why(Sight sight, Subject.Told told) {
        return new Grounds(sight, told).why();
    }

    static Judged not(Sight sight, Subject.Told told, Effect effect) {
        return new Grounds(sight, told).not(effect);
    }

    static Judged safety(Sight sight, Subject.Told told) {
        return new Grounds(sight, told).safety();
    }

    private Optional<Found> echo(String book, String why) {
        return Echo.of(book, sight.spotter(), sight.heard()).map(span -> sight.heard().text().found(span[0], span[1], sight.say("found." + why)));
    }

    private Judged why() {
        Optional<Found> wrong = sight.found("why." + kind + ".wrong", "why-wrong");
        Optional<Found> right = sight.found("why." + kind, "why").or(() -> echo(told.reason().why(), "why"));
        Optional<Found> hint = sight.firstOf(List.of("why." + kind + ".part", "why.hint"), "why-part");
        String look = sight.say("look.why", Map.of("reason", told.reason().why()));
        if (wrong.isPresent()) {
            return sight.judged(Point.WHY, right.isPresent() ? Mark.PART : Mark.NO, Ground.of(both(wrong, right), "why-wrong", Sight.LIKELY).missing(look));
        }
        if (right.isPresent()) {
            return sight.judged(Point.WHY, Mark.YES, Ground.of(both(right, Optional.empty()), "why-yes", Sight.LIKELY));
        }
        if (hint.isPresent()) {
            return sight.judged(Point.WHY, Mark.PART, Ground.of(both(hint, Optional.empty()), "why-part", Sight.THIN).missing(look));
        }
        boolean unread = sight.has("because") && sight.isTopical();
        return sight.judged(Point.WHY, unread ? Mark.UNSURE : Mark.NO, Ground.of(List.of(), unread ? "why-unsure" : "why-no", Sight.LIKELY).missing(look));
    }

    private static List<Found> both(Optional<Found> one, Optional<Found> other) {
        List<Found> found = new ArrayList<>();
        one.ifPresent(found::add);
        other.ifPresent(found::add);
        return found;
    }

    private Judged not(Effect effect) {
        Optional<Found> said = sight.found("not." + kind, "not").or(() -> sight.firstOf(holding(effect), "not")).or(() -> echo(told.reason().not(), "not"));
        Optional<Found> hint = sight.firstOf(List.of("not." + kind + ".part", "not.part"), "not-part");
        String look = sight.say("look.not", Map.of("not", told.reason().not()));
        if (said.isPresent()) {
            return sight.judged(Point.NOT, Mark.YES, Ground.of(both(said, Optional.empty()), "not-yes", Sight.LIKELY));
        }
        return hint.isPresent() ? sight.judged(Point.NOT, Mark.PART, Ground.of(both(hint, Optional.empty()), "not-part", Sight.THIN).missing(look))
                : sight.judged(Point.NOT, Mark.NO, Ground.of(List.of(), "not-no", Sight.LIKELY).missing(look));
    }

    /** What any change may leave as it was, where the ledger agrees. */
    private static List<String> holding(Effect effect) {
        List<String> keys = new ArrayList<>(List.of("not.any.taste"));
        add(keys, "not.any.energy-same", effect.isSame(Topic.KILOCALORIES));
        add(keys, "not.any.cost-same", effect.isSame(Topic.COST));
        add(keys, "not.any.paid", effect.isSame(Topic.COST));
        add(keys, "not.any.salt-same", effect.isSame(Topic.SALT));
        add(keys, "not.any.salt-up", effect.saved(Topic.SALT, hobside.ledger.Basis.SERVE).typical() < -0.01);
        add(keys, "not.any.fat-same", effect.isSame(Topic.SATURATED));
        return keys;
    }

    private static void add(List<String> keys, String key, boolean holds) {
        if (holds) {
            keys.add(key);
        }
    }

    private Judged safety() {
        List<Found> danger = sight.all("danger", "danger");
        List<Cue> cares = told.cares();
        Optional<Found> said = cares.stream().map(this::said).flatMap(Optional::stream).findFirst().or(() -> sight.found("safe.any", "safe"));
        Optional<Found> hint = sight.found(cares.isEmpty() ? "safe.any.part" : "safe.part", "safe-part");
        String look = cares.isEmpty() ? "" : sight.say("look.safety", Map.of("care", cares.get(0).words()));
        if (!danger.isEmpty()) {
            return sight.judged(Point.SAFETY, Mark.NO, Ground.of(danger, "danger", Sight.LIKELY).missing(look));
        }
        if (said.isPresent()) {
            return sight.judged(Point.SAFETY, Mark.YES, Ground.of(both(said, Optional.empty()), "safe-yes", Sight.CLEAR));
        }
        if (hint.isPresent()) {
            return sight.judged(Point.SAFETY, Mark.PART, Ground.of(both(hint, Optional.empty()), "safe-part", Sight.LIKELY).missing(look));
        }
        return cares.isEmpty() ? sight.judged(Point.SAFETY, Mark.NONE, Ground.of(List.of(), "safe-none", Sight.CLEAR))
                : sight.judged(Point.SAFETY, Mark.NO, Ground.of(List.of(), "safe-no", Sight.CLEAR).missing(look));
    }

    private Optional<Found> said(Cue care) {
        return sight.found("safe." + care.caution(), "safe").or(() -> echo(care.words(), "safe"));
    }
}
