package hobside.dish;

/**
 * A demonstration as it is saved: the dish as its people cook it, the changes told, the guide it is measured against, and a note.
 *
 * @param guide the key of the published guide, such as {@code eu-ri}; empty when none is chosen
 */
public record Demo(Dish dish, Plan plan, String guide, String note) {

    public static Demo of(Dish dish) {
        return new Demo(dish, Plan.EMPTY, "", "");
    }

    public Demo with(Dish other) {
        return new Demo(other, plan, guide, note);
    }

    public Demo with(Plan other) {
        return new Demo(dish, other, guide, note);
    }

    public Demo withGuide(String key) {
        return new Demo(dish, plan, key, note);
    }

    public Demo withNote(String words) {
        return new Demo(dish, plan, guide, words);
    }
}
