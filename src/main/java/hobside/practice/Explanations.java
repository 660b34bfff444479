package hobside.practice;

import hobside.ledger.Comparison;
import hobside.ledger.Step;
import hobside.talk.TalkWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Exercises in explaining a change in own words. What has to be in it is the rubric's to say. */
final class Explanations {

    private Explanations() {}

    static Optional<Exercise> draw(Lesson lesson, Label label) {
        return lesson.steps(label.topic()).stream().findFirst().filter(step -> doesSomething(step.told())).map(step -> exercise(lesson, label, step));
    }

    /** A change that does nothing in this pot is no good one to begin explaining with; myths are practised elsewhere. */
    static boolean doesSomething(Comparison told) {
        return Arrays.stream(Facet.values()).anyMatch(facet -> facet.way(told).filter(way -> way == Facet.Way.DOWN).isPresent());
    }

    private static Exercise exercise(Lesson lesson, Label label, Step step) {
        String asked = lesson.say("explain.ask." + label.level(), Map.of("title", lesson.title(step.planned().change())));
        return new Exercise(label, new Exercise.Prompt(lesson.scene(step), asked), new Task.Explain(TalkWriter.key(step.planned().change())), List.of());
    }
}
