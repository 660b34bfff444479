package hobside.food;

import hobside.measure.Worded;
import java.util.Arrays;
import java.util.Optional;

/**
 * One figure that the panel of a food packet may print, under its INFOODS tagname and in the unit packets use.
 *
 * <p>Three things are printed in two ways, and either will do: energy in kJ or kcal; carbohydrate without fibre (CHOAVL: Europe,
 * Australia, New Zealand) or with it (CHOCDF: North America); salt in g (NACL) or sodium in mg.
 */
public enum Printed implements Worded {
    KILOJOULES("ENERC", "energy", "kJ"),
    KILOCALORIES("ENERC_KCAL", "or energy", "kcal"),
    FAT("FAT", "fat", "g"),
    SATURATES("FASAT", "saturates", "g"),
    CARBOHYDRATE("CHOAVL", "carbohydrate", "g"),
    TOTAL_CARBOHYDRATE("CHOCDF", "or with its fibre", "g"),
    SUGARS("SUGAR", "sugars", "g"),
    FIBRE("FIBTG", "fibre", "g"),
    PROTEIN("PROCNT", "protein", "g"),
    SALT("NACL", "salt", "g"),
    SODIUM("NA", "or sodium", "mg"),
    MONOUNSATURATES("FAMS", "monounsaturates", "g"),
    POLYUNSATURATES("FAPU", "polyunsaturates", "g"),
    TRANS("FATRN", "trans fat", "g"),
    CHOLESTEROL("CHOLE", "cholesterol", "mg"),
    ALCOHOL("ALC", "alcohol", "g"),
    WATER("WATER", "water", "g");

    private final String tagname;
    private final String label;
    private final String unit;

    Printed(String tagname, String label, String unit) {
        this.tagname = tagname;
        this.label = label;
        this.unit = unit;
    }

    /** Its INFOODS tagname, which stands for it in files. */
    @Override
    public String word() {
        return tagname;
    }

    /** What it is called beside a line to fill in. */
    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }

    /** The component of the same tagname; empty for those that are made into another: CHOAVL and NACL. */
    public Optional<Nutrient> nutrient() {
        return Nutrient.parse(tagname);
    }

    /** The most that 100 g can hold. */
    public double most() {
        return nutrient().map(Nutrient::most).orElse(100.0);
    }

    /** Whether it is one of the weights in grams that add up to the food. */
    boolean isMass() {
        return unit.equals("g");
    }

    public static Optional<Printed> parse(String tagname) {
        return Arrays.stream(values()).filter(each -> each.tagname.equals(tagname)).findFirst();
    }
}
