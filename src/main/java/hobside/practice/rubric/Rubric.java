package hobside.practice.rubric;

import hobside.practice.rubric.Sight.Ground;
import hobside.talk.check.Facts;
import hobside.talk.check.Finding;
import hobside.talk.check.Place;
import hobside.talk.check.TruthCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Judges what a trainee wrote about one subject, point by point. It finds words and figures, not meaning: each mark names the very
 * words it rests on, and where it cannot tell it says so.
 */
public final class Rubric {

    private final Subject subject;
    private final Rules rules;
    private final Spotter spotter;
    private final TruthCheck check;
    private final Place place;
    private final Numbers numbers;
    private final Model model;
    private final Optional<Effect> effect;

    private Rubric(Subject subject, Rules rules) {
        this.subject = subject;
        this.rules = rules;
        this.spotter = Spotter.of(rules.concepts(), subject.foods());
        this.check = TruthCheck.of(Facts.of(subject.stand(), rules.book()));
        this.place = subject.told().map(told -> Place.step(told.index())).orElse(Place.WHOLE);
        this.numbers = new Numbers(spotter, rules.concepts());
        this.model = Models.of(subject);
        this.effect = subject.told().map(told -> Effect.of(subject.stand(), told));
    }

    public static Rubric of(Subject subject, Rules rules) {
        return new Rubric(subject, rules);
    }

    /** An answer that would do. */
    public Model model() {
        return model;
    }

    /** Each point of the rubric for one answer. */
    public Feedback mark(String answer) {
        Heard heard = spotter.hear(answer);
        List<Finding> truth = check.check(heard.text().read(), place);
        Sight sight = new Sight(subject, spotter, heard, truth);
        List<Judged> points = new ArrayList<>(subject.told().map(told -> explained(sight, told)).orElseGet(() -> answered(sight)));
        points.add(Manner.plain(sight, rules));
        points.add(Manner.respect(sight));
        points.add(Manner.length(sight));
        return new Feedback(points, truth, model);
    }

    private List<Judged> explained(Sight sight, Subject.Told told) {
        Effect known = effect.orElseThrow();
        return List.of(Deed.of(sight, told), Grounds.why(sight, told), HowMuch.of(sight, known, numbers.in(sight.heard())),
                Grounds.not(sight, told, known), Grounds.safety(sight, told), none(sight, Point.TRUE));
    }

    private List<Judged> answered(Sight sight) {
        List<Judged> three = Answered.of(sight, subject.asked().orElseThrow(), numbers.in(sight.heard()));
        return List.of(three.get(0), three.get(1), none(sight, Point.HOW_MUCH), none(sight, Point.NOT), none(sight, Point.SAFETY), three.get(2));
    }

    private static Judged none(Sight sight, Point point) {
        return sight.judged(point, Mark.NONE, Ground.of(List.of(), "none", Sight.COUNTED));
    }
}
