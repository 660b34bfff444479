package hobside.talk.check;

import hobside.ledger.Ledger;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;

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

    /** The place of a section of a talk: the welcome, a step of the ledger, the look back; all others are the whole talk. */
    public static Place of(Talk.Section section, Ledger ledger) {
        return switch (section.part()) {
            case WELCOME -> WELCOME;
            case RECAP -> RECAP;
            case CHANGE -> ofStep(section, ledger);
            case BENCH, WAIT, ASIDE, QUESTIONS, TABLE -> WHOLE;
        };
    }

    private static Place ofStep(Talk.Section section, Ledger ledger) {
        for (int i = 0; i < ledger.steps().size(); i++) {
            if (TalkWriter.key(ledger.steps().get(i).planned().change()).equals(section.key())) {
                return step(i);
            }
        }
        return WHOLE;
    }
}
