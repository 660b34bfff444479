package hobside.practice.rubric;

import hobside.ledger.Basis;
import hobside.practice.rubric.Number.Unit;
import hobside.practice.rubric.Sight.Ground;
import hobside.talk.check.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Holds every number of an answer against the true figures of the change: right, wrong, an amount of food, or none of these. */
final class HowMuch {

    private enum Verdict { RIGHT, WRONG, AMOUNT, OTHER }

    private static final int NEAR = 8;
    private static final double SHARE_ROOM = 0.06;
    private static final double SHARE_WRONG = 0.1;

    private final Sight sight;
    private final Effect effect;
    private final Heard heard;
    private final List<Number> numbers;
    private final List<Found> right = new ArrayList<>();
    private final List<Found> wrong = new ArrayList<>();
    private final List<Found> amounts = new ArrayList<>();

    private HowMuch(Sight sight, Effect effect, List<Number> numbers) {
        this.sight = sight;
        this.effect = effect;
        this.heard = sight.heard();
        this.numbers = numbers;
    }

    static Judged of(Sight sight, Effect effect, List<Number> numbers) {
        return new HowMuch(sight, effect, numbers).judged();
    }

    private Judged judged() {
        for (int i = 0; i < numbers.size(); i++) {
            note(numbers.get(i), verdict(i));
        }
        turned();
        sight.truth().stream().filter(finding -> finding.kind() == Finding.Kind.NUMBER).filter(this::isNew)
                .forEach(finding -> wrong.add(new Found(finding.from(), finding.to(), finding.found(), sight.say("found.figure-wrong"))));
        String figure = sight.subject().told().map(told -> told.section().figures().getOrDefault("saved", "")).orElse("");
        String look = effect.isSame(Topic.SATURATED) ? sight.say("look.how-much-other") : sight.say("look.how-much", Map.of("figure", figure));
        if (!wrong.isEmpty()) {
            return sight.judged(Point.HOW_MUCH, Mark.NO, Ground.of(wrong, "figure-wrong", Sight.LIKELY).missing(look));
        }
        if (!right.isEmpty()) {
            return sight.judged(Point.HOW_MUCH, Mark.YES, Ground.of(right, "figure-right", Sight.CLEAR));
        }
        return amounts.isEmpty() ? sight.judged(Point.HOW_MUCH, Mark.NO, Ground.of(List.of(), "figure-none", Sight.CLEAR).missing(look))
                : sight.judged(Point.HOW_MUCH, Mark.PART, Ground.of(amounts, "figure-amount", Sight.LIKELY).missing(look));
    }

    private void note(Number number, Verdict verdict) {
        switch (verdict) {
            case RIGHT -> right.add(found(number, "figure-right"));
            case WRONG -> wrong.add(found(number, "figure-wrong"));
            case AMOUNT -> amounts.add(found(number, "figure-amount"));
            case OTHER -> { }
        }
    }

    private Found found(Number number, String why) {
        return heard.text().found(number.first(), number.last(), sight.say("found." + why));
    }

    private boolean isNew(Finding finding) {
        return right.stream().noneMatch(found -> found.from() < finding.to() && finding.from() < found.to())
                && amounts.stream().noneMatch(found -> found.from() < finding.to() && finding.from() < found.to());
    }

    /** Up said for down, and the other way round. */
    private void turned() {
        double saved = effect.saved(Topic.SATURATED, Basis.SERVE).typical();
        double cheaper = effect.saved(Topic.COST, Basis.SERVE).typical();
        if (saved >= 0) {
            sight.found("way.up", "way-wrong").ifPresent(wrong::add);
        }
        if (cheaper >= 0) {
            sight.found("way.dearer", "way-wrong").ifPresent(wrong::add);
        } else {
            sight.found("way.cheaper", "way-wrong").ifPresent(wrong::add);
        }
    }

    private Verdict verdict(int index) {
        Number said = numbers.get(index);
        return switch (said.unit()) {
            case KITCHEN -> Verdict.AMOUNT;
            case COIN -> money(said);
            case KILOCALORIE -> energy(said, Topic.KILOCALORIES);
            case KILOJOULE -> energy(said, Topic.KILOJOULES);
            case GRAM, KILO, MILLIGRAM -> weight(said);
            case TEASPOON -> effect.match(said, Topic.FAT, bases(said)) != null ? Verdict.RIGHT : Verdict.OTHER;
            case SHARE -> share(said);
            case BARE -> bare(index);
        };
    }

    private boolean near(String group, Number said, int reach) {
        return heard.hasNear(sight.spotter().slot("@" + group), said.first(), reach);
    }

    private List<Basis> bases(Number said) {
        boolean plate = near("plate", said, 10);
        boolean pot = near("whole-pot", said, 10);
        return plate == pot ? List.of(Basis.SERVE, Basis.POT) : plate ? List.of(Basis.SERVE) : List.of(Basis.POT);
    }

