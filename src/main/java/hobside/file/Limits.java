package hobside.file;

/** How long texts and how large figures in a file may be. The screens keep to the same bounds, so that what is typed can be saved. */
public final class Limits {

    public static final int ID = 60;
    public static final int NAME = 120;
    public static final int WORDS = 200;
    public static final int STORY = 2_000;
    public static final int STEP = 1_000;
    public static final int NOTE = 4_000;

    /** Grams: no kitchen handles more than 1,000 kg of one thing. */
    public static final double WEIGHT = 1_000_000;

    /** Minutes of one step: ten days, for what is cured or pickled. */
    public static final int MINUTES = 14_400;

    public static final int INGREDIENTS = 200;
    public static final int STEPS = 200;
    public static final int CHANGES = 200;
    public static final int CUES = 1_000;
    public static final int FOODS = 20_000;

    private Limits() {}
}
