package hobside.talk.check;

import hobside.ledger.Ledger;
import hobside.ledger.Step;

/**
 * Where in a talk something is said, which decides what figures it can mean.
 *
 * @param step for a step its index in the ledger, from 0; else -1
 */
public record Place(Kind kind, int step) {

    /** The stretches of a talk. */
    public enum Kind {
        /** Anywhere: any figure of the ledger will do. */
        WHOLE,
        /** The welcome, where the board shows the start. */
        WELCOME,
        /** One change. */
        STEP,
        /** The look back: start and end. */
        RECAP
    }

    public static final Place WHOLE = new Place(Kind.WHOLE, -1);
    public static final Place WELCOME = new Place(Kind.WELCOME, -1);
    public static final Place RECAP = new Place(Kind.RECAP, -1);

    public Place {
        if ((kind == Kind.STEP) != (step >= 0)) {
            throw new IllegalArgumentException("no place: " + kind + " " + step);
        }
    }

    /** The row of the ledger with this index, from 0. */
    public static Place step(int index) {
        return new Place(Kind.STEP, index);
    }

    /** The place of a section of a talk by its heading: "Welcome", "Change 2: ...", "Looking back"; all others are the whole talk. */
    public static Place ofHeading(String heading, Ledger ledger) {
        if (heading.equals("Welcome")) {
            return WELCOME;
        }
        if (heading.equals("Looking back")) {
            return RECAP;
        }
        int number = heading.startsWith("Change ") ? digits(heading, "Change ".length()) : 0;
        for (int i = 0; number > 0 && i < ledger.steps().size(); i++) {
            Step step = ledger.steps().get(i);
            number -= step.counts() ? 1 : 0;
            if (number == 0) {
                return step(i);
            }
        }
        return WHOLE;
    }

    private static int digits(String text, int from) {
        int value = 0;
        for (int i = from; i < text.length() && value < 1000 && text.charAt(i) >= '0' && text.charAt(i) <= '9'; i++) {
            value = value * 10 + text.charAt(i) - '0';
        }
        return value;
    }
}
