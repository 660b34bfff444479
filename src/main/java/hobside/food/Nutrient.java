package hobside.food;

import java.util.Arrays;
import java.util.Optional;

/**
 * One component of a food under its INFOODS tagname, the open standard of food composition tables, with its unit.
 *
 * <p>ENERC is energy in kJ; ENERC_KCAL the same in kcal, kept beside it because published methods sum each by its own factors.
 * CHOCDF is carbohydrate by difference, fibre included.
 */
public enum Nutrient {
    ENERC("energy", "kJ"),
    ENERC_KCAL("energy", "kcal"),
    WATER("water", "g"),
    PROCNT("protein", "g"),
    FAT("fat", "g"),
    FASAT("saturated fat", "g"),
    FAMS("monounsaturated fat", "g"),
    FAPU("polyunsaturated fat", "g"),
    FATRN("trans fat", "g"),
    CHOCDF("carbohydrate", "g"),
    SUGAR("sugars", "g"),
    FIBTG("fibre", "g"),
    ALC("alcohol", "g"),
    NA("sodium", "mg"),
    CHOLE("cholesterol", "mg");

    /** How many there are; the length of every row of figures. */
    static final int COUNT = values().length;

    private final String word;
    private final String unit;

    Nutrient(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    public String word() {
        return word;
    }

    public String unit() {
        return unit;
    }

    /** What goes with melted fat: the fat itself, its fatty acids and its energy. */
    boolean isFat() {
        return this == FAT || this == FASAT || this == FAMS || this == FAPU || this == FATRN;
    }

    /** The most that 100 g of any food can hold: pure fat for energy, 100 g for the rest, and salt for sodium. */
    public double most() {
        return switch (this) {
            case ENERC -> 3800;
            case ENERC_KCAL -> 910;
            case NA -> 40_000;
            case CHOLE -> 4_000;
            case WATER, PROCNT, FAT, FASAT, FAMS, FAPU, FATRN, CHOCDF, SUGAR, FIBTG, ALC -> 100;
        };
    }

    public static Optional<Nutrient> parse(String tagname) {
        return Arrays.stream(values()).filter(nutrient -> nutrient.name().equals(tagname)).findFirst();
    }
}