    private Verdict money(Number said) {
        if (near("shop", said, NEAR)) {
            return Verdict.OTHER;
        }
        return effect.match(said, Topic.COST, bases(said)) != null ? Verdict.RIGHT : near("down", said, 10) ? Verdict.WRONG : Verdict.OTHER;
    }

    private Verdict energy(Number said, Topic topic) {
        if (effect.match(said, topic, bases(said)) != null) {
            return Verdict.RIGHT;
        }
        return near("down", said, 10) || near("plate", said, 10) ? Verdict.WRONG : Verdict.OTHER;
    }

    private Verdict weight(Number said) {
        int fat = Math.min(away("saturates", said), away("fats", said));
        int salt = away("salts", said);
        if (salt < fat && salt <= NEAR) {
            return salt(said, salt);
        }
        if (near("saturates", said, NEAR)) {
            return saturated(said);
        }
        if (near("fats", said, NEAR)) {
            return fat(said);
        }
        return open(said);
    }

    /** How many words to the nearest of a group in the same sentence. */
    private int away(String group, Number said) {
        int least = Integer.MAX_VALUE;
        for (int[] place : heard.places(sight.spotter().slot("@" + group))) {
            if (heard.isOneSentence(place[0], said.first())) {
                least = Math.min(least, Math.min(Math.abs(place[0] - said.last()), Math.abs(place[1] - said.first())));
            }
        }
        return least;
    }

    private Verdict salt(Number said, int away) {
        if (effect.match(said, Topic.SALT, bases(said)) != null) {
            return Verdict.RIGHT;
        }
        boolean fat = sight.hasGroup("fat") && effect.match(said, Topic.SATURATED, bases(said)) != null;
        return fat ? Verdict.RIGHT : effect.isAmount(said) || away > 5 ? Verdict.AMOUNT : Verdict.WRONG;
    }

    private Verdict saturated(Number said) {
        if (effect.match(said, Topic.SATURATED, bases(said)) != null) {
            return Verdict.RIGHT;
        }
        if (near("saturates", said, 4)) {
            return effect.isAmount(said) && !near("plate", said, NEAR) ? Verdict.AMOUNT : Verdict.WRONG;
        }
        return effect.isWeight(said) ? Verdict.RIGHT : effect.isAmount(said) || !near("down", said, 6) ? Verdict.AMOUNT : Verdict.WRONG;
    }

    private Verdict fat(Number said) {
        if (effect.isWeight(said) || effect.match(said, Topic.SATURATED, bases(said)) != null || effect.match(said, Topic.FAT, bases(said)) != null) {
            return Verdict.RIGHT;
        }
        if (effect.isAmount(said)) {
            return Verdict.AMOUNT;
        }
        return said.unit() == Unit.KILO || near("down", said, 6) && near("plate", said, 10) ? Verdict.WRONG : Verdict.OTHER;
    }

    /** A weight of nobody says what: it counts for what the answer is about. */
    private Verdict open(Number said) {
        boolean fat = sight.hasGroup("fat") && effect.match(said, Topic.SATURATED, bases(said)) != null;
        boolean salt = sight.hasGroup("salt") && said.value() < 5 && effect.match(said, Topic.SALT, bases(said)) != null;
        if (effect.isWeight(said) || fat && !effect.isAmount(said) || salt) {
            return Verdict.RIGHT;
        }
        return said.unit() == Unit.KILO ? Verdict.OTHER : Verdict.AMOUNT;
    }

    private Verdict share(Number said) {
        boolean down = near("down", said, NEAR);
        if (down && effect.isShare(said, SHARE_ROOM)) {
            return Verdict.RIGHT;
        }
        boolean ofPlate = near("saturates", said, 6) && near("plate", said, 10) && near("down", said, 5);
        return ofPlate && !effect.isShare(said, SHARE_WRONG) ? Verdict.WRONG : Verdict.OTHER;
    }

    /** A number without a unit counts as one of a pair, "from 28 down to 11". */
    private Verdict bare(int index) {
        Number said = numbers.get(index);
        Number before = index > 0 ? numbers.get(index - 1) : null;
        Number after = index + 1 < numbers.size() ? numbers.get(index + 1) : null;
        boolean paired = before != null && isPair(before, said) || after != null && isPair(said, after);
        if (!paired || !sight.hasGroup("fat") && !sight.hasGroup("salt")) {
            return Verdict.OTHER;
        }
        return effect.match(said, Topic.SATURATED, bases(said)) != null ? Verdict.RIGHT : Verdict.OTHER;
    }

    private boolean isPair(Number one, Number two) {
        boolean weights = isWeightOrBare(one) && isWeightOrBare(two);
        return weights && two.first() - one.last() <= NEAR && heard.isOneSentence(one.first(), two.first())
                && isJoined(one.first() - 2, two.first());
    }

    /** A word such as "from" before the first or "to" before the second. */
    private boolean isJoined(int from, int to) {
        return heard.places(sight.spotter().slot("@pairing")).stream().anyMatch(place -> place[0] >= from && place[1] < to);
    }

    private static boolean isWeightOrBare(Number number) {
        return number.unit() == Unit.BARE || number.unit() == Unit.GRAM;
    }
}
