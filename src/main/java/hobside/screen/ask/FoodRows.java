package hobside.screen.ask;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.talk.Written;
import java.util.List;
import java.util.OptionalDouble;

/** The foods that a search has found, from row 3 of a screen down, and below them the source of the one under the cursor. */
public final class FoodRows {

    private FoodRows() {}

    public static void draw(Frame frame, List<Food> found, int cursor) {
        heading(frame, found.size());
        int room = frame.height() - 9;
        int first = Lines.firstShown(cursor, found.size(), room);
        for (int i = 0; i < room && first + i < found.size(); i++) {
            row(frame.part(new Area(4 + i, 0, 1, frame.width())), found.get(first + i), first + i == cursor);
        }
        frame.horizontal(frame.height() - 5, 0, frame.width() - 1);
        about(frame, found, cursor);
    }

    private static void heading(Frame frame, int size) {
        frame.put(3, 3, size == 0 ? "nothing fits; try fewer letters or another name" : "per 100 g", Style.QUIET);
        if (size > 0) {
            frame.putRight(3, frame.width() - 20, "saturated", Style.QUIET);
            frame.putRight(3, frame.width() - 11, "fat", Style.QUIET);
            frame.putRight(3, frame.width() - 2, "kJ", Style.QUIET);
        }
    }

    private static void row(Frame line, Food food, boolean here) {
        line.put(0, 3, Lines.fit(food.name(), line.width() - 34), Style.PLAIN);
        line.putRight(0, line.width() - 20, figure(food, Nutrient.FASAT), Style.STRONG);
        line.putRight(0, line.width() - 11, figure(food, Nutrient.FAT), Style.PLAIN);
        line.putRight(0, line.width() - 2, figure(food, Nutrient.ENERC), Style.PLAIN);
        Cursor.mark(line, here);
    }

    private static String figure(Food food, Nutrient nutrient) {
        OptionalDouble figure = food.composition().of(nutrient);
        if (figure.isEmpty()) {
            return "unknown";
        }
        return nutrient == Nutrient.ENERC ? Long.toString(Math.round(figure.getAsDouble())) : Written.number(figure.getAsDouble());
    }

    private static void about(Frame frame, List<Food> found, int cursor) {
        if (found.isEmpty()) {
            return;
        }
        Food food = found.get(cursor);
        String also = food.label().also().isEmpty() ? "" : "Also: " + String.join(", ", food.label().also()) + ". ";
        String source = "Source: " + food.label().source().written() + ".";
        int row = frame.height() - 4;
        for (String line : Lines.wrap(also + source, frame.width() - 2)) {
            if (row < frame.height() - 1) {
                frame.put(row++, 1, line, Style.QUIET);
            }
        }
    }
}
