package hobside.file.bring;

import hobside.file.Numbers;
import hobside.food.Food;
import hobside.food.Label;
import hobside.food.Nutrient;
import java.util.ArrayList;
import java.util.List;

/** Writes foods as a table that {@link FoodTable} reads back: one food a row, per 100 g. Parts, measures and warnings have no place in it. */
public final class FoodTableWriter {

    private FoodTableWriter() {}

    public static String of(List<Food> foods) {
        CsvOut out = new CsvOut();
        List<String> headings = new ArrayList<>(List.of("id", "name", "also", "group", "source", "number", "EDIBLE", "DENSITY"));
        for (Nutrient nutrient : Nutrient.values()) {
            headings.add(nutrient + " (" + nutrient.unit() + ")");
        }
        out.row(headings);
        foods.forEach(food -> out.row(row(food)));
        return out.written();
    }

    private static List<String> row(Food food) {
        Label label = food.label();
        List<String> row = new ArrayList<>(List.of(label.id(), label.name(), String.join("; ", label.also()), label.group(), label.source().table(),
                label.source().number(), Numbers.written(food.handling().edible()),
                food.handling().density().map(density -> Numbers.written(density.gramsPerMillilitre())).orElse("")));
        for (Nutrient nutrient : Nutrient.values()) {
            row.add(food.composition().of(nutrient).isPresent() ? Numbers.written(food.composition().of(nutrient).getAsDouble()) : "");
        }
        return row;
    }
}
