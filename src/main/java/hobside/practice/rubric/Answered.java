package hobside.practice.rubric;

import hobside.practice.rubric.Sight.Ground;
import hobside.talk.check.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An answer to a question: whether it answers, why, and whether it is true. */
final class Answered {

    private final Sight sight;
    private final Asked asked;
    private final String key;
    private final List<Number> numbers;
    private final boolean known;
    private final Optional<Found> echoed;

    private Answered(Sight sight, Asked asked, List<Number> numbers) {
        Spotter spotter = sight.spotter();
        this.numbers = numbers;
        this.sight = sight;
        this.asked = asked;
        this.key = "answer." + asked.key();
        this.known = spotter.knows(key);
        this.echoed = Echo.of(asked.prepared(), spotter, sight.heard())
                .map(span -> sight.heard().text().found(span[0], span[1], sight.say("found.answer")));
    }

    static List<Judged> of(Sight sight, Asked asked, List<Number> numbers) {
        Answered answered = new Answered(sight, asked, numbers);
        return List.of(answered.what(), answered.why(), answered.isTrue());
    }

    private String look() {
        return asked.prepared().isBlank() ? sight.say("look.answer-own") : sight.say("look.answer", Map.of("answer", asked.prepared()));
    }

    private List<Found> wrong() {
        List<Found> found = new ArrayList<>(sight.all(key + ".wrong", "untrue"));
        found.addAll(sight.all("answer.untrue", "untrue"));
        sight.truth().stream().filter(this::counts)
                .forEach(finding -> found.add(new Found(finding.from(), finding.to(), finding.found(), sight.say("found.untrue"))));
        return found;
    }

    /** A figure without a unit may be of anything the question brings up, so it does not count. */
    private boolean counts(Finding finding) {
        return switch (finding.kind()) {
            case SHAME, CAUTION -> false;
            case ABSOLUTE, PROMISE, CLAIM, BASIS -> true;
            case NUMBER -> numbers.stream().filter(number -> number.unit() != Number.Unit.BARE && number.unit() != Number.Unit.SHARE)
                    .map(number -> sight.heard().text().found(number.first(), number.last(), ""))
                    .anyMatch(found -> found.from() < finding.to() && finding.from() < found.to());
        };
    }

    private Judged what() {
        Optional<Found> said = sight.found(known ? key : "answer.yes-no", "answer").or(() -> echoed).or(() -> sight.found(key + ".wrong", "answer"));
        if (said.isPresent()) {
            return sight.judged(Point.WHAT, Mark.YES, Ground.of(List.of(said.get()), "answer-yes", known ? Sight.LIKELY : Sight.THIN));
        }
        boolean open = !known && sight.isTopical();
        return sight.judged(Point.WHAT, open ? Mark.UNSURE : Mark.NO, Ground.of(List.of(), open ? "answer-unsure" : "answer-no", Sight.LIKELY).missing(look()));
    }

    private Judged why() {
        Optional<Found> said = sight.found(key + ".why", "why").or(() -> echoed);
        List<Found> wrong = wrong();
        if (!wrong.isEmpty()) {
            return sight.judged(Point.WHY, Mark.NO, Ground.of(wrong, "why-wrong", Sight.LIKELY).missing(look()));
        }
        if (said.isPresent()) {
            return sight.judged(Point.WHY, Mark.YES, Ground.of(List.of(said.get()), "why-yes", Sight.LIKELY));
        }
        boolean open = !known && sight.isTopical();
        return sight.judged(Point.WHY, open ? Mark.UNSURE : Mark.NO, Ground.of(List.of(), open ? "why-unsure" : "why-no", Sight.LIKELY).missing(look()));
    }

    private Judged isTrue() {
        List<Found> wrong = wrong();
        Mark mark = wrong.isEmpty() ? Mark.YES : Mark.NO;
        return sight.judged(Point.TRUE, mark, Ground.of(wrong, wrong.isEmpty() ? "true-yes" : "true-no", Sight.LIKELY).missing(look()));
    }
}
