package hobside.file;

import hobside.food.Doubt;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Measure;
import hobside.food.Nutrient;
import hobside.food.PacketLabel;
import hobside.food.Part;
import hobside.food.Printed;
import hobside.food.Source;
import hobside.measure.Range;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;

/** Writes food records, each on one line, so that they are read back the same. */
public final class FoodWriter {

    private FoodWriter() {}

    /** A file of foods. Leans and parts must be among them or on the shelf below. */
    public static String file(String group, List<Food> foods) {
        return new Page(0).text("hobside", "foods/1").text("group", group)
                .rows("foods", foods.stream().map(FoodWriter::row).toList()).written() + "\n";
    }

    private static Row row(Food food) {
        return row(food, Food::id);
    }

    /** The record of a food; the ids of the food, its lean and its parts are asked for, since a document may have to rename them. */
    static Row row(Food food, Function<Food, String> ids) {
        Row row = new Row().text("id", ids.apply(food)).text("name", food.name());
        if (!food.label().also().isEmpty()) {
            row.texts("also", food.label().also());
        }
        row.text("group", food.label().group());
        Source source = food.label().source();
        if (!source.table().equals(Source.OWN.table()) || !source.number().isEmpty()) {
            row.row("source", new Row().text("table", source.table()).textIfAny("number", source.number()));
        }
        if (source.packet().isPresent() && food.parts().isEmpty()) {
            packet(row, source.packet().get(), source.overruled());
        } else if (food.parts().isEmpty()) {
            row.row("per100g", figures(food));
            if (!Clash.among(food.composition()).isEmpty()) {
                row.raw(PerHundred.AS_PUBLISHED, "true");
            }
        } else {
            row.text("lean", ids.apply(food.lean())).rows("parts", food.parts().stream().map(part -> part(part, ids)).toList());
        }
        return handling(row, food.handling());
    }

    private static Row figures(Food food) {
        Row row = new Row();
        for (Nutrient nutrient : Nutrient.values()) {
            food.composition().of(nutrient).ifPresent(figure -> row.number(nutrient.name(), figure));
        }
        return row;
    }

    private static void packet(Row row, PacketLabel label, List<Doubt.Overruled> overruled) {
        Row figures = new Row().text("per", Numbers.written(label.per().count()) + " " + label.per().unit());
        for (Printed each : Printed.values()) {
            label.of(each).ifPresent(figure -> figures.number(each.word(), figure));
        }
        row.row("packet", figures);
        if (!overruled.isEmpty()) {
            row.rows("overruled", overruled.stream().map(each -> new Row().text("check", each.check().word()).text("reason", each.reason())).toList());
        }
    }

    private static Row part(Part part, Function<Food, String> ids) {
        return new Row().text("part", part.kind().word()).text("food", ids.apply(part.food())).raw("share", range(part.share()));
    }

    static String range(Range range) {
        return range.isExact() ? Numbers.written(range.typical())
                : "[" + Numbers.written(range.low()) + ", " + Numbers.written(range.typical()) + ", " + Numbers.written(range.high()) + "]";
    }

    private static Row handling(Row row, Handling handling) {
        handling.melts().ifPresent(kind -> row.text("melts", kind.word()));
        if (handling.edible() != 1) {
            row.number("edible", handling.edible());
        }
        if (handling.fatEnergy() != Handling.GENERAL_FAT_ENERGY) {
            row.number("fatEnergy", handling.fatEnergy());
        }
        handling.density().ifPresent(density -> row.number("density", density.gramsPerMillilitre()));
        if (!handling.measures().isEmpty()) {
            row.rows("measures", handling.measures().stream().map(FoodWriter::measure).toList());
        }
        return row.texts("allergens", new TreeSet<>(handling.warnings().allergens()))
                .texts("cautions", new TreeSet<>(handling.warnings().cautions()));
    }

    private static Row measure(Measure measure) {
        Row row = new Row().text("name", measure.name()).number("grams", measure.grams().value());
        return measure.asBought() ? row.raw("asBought", "true") : row;
    }
}
