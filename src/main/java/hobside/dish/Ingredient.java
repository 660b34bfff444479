package hobside.dish;

import hobside.food.Food;

/** One line of a dish: a food, how much of it, and how it goes in. Its id is unique within the dish. */
public record Ingredient(String id, Food food, Quantity quantity, Preparation preparation) {

    public static Ingredient of(String id, Food food, Quantity quantity) {
        return new Ingredient(id, food, quantity, Preparation.NONE);
    }

    public Ingredient with(Quantity other) {
        return new Ingredient(id, food, other, preparation);
    }

    public Ingredient with(Preparation other) {
        return new Ingredient(id, food, quantity, other);
    }
}
