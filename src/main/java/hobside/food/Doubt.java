package hobside.food;

import hobside.measure.Worded;
import java.util.Optional;

/**
 * Something about the figures of a packet that is hard to believe.
 *
 * @param about the figure to look at first
 * @param words what does not fit, why, and how much room was left, in one or two sentences
 */
public record Doubt(Check check, Printed about, String words) {

    /** What is looked at, with its word in files. */
    public enum Check implements Worded {
        /** No figure is above what 100 g can hold. Nothing can overrule this one. */
        AMOUNT("amount"),
        /** What is printed adds up to no more than the food. */
        SUM("sum"),
        /** Energy agrees with what it comes from. */
        ENERGY("energy"),
        /** Kilojoules agree with kilocalories. */
        UNITS("energy-units"),
        /** Saturates, and all fatty acids together, are no more than the fat. */
        FATTY_ACIDS("fatty-acids"),
        /** Sugars are no more than the carbohydrate, and carbohydrate without fibre no more than with it. */
        CARBOHYDRATE("carbohydrate"),
        /** Sodium is neither saltier than any sauce nor less than any packet prints, and agrees with the salt. */
        SODIUM("sodium");

        private final String word;

        Check(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        public static Optional<Check> parse(String word) {
            return Worded.parse(values(), word);
        }
    }

    /** What cannot be, however good the reason. */
    public boolean isImpossible() {
        return check == Check.AMOUNT;
    }

    /** A check that the user overruled for one food, and why the figures are right all the same. */
    public record Overruled(Check check, String reason) {

        public static final int MOST = 200;

        public Overruled {
            if (check == Check.AMOUNT || reason.isBlank() || reason.length() > MOST) {
                throw new IllegalArgumentException("not a reason to overrule " + check + ": " + reason);
            }
        }
    }
}
