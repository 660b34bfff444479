package hobside.ledger;

/**
 * What one change deserves of the whole saving, and how sure that is.
 *
 * @param share in the unit of the figure that was asked for; negative when the change brings more of it
 * @param error the standard error of a sampled share, in the same unit; 0 when it is exact
 * @param exact whether every set of changes was worked out, or only a sample of the orders of telling
 */
public record FairShare(double share, double error, boolean exact) {

    static FairShare exactly(double share) {
        return new FairShare(share, 0, true);
    }

    /** The same with another share, as when the rest of a rounding is put somewhere. */
    FairShare with(double other) {
        return new FairShare(other, error, exact);
    }
}
