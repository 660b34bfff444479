package hobside.practice;

import hobside.advice.Offer;
import hobside.dish.Change;
import hobside.dish.Plan;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Exercises in ordering: which change saves most, each made alone on the dish as it is cooked. */
final class Orders {

    /** Grams of saturated fat a plate; less is not asked for. */
    private static final double WORTH = 0.25;

    private final Lesson lesson;
    private final Label label;
    private final Dice dice;

    private Orders(Lesson lesson, Label label) {
        this.lesson = lesson;
        this.label = label;
        this.dice = Dice.of(label);
    }

    static Optional<Exercise> draw(Lesson lesson, Label label, Pool pool) {
        return new Orders(lesson, label).of(pool);
    }

    /** Three rows on the first levels, four and five later. */
    private int rows() {
        return Math.max(3, Math.min(5, label.level()));
    }

    private Optional<Exercise> of(Pool pool) {
        List<Task.Arrange.Weighed> rows = new ArrayList<>();
        Set<String> slots = new HashSet<>();
        Set<String> words = new HashSet<>();
        for (Offer offer : dice.shuffled(pool.offers())) {
            Figure saved = offer.effect().saved(Nutrient.FASAT, Basis.SERVE);
            boolean worth = !saved.atLeast() && saved.range().low() > WORTH;
            if (rows.size() < rows() && worth && slots.add(offer.change().of()) && words.add(titled(offer.change()))) {
                rows.add(new Task.Arrange.Weighed(titled(offer.change()), saved.range(), written(saved.range())));
            }
        }
        return rows.size() < rows() || sure(rows) < rows() - 1 ? Optional.empty() : Optional.of(exercise(rows));
    }

    /** Told as in a plan of its own, where a food that it brings in is known by its name. */
    private String titled(Change change) {
        return Lesson.of(lesson.demo().with(Plan.EMPTY.with(change)), lesson.with()).title(change);
    }

    /** How many pairs have a sure order. */
    private static int sure(List<Task.Arrange.Weighed> rows) {
        int sure = 0;
        for (Task.Arrange.Weighed one : rows) {
            for (Task.Arrange.Weighed other : rows) {
                sure += Task.Arrange.isMore(one, other) ? 1 : 0;
            }
        }
        return sure;
    }

    private String written(Range saved) {
        boolean exact = gram(saved.low()).equals(gram(saved.high()));
        return exact ? gram(saved.typical())
                : lesson.say("order.figure", Map.of("figure", gram(saved.typical()), "low", gram(saved.low()), "high", gram(saved.high())));
    }

    private String gram(double value) {
        return lesson.called().figure(Nutrient.FASAT, new Figure(Range.exactly(value), false));
    }

    private Exercise exercise(List<Task.Arrange.Weighed> rows) {
        Task.Arrange first = new Task.Arrange(rows, new Task.Arrange.Told("", ""));
        String order = first.expected().stream().map(row -> row.words() + ": " + row.figure()).collect(Collectors.joining("; "));
        Task.Arrange.Told told = new Task.Arrange.Told(lesson.say("order.right", Map.of("order", order)), lesson.say("order.wrong", Map.of("order", order)));
        return new Exercise(label, new Exercise.Prompt(lesson.scene(), lesson.say("order.ask")), new Task.Arrange(rows, told), List.of(lesson.say("order.range")));
    }
}
