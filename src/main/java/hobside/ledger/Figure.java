package hobside.ledger;

import hobside.measure.Range;

/**
 * A figure to be shown: its range, and whether it is only the known part of the truth ("at least").
 *
 * @param range low, typical and high, in the unit of what was asked for
 * @param atLeast true when a food of the dish has no figure or no price for it
 */
public record Figure(Range range, boolean atLeast) {

    public double typical() {
        return range.typical();
    }
}
