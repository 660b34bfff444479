package hobside.practice;

import hobside.dish.Change;
import hobside.dish.Item;
import hobside.dish.Reason;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Step;
import hobside.measure.Range;
import hobside.talk.Rounded;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Exercises in guessing: which way a figure goes, by how much, and what a change leaves as it is. */
final class Guesses {

    private static final List<Facet> BESIDE = List.of(Facet.ENERGY, Facet.COST, Facet.SALT);

    private static final String NOTHING = "nothing";

    private final Lesson lesson;
    private final Label label;
    private final Dice dice;
    private final Figured figured;

    private Guesses(Lesson lesson, Label label) {
        this.lesson = lesson;
        this.label = label;
        this.dice = Dice.of(label);
        this.figured = new Figured(lesson);
    }

    static Optional<Exercise> draw(Lesson lesson, Label label) {
        List<Step> steps = lesson.steps(label.topic());
        return steps.isEmpty() ? Optional.empty() : new Guesses(lesson, label).of(steps.get(0));
    }

    private Optional<Exercise> of(Step step) {
        return switch (label.level()) {
            case 1 -> direction(step, Facet.SATURATED);
            case 2 -> direction(step, dice.one(BESIDE));
            case 3 -> amount(step, Facet.SATURATED, 3);
            case 4 -> amount(step, dice.one(List.of(Facet.SATURATED, Facet.ENERGY, Facet.COST)), 4);
            default -> dice.below(2) == 0 ? odd(step) : amount(step, Facet.SATURATED, 5);
        };
    }

    private Exercise exercise(Step step, String asked, List<Choice> choices) {
        Exercise.Prompt prompt = new Exercise.Prompt(lesson.scene(step), asked);
        return new Exercise(label, prompt, new Task.Choose(dice.shuffled(choices)), List.of(not(step)));
    }

    /** What the change does not do, in the words of the swap book. */
    private String not(Step step) {
        Reason reason = Reason.of(step.planned().change(), lesson.demo().dish(), lesson.stand().beside().substitutes(), lesson.words());
        return lesson.say("truth.not", Map.of("not", reason.not()));
    }

    private String asked(String key, Step step, Facet facet) {
        return lesson.say("guess." + key, Map.of("title", lesson.title(step.planned().change()), "what", lesson.say("facet." + facet.word())));
    }

    private Optional<Exercise> direction(Step step, Facet facet) {
        return facet.way(step.told()).map(way -> {
            List<Choice> choices = new ArrayList<>();
            for (Facet.Way each : Facet.Way.values()) {
                choices.add(choice(lesson.say("way." + each.word()), each == way ? "" : facet.word() + "-" + each.word(), figured.truth(facet, step.told())));
            }
            return exercise(step, asked("way", step, facet), choices);
        });
    }

    /** The truth, and in front of it what the mistake was. */
    private Choice choice(String words, String mistake, String truth) {
        String name = mistake.isEmpty() ? lesson.say("yes") : lesson.say("no." + mistake);
        return new Choice(words, mistake, name + " " + truth);
    }

    /** A wrong figure and the misunderstanding that leads to it. */
    private record Wrong(String mistake, double saved) {}

    private Optional<Exercise> amount(Step step, Facet facet, int most) {
        Range saved = facet.saved(step.told());
        boolean moves = facet.way(step.told()).filter(way -> way != Facet.Way.STAYS).isPresent();
        if (!moves) {
            return Optional.empty();
        }
        Set<String> taken = new HashSet<>();
        List<Choice> choices = new ArrayList<>();
        choices.add(choice(figured.moved(facet, saved.typical(), saved), "", figured.truth(facet, step.told())));
        taken.add(choices.get(0).words());
        for (Wrong wrong : dice.shuffled(wrong(step, facet))) {
            String words = figured.moved(facet, wrong.saved(), saved);
            if (choices.size() < most && isWrong(wrong.saved(), saved, facet) && taken.add(words)) {
                choices.add(choice(words, wrong.mistake(), figured.truth(facet, step.told())));
            }
        }
        return choices.size() < 3 ? Optional.empty() : Optional.of(exercise(step, asked("amount", step, facet), choices));
    }

    /** Beyond the true range by more than rounding for the ear can blur. */
    private static boolean isWrong(double value, Range saved, Facet facet) {
        double finest = facet == Facet.SATURATED ? 0.5 : facet == Facet.ENERGY ? 10 : 5;
        double blur = Rounded.step(saved, finest);
        return value < saved.low() - blur || value > saved.high() + blur;
    }

    private List<Wrong> wrong(Step step, Facet facet) {
        double saved = facet.saved(step.told()).typical();
        List<Wrong> all = new ArrayList<>();
        all.add(new Wrong("wrong-way", -saved));
        all.add(new Wrong(NOTHING, 0));
        all.add(new Wrong("twice", 2 * saved));
        all.add(new Wrong("whole-plan", facet.saved(lesson.stand().ledger().whole()).typical()));
        all.add(new Wrong("whole-pot", pot(step.told(), facet)));
        if (facet == Facet.SATURATED) {
            all.add(new Wrong("all-fat", step.told().saved(Nutrient.FAT, Basis.SERVE).typical()));
            all.add(new Wrong("all-of-it", allOf(step)));
        }
        if (facet == Facet.ENERGY) {
            all.add(new Wrong("kilojoules", step.told().saved(Nutrient.ENERC, Basis.SERVE).typical()));
        }
        // A misunderstanding that comes to nothing here would be told as one, and be "nothing".
        all.removeIf(each -> each.saved() == 0 && !each.mistake().equals(NOTHING));
        return all;
    }

    private static double pot(Comparison told, Facet facet) {
        return switch (facet) {
            case SATURATED -> told.saved(Nutrient.FASAT, Basis.POT).typical();
            case ENERGY -> told.saved(Nutrient.ENERC_KCAL, Basis.POT).typical();
            case COST -> told.savedCost(Basis.POT).typical();
            case SALT -> throw new IllegalArgumentException("the salt of a pot is not asked for");
        };
    }

    /** All the saturated fat that the food of this change brings to a plate, as if none of it stayed. */
    private double allOf(Step step) {
        Change change = step.planned().change();
        double serves = lesson.stand().pots().before().serves();
        return lesson.stand().pots().before().item(change.of()).map(Item::inDish).map(dish -> dish.contents().known(Nutrient.FASAT) / serves).orElse(0.0);
    }

    /** Exactly one of the figures of the plate does something that the others do not: stays, or goes up. */
    private Optional<Exercise> odd(Step step) {
        for (Facet.Way way : dice.shuffled(List.of(Facet.Way.STAYS, Facet.Way.UP))) {
            List<Facet> those = new ArrayList<>();
            boolean open = false;
            for (Facet facet : Facet.values()) {
                Optional<Facet.Way> goes = facet.way(step.told());
                open |= goes.isEmpty();
                if (goes.isPresent() && goes.get() == way) {
                    those.add(facet);
                }
            }
            if (!open && those.size() == 1) {
                return Optional.of(odd(step, way, those.get(0)));
            }
        }
        return Optional.empty();
    }

    private Exercise odd(Step step, Facet.Way way, Facet right) {
        List<Choice> choices = new ArrayList<>();
        for (Facet facet : Facet.values()) {
            String mistake = facet == right ? "" : facet.word() + "-" + way.word();
            choices.add(choice(lesson.say("facet." + facet.word()), mistake, figured.truth(facet, step.told())));
        }
        return exercise(step, lesson.say("guess.odd-" + way.word(), Map.of("title", lesson.title(step.planned().change()))), choices);
    }
}
