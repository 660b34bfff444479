package hobside.dish;

/**
 * What was bought for one ingredient and where it went: weights as bought, and what was taken out of the dish.
 *
 * @param bought grams as bought that are charged to this dish
 * @param kept grams as bought that are left over for another dish and not charged
 * @param thrown what was paid for and thrown away
 * @param leftover what the kept part holds
 */
record Paid(double bought, double kept, Portion thrown, Portion leftover) {

    static Paid of(double bought) {
        return new Paid(bought, 0, Portion.NONE, Portion.NONE);
    }

    Paid times(double factor) {
        return new Paid(bought * factor, kept * factor, thrown.times(factor), leftover.times(factor));
    }

    Paid throwing(Portion more) {
        return new Paid(bought, kept, thrown.plus(more), leftover);
    }

    /** A share of it is put by for another dish. */
    Paid keeping(double share, Portion what) {
        return new Paid(bought * (1 - share), kept + bought * share, thrown, leftover.plus(what));
    }
}
