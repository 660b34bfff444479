package hobside.practice;

import java.util.Comparator;

/**
 * One line of the log of practice. Lines are only ever added; what they say together is found by putting them together.
 *
 * <p>A line is known by its id: the random name of the machine and a running number.
 */
public sealed interface Entry permits Attempt, Ruling, Erased {

    /** Where a line stands among all: by time, then by id, then by what it says, so that any heap of lines has one order. */
    Comparator<Entry> ORDER = Comparator.comparingLong(Entry::at).thenComparing(Entry::id).thenComparing(Object::toString);

    String id();

    /** The nickname of the trainee it is about. */
    String trainee();

    /** Milliseconds since 1970, UTC. */
    long at();
}
