package hobside.ledger;

/** For how much of the dish a figure is told: one serve, the whole pot, or 100 g as cooked. */
public enum Basis {
    SERVE("a serve"),
    POT("the pot"),
    HUNDRED_GRAMS("100 g as cooked");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The share of the whole pot that this basis is. */
    double share(Outcome outcome) {
        return switch (this) {
            case SERVE -> outcome.serveSize() / outcome.serves();
            case POT -> 1;
            case HUNDRED_GRAMS -> outcome.cookedGrams() > 0 ? 100 / outcome.cookedGrams() : 0;
        };
    }
}
