package hobside.practice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.ledger.Step;
import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Exercises in showing: which thing, held up, makes a change visible. */
final class Shows {

    /** Things by what they make visible; two of one row could both do, so they are never set against each other. */
    private static final List<List<String>> ALIKE = List.of(
            List.of("scale", "plate"),
            List.of("sieve-bowl", "jar", "jug"),
            List.of("two-bowls", "ladles"),
            List.of("plates"));

    private Shows() {}

    static Optional<Exercise> draw(Lesson lesson, Label label) {
        for (Step step : lesson.steps(label.topic())) {
            Optional<Talk.Section> section = lesson.section(step.planned().change());
            Optional<Cue> show = section.flatMap(known -> known.cues().stream().filter(cue -> !cue.details().needs().props().isEmpty()).findFirst());
            if (show.isPresent()) {
                return Optional.of(exercise(lesson, label, step, show.get()));
            }
        }
        return Optional.empty();
    }

    private static Exercise exercise(Lesson lesson, Label label, Step step, Cue show) {
        Dice dice = Dice.of(label);
        String right = show.details().needs().props().get(0);
        String truth = lesson.say("show.truth", Map.of("show", show.words()));
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(right, "", lesson.say("yes") + " " + truth));
        for (List<String> row : dice.shuffled(ALIKE)) {
            boolean alike = row.stream().anyMatch(thing -> named(lesson, thing).equals(right)) || isComparing(step.planned().change(), row);
            if (!alike && choices.size() < 3 + (label.level() > 2 ? 1 : 0)) {
                choices.add(new Choice(named(lesson, dice.one(row)), "prop-" + row.get(0), lesson.say("no.prop-" + row.get(0)) + " " + truth));
            }
        }
        String asked = lesson.say("show.ask", Map.of("title", lesson.title(step.planned().change())));
        return new Exercise(label, new Exercise.Prompt(lesson.scene(step), asked), new Task.Choose(dice.shuffled(choices)), List.of());
    }

    /** Where two things are set side by side, two bowls would do as well. */
    private static boolean isComparing(Change change, List<String> row) {
        return change.kind() == ChangeKind.SWAP && row.contains("two-bowls");
    }

    private static String named(Lesson lesson, String thing) {
        return lesson.words().say("talk.need." + thing);
    }
}
