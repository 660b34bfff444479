package hobside.practice.rubric;

import hobside.talk.check.Finding;
import java.util.List;

/**
 * All that is said of one answer: each point in its order, what the truth check found, and an answer that would do.
 *
 * @param truth findings of the truth check, which reads English alone
 */
public record Feedback(List<Judged> points, List<Finding> truth, Model model) {

    public Feedback {
        points = List.copyOf(points);
        truth = List.copyOf(truth);
    }

    public Judged of(Point point) {
        return points.stream().filter(judged -> judged.point() == point).findFirst().orElseThrow();
    }

    /** With the mark of a person for one point; that of the rubric stays beside it. */
    public Feedback overruled(Point point, Mark mark) {
        return new Feedback(points.stream().map(judged -> judged.point() == point ? judged.overruledBy(mark) : judged).toList(), truth, model);
    }
}
