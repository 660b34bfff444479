package hobside.practice;

import hobside.ledger.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Exercises in asking back: an open question, so that the listener tells the change in own words. */
final class TeachBacks {

    private static final int WAYS = 3;

    /** From this level on the question is in own words. */
    private static final int IN_OWN_WORDS = 4;

    private TeachBacks() {}

    static Optional<Exercise> draw(Lesson lesson, Label label) {
        return lesson.steps(label.topic()).stream().findFirst().map(step -> exercise(lesson, label, step));
    }

    private static Exercise exercise(Lesson lesson, Label label, Step step) {
        Dice dice = Dice.of(label);
        Map<String, String> title = Map.of("title", lesson.title(step.planned().change()));
        Exercise.Prompt prompt = new Exercise.Prompt(lesson.scene(step), lesson.say("teach.ask", title));
        String model = lesson.say("teach.open." + (1 + dice.below(WAYS)), title);
        if (label.level() >= IN_OWN_WORDS) {
            return new Exercise(label, prompt, new Task.AskBack(OpenQuestion.in(lesson.words()), model), List.of(lesson.say("teach.why")));
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(model, "", lesson.say("yes") + " " + lesson.say("teach.why")));
        for (String wrong : List.of("closed", "leading")) {
            choices.add(new Choice(lesson.say("teach." + wrong + "." + (1 + dice.below(WAYS)), title), "asks-" + wrong, lesson.say("no.asks-" + wrong)));
        }
        return new Exercise(label, prompt, new Task.Choose(dice.shuffled(choices)), List.of());
    }
}
