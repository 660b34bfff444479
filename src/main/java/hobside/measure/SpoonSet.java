package hobside.measure;

import java.util.Optional;

/**
 * Whose cups and spoons a dish is written in, as millilitres.
 *
 * <p>Sources: metric cup 250 and teaspoon 5 are common practice; tablespoon 20 in Australia and 15 elsewhere; US customary
 * units by definition (1 US gallon = 231 cubic inches); US label cup 240 mL, 21 CFR 101.9(b)(5)(viii).
 */
public enum SpoonSet implements Worded {
    METRIC("metric", 250, 15, 5),
    AUSTRALIAN("australian", 250, 20, 5),
    US("us", 236.5882365, 14.78676478125, 4.92892159375),
    US_LABEL("us-label", 240, 15, 5);

    private final String word;
    private final double cup;
    private final double tablespoon;
    private final double teaspoon;

    SpoonSet(String word, double cup, double tablespoon, double teaspoon) {
        this.word = word;
        this.cup = cup;
        this.tablespoon = tablespoon;
        this.teaspoon = teaspoon;
    }

    @Override
    public String word() {
        return word;
    }

    public Millilitres cup() {
        return Millilitres.of(cup);
    }

    public Millilitres tablespoon() {
        return Millilitres.of(tablespoon);
    }

    public Millilitres teaspoon() {
        return Millilitres.of(teaspoon);
    }

    /** The volume of one of a unit, or nothing when the unit is no volume. Litre and millilitre are the same for everybody. */
    public Optional<Millilitres> volumeOf(String unit) {
        return switch (unit) {
            case "cup" -> Optional.of(cup());
            case "tbsp" -> Optional.of(tablespoon());
            case "tsp" -> Optional.of(teaspoon());
            case "ml" -> Optional.of(Millilitres.of(1));
            case "l" -> Optional.of(Millilitres.of(1000));
            default -> Optional.empty();
        };
    }

    public static Optional<SpoonSet> parse(String word) {
        return Worded.parse(values(), word);
    }
}
