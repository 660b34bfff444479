package hobside.practice.rubric;

import hobside.measure.Range;

/**
 * A number in an answer.
 *
 * @param value in the unit said; grams for weights, whole coins for money, 0 to 1 for a share
 * @param fine how finely it was said: half a step of its last digit that counts
 * @param first its first word in the answer, and {@code last} its last one, the unit's
 */
record Number(double value, double fine, int first, int last, Unit unit, Hedge hedge) {

    /** What stands behind it. */
    enum Unit { GRAM, KILO, MILLIGRAM, KILOCALORIE, KILOJOULE, COIN, TEASPOON, KITCHEN, SHARE, BARE }

    /** What stands before it. */
    enum Hedge { NONE, ABOUT, UNDER, NEARLY, MORE }

    private static final double HALF_AS_MUCH = 1.5;

    boolean fits(Range range, double slack) {
        double room = hedge == Hedge.NONE ? slack : Math.max(slack, value * 0.08);
        boolean within = value >= range.low() - room && value <= range.high() + room;
        return within || switch (hedge) {
            case NONE, ABOUT -> false;
            case MORE -> range.typical() >= value && range.typical() <= value * HALF_AS_MUCH;
            case NEARLY -> range.typical() <= value && range.typical() * 1.25 >= value;
            case UNDER -> range.typical() <= value && (value <= 1 || range.typical() * HALF_AS_MUCH >= value);
        };
    }
}
