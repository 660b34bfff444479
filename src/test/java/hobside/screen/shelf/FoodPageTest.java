package hobside.screen.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.food.Food;
import hobside.screen.TextWidth;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is said of a food, at different widths. */
class FoodPageTest {

    private static List<FoodPage.Line> at(int width, Food food) {
        return FoodPage.laidOut(FoodPage.of(food, Bundle.STUDY), width);
    }

    private static String words(List<FoodPage.Line> lines) {
        return lines.stream().map(line -> line.label() + " " + line.words()).collect(Collectors.joining(" ")).strip().replaceAll("\\s+", " ");
    }

    @Test
    void no_figure_of_any_food_is_cut_on_a_narrow_screen() {
        for (Food food : Bundle.STUDY.shelf().foods()) {
            String all = words(at(300, food));
            for (int width : new int[] {60, 66, 72, 80}) {
                List<FoodPage.Line> lines = at(width, food);
                assertEquals(all, words(lines), food.id());
                lines.forEach(line -> assertTrue(TextWidth.of(line.words()) <= width - FoodPage.WORDS - 1, width + ": " + line));
            }
        }
    }

    @Test
    void figures_stand_in_two_columns_that_come_nearer_where_there_is_less_room() {
        Food butter = Bundle.STUDY.shelf().food("butter").orElseThrow();
        assertTrue(at(80, butter).stream().anyMatch(line -> line.words().equals("saturated 51.4 g              fat 81.1 g")), at(80, butter).toString());
        assertTrue(at(60, butter).stream().anyMatch(line -> line.words().equals("saturated 51.4 g      fat 81.1 g")), at(60, butter).toString());
        assertTrue(at(36, butter).stream().anyMatch(line -> line.words().equals("saturated 51.4 g")), at(36, butter).toString());
    }
}
