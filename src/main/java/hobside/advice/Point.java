package hobside.advice;

/**
 * A plan to which no other is better in one of three things without being worse in another.
 *
 * @param fasat grams of saturated fat a serve
 * @param cost minor coins a serve
 * @param changes how many changes are added
 */
public record Point(Advised plan, double fasat, double cost, int changes) {}
