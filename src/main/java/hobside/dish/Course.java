package hobside.dish;

import java.util.Optional;

/**
 * How a step of the method runs in the kitchen; empty where it runs as steps of its stage usually do.
 *
 * @param hands minutes for which hands are busy with it
 * @param on what it stands on
 * @param meanwhile whether it need not wait for the step before it: it may go on beside that step
 */
public record Course(Optional<Integer> hands, Optional<Station> on, boolean meanwhile) {

    public static final Course USUAL = new Course(Optional.empty(), Optional.empty(), false);

    public Course {
        if (hands.isPresent() && hands.get() < 0) {
            throw new IllegalArgumentException("hands cannot be busy for " + hands.get() + " minutes");
        }
    }

    public Course handsFor(int minutes) {
        return new Course(Optional.of(minutes), on, meanwhile);
    }

    public Course on(Station place) {
        return new Course(hands, Optional.of(place), meanwhile);
    }

    public Course meanwhile(boolean yes) {
        return new Course(hands, on, yes);
    }
}
