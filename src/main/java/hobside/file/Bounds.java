package hobside.file;

/**
 * Between which figures a number must lie, ends included.
 *
 * @param unit what it counts, for the message: "g per 100 g"; empty when it is a bare number
 * @param remedy what to do when it is wrong
 */
record Bounds(double least, double most, String unit, String remedy) {

    static Bounds of(double least, double most, String unit, String remedy) {
        return new Bounds(least, most, unit, remedy);
    }

    boolean hold(double value) {
        return value >= least && value <= most;
    }

    Wanted wanted() {
        String what = unit.isEmpty() ? "" : " (" + unit + ")";
        return Wanted.of("a number from " + Numbers.written(least) + " to " + Numbers.written(most) + what, remedy);
    }
}
