package hobside.advice;

import java.util.ArrayList;
import java.util.List;

/**
 * What a search looks for in one frame: what is to be small, and what is limited.
 *
 * @param keys weights, the weightiest first
 * @param free weights of sums that are compared but not limited
 */
record Quest(List<double[]> keys, List<double[]> free, List<Row> rows) {

    /** A food without a price is worth avoiding at any cost: more minor coins a serve than any dish takes. */
    private static final double UNPRICED = 1e7;

    static Quest of(Frame frame, Aim aim, List<Row> rows) {
        return new Quest(keys(frame, aim), List.of(), lifted(frame, rows));
    }

    /** For all plans to which none is better in saturated fat, cost and number of changes. */
    static Quest frontier(Frame frame, List<Row> rows) {
        List<double[]> free = List.of(cost(frame), Tally.weight(Tally.CHANGES, 1));
        return new Quest(List.of(fasat(frame)), free, lifted(frame, rows));
    }

    private static List<Row> lifted(Frame frame, List<Row> rows) {
        List<Row> all = new ArrayList<>(frame.rows());
        rows.forEach(row -> all.add(new Row(frame.before(row.weights()), row.most())));
        return all;
    }

    private static List<double[]> keys(Frame frame, Aim aim) {
        double[] changes = Tally.weight(Tally.CHANGES, 1);
        return switch (aim) {
            case FEWEST_CHANGES -> List.of(changes, cost(frame));
            case LEAST_MONEY -> List.of(money(frame), changes);
            case LEAST_DEPARTURE -> List.of(Tally.weight(Tally.DEPARTURE, 1), changes, cost(frame));
            case MOST_SAVING -> List.of(fasat(frame), changes, cost(frame));
        };
    }

    private static double[] fasat(Frame frame) {
        return frame.before(Tally.weight(Tally.FASAT, 1 / frame.plates()));
    }

    private static double[] cost(Frame frame) {
        return Tally.weight(Tally.COST, 1 / frame.plates());
    }

    private static double[] money(Frame frame) {
        double[] weights = cost(frame);
        weights[Tally.UNPRICED] = UNPRICED;
        return weights;
    }

    /** The minor coins in a first key of the cheapest plan, without what foods without a price are held against it. */
    static double money(long key, List<Wish> wishes) {
        long unpriced = wishes.stream().filter(wish -> !wish.priced()).count();
        return Math.max(0, State.coarse(key) - UNPRICED * unpriced);
    }

    State state(double[] sum, Option took) {
        long[] key = new long[keys.size()];
        for (int i = 0; i < key.length; i++) {
            key[i] = State.fine(Tally.weigh(keys.get(i), sum));
        }
        long[] holds = new long[free.size() + rows.size()];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = State.fine(Tally.weigh(i < free.size() ? free.get(i) : rows.get(i - free.size()).weights(), sum));
        }
        return new State(key, holds, null, took);
    }

    /** Half a millionth more is forgiven, as rounding. */
    private static final long FORGIVEN = 50;

    long most(int hold) {
        return hold < free.size() ? Long.MAX_VALUE / 4 : State.fine(rows.get(hold - free.size()).most()) + FORGIVEN;
    }

    /** How many sums are compared besides the key. */
    int width() {
        return free.size() + rows.size();
    }

    Quest without(List<Row> slack) {
        return new Quest(keys, free, rows.stream().filter(row -> !slack.contains(row)).toList());
    }
}
