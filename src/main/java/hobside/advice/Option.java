package hobside.advice;

import java.util.List;

/** A set of wishes of one group, worked out whole: what it adds to the tally of the pot. */
record Option(double[] adds, List<Wish> wishes) {

    static final Option NOTHING = new Option(new double[Tally.SIZE], List.of());
}
