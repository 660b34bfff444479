package hobside.practice;

import hobside.measure.Range;
import hobside.practice.rubric.Asked;
import java.util.ArrayList;
import java.util.List;

/** What is to be done in an exercise, with what is right. */
public sealed interface Task permits Task.Choose, Task.Arrange, Task.Spot, Task.Explain, Task.Reply, Task.AskBack {

    /** One of several answers; just one is right. */
    record Choose(List<Choice> choices) implements Task {

        public Choose {
            choices = List.copyOf(choices);
            if (choices.stream().filter(Choice::isRight).count() != 1) {
                throw new IllegalArgumentException("not one right answer among " + choices);
            }
        }

        public int right() {
            int at = 0;
            while (!choices.get(at).isRight()) {
                at++;
            }
            return at;
        }

        public Outcome chosen(int index) {
            Choice choice = choices.get(index);
            return new Outcome(choice.isRight() ? 1 : 0, choice.mistake(), List.of(choice.feedback()));
        }
    }

    /** Several changes to be put in order, what saves most first. Those whose ranges touch may stand either way. */
    record Arrange(List<Weighed> rows, Told told) implements Task {

        /** A change and what it saves of saturated fat on a plate, in grams; the figure as it is written. */
        public record Weighed(String words, Range saved, String figure) {}

        /** What is said when the order stands, and when it does not. */
        public record Told(String right, String wrong) {}

        public static final String LARGEST_MISSED = "order-largest";
        public static final String SWAPPED = "order-swapped";

        public Arrange {
            rows = List.copyOf(rows);
        }

        /** Whether one surely saves more than the other. */
        public static boolean isMore(Weighed one, Weighed other) {
            return one.saved().low() > other.saved().high();
        }

        /** The rows by their typical saving, the largest first. */
        public List<Weighed> expected() {
            List<Weighed> sorted = new ArrayList<>(rows);
            sorted.sort((one, other) -> Double.compare(other.saved().typical(), one.saved().typical()));
            return List.copyOf(sorted);
        }

        /** The score is the share of the pairs with a sure order that stand in it. */
        public Outcome arranged(List<Weighed> order) {
            int sure = 0;
            int wrong = 0;
            for (int i = 0; i < order.size(); i++) {
                for (int j = i + 1; j < order.size(); j++) {
                    boolean inverted = isMore(order.get(j), order.get(i));
                    sure += inverted || isMore(order.get(i), order.get(j)) ? 1 : 0;
                    wrong += inverted ? 1 : 0;
                }
            }
            Weighed largest = expected().get(0);
            String mistake = wrong == 0 ? "" : isMore(largest, order.get(0)) ? LARGEST_MISSED : SWAPPED;
            return new Outcome(sure == 0 ? 1 : 1 - (double) wrong / sure, mistake, List.of(wrong == 0 ? told.right() : told.wrong()));
        }
    }

    /**
     * A few sentences of a talk with one planted fault. First the sentence is chosen, then what is wrong with it.
     *
     * @param sentences the last one stands for "something is missing"
     * @param faulty which of them it is
     * @param planted what is wrong with it
     */
    record Spot(List<String> sentences, int faulty, Fault planted, Choose faults) implements Task {

        public static final String OVERLOOKED = "spot-";

        public Spot {
            sentences = List.copyOf(sentences);
            if (faulty < 0 || faulty >= sentences.size()) {
                throw new IllegalArgumentException("no sentence " + faulty);
            }
        }

        /** Half for the sentence, half for what is wrong; the kind of fault that was not seen is the misunderstanding. */
        public Outcome spotted(int sentence, int fault) {
            boolean found = sentence == faulty;
            boolean named = faults.choices().get(fault).isRight();
            String mistake = found && named ? "" : OVERLOOKED + planted.word();
            return new Outcome((found ? 0.5 : 0) + (named ? 0.5 : 0), mistake, List.of(faults.choices().get(fault).feedback()));
        }
    }

    /** A change to be explained in own words, typed or spoken. Its points are those of the rubric. */
    record Explain(String change) implements Task {}

    /** A question or a wrong claim to be answered in own words, typed or spoken. */
    record Reply(Asked asked) implements Task {}

    /** A question to be asked back, so that the listener tells it in own words. */
    record AskBack(OpenQuestion rules, String model) implements Task {}
}
