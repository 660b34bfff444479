package hobside.talk;

import hobside.advice.Limits;
import hobside.dish.Dish;
import hobside.dish.Plan;

/**
 * A demonstration as it is saved: the dish as its people cook it, the changes told, what was done to the talk by hand, the guide
 * it is measured against, a note, and the hall it is given in.
 */
public record Demo(Dish dish, Plan plan, Script script, Measure measure, Setting setting) {

    /**
     * What the demo is held against, how far advice may go with it, and the note of the whole demo.
     *
     * @param guide the key of a published guide, such as {@code eu-ri}; empty when none is chosen
     */
    public record Measure(String guide, String note, Limits limits) {

        public static final Measure NONE = new Measure("", "", Limits.NONE);
    }

    public static Demo of(Dish dish) {
        return new Demo(dish, Plan.EMPTY, Script.UNTOUCHED, Measure.NONE, Setting.USUAL);
    }

    public static Demo of(Dish dish, Plan plan, String note) {
        return new Demo(dish, plan, Script.UNTOUCHED, new Measure("", note, Limits.NONE), Setting.USUAL);
    }

    public String guide() {
        return measure.guide();
    }

    public String note() {
        return measure.note();
    }

    /** What must stay, and how far advice may go. */
    public Limits limits() {
        return measure.limits();
    }

    public Demo with(Limits other) {
        return new Demo(dish, plan, script, new Measure(guide(), note(), other), setting);
    }

    public Demo with(Dish other) {
        return new Demo(other, plan, script, measure, setting);
    }

    public Demo with(Plan other) {
        return new Demo(dish, other, script, measure, setting);
    }

    public Demo with(Script other) {
        return new Demo(dish, plan, other, measure, setting);
    }

    public Demo with(Setting other) {
        return new Demo(dish, plan, script, measure, other);
    }

    public Demo withGuide(String key) {
        return new Demo(dish, plan, script, new Measure(key, note(), limits()), setting);
    }

    public Demo withNote(String words) {
        return new Demo(dish, plan, script, new Measure(guide(), words, limits()), setting);
    }
}
