package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.ChangeKind;
import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.food.Food;
import hobside.food.Shelf;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RoundTripTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final int SEEDS = 500;

    private static Demo read(String text) {
        Read<Demo> read = DemoReader.read(RawFile.of("x", text), SHELF);
        assertEquals(List.of(), read.problems().stream().map(InputProblem::written).toList(), text);
        return read.value().orElseThrow();
    }

    @Test
    void what_is_written_is_read_back_the_same_whatever_the_demo() {
        Set<ChangeKind> met = EnumSet.noneOf(ChangeKind.class);
        for (long seed = 0; seed < SEEDS; seed++) {
            Demo demo = RandomDemos.demo(seed, SHELF);
            assertEquals(demo, read(DemoWriter.demo(demo, SHELF)), "seed " + seed);
            demo.plan().changes().forEach(line -> met.add(line.change().kind()));
        }
        assertEquals(EnumSet.allOf(ChangeKind.class), met);
    }

    @Test
    void what_is_read_is_written_the_same_to_the_last_letter() {
        for (long seed = 0; seed < SEEDS; seed++) {
            String text = DemoWriter.demo(RandomDemos.demo(seed, SHELF), SHELF);
            assertEquals(text, DemoWriter.demo(read(text), SHELF), "seed " + seed);
        }
    }

    @Test
    void a_dish_by_itself_is_read_back_with_its_note() {
        for (String file : Bundled.DISHES) {
            Demo demo = DemoReader.read(Bundled.file(file), SHELF).value().orElseThrow().withNote("for the market day");
            assertEquals(demo, read(DemoWriter.dish(demo, SHELF)));
        }
    }

    @Test
    void the_whole_shelf_is_read_back_from_one_file() {
        String text = FoodWriter.file("all", SHELF.foods());
        List<Food> again = FoodFiles.read(List.of(RawFile.of("all.json", text)), Shelf.EMPTY).value().orElseThrow();
        assertEquals(SHELF.foods(), again);
    }

    @Test
    void amounts_stand_as_a_cook_writes_them_where_that_is_exact() {
        assertEquals("\"1 1/2 cups\"", AmountWriter.written(Amount.of(1.5, "cup")));
        assertEquals("\"1/3 cup\"", AmountWriter.written(Amount.of(1 / 3.0, "cup")));
        assertEquals("\"1234.56 g\"", AmountWriter.written(Amount.of(1234.56, "g")));
        assertEquals("\"2/7 tin\"", AmountWriter.written(Amount.of(2 / 7.0, "tin")));
        assertEquals("\"3\"", AmountWriter.written(Amount.of(3, "")));
        assertEquals("{ \"count\": 0.1234567890123, \"unit\": \"l\" }", AmountWriter.written(Amount.of(0.1234567890123, "l")));
    }

    @Test
    void a_plain_number_is_read_to_the_last_digit() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            String text = Numbers.written(random.nextInt(3) == 0 ? random.nextDouble() * 1e9 : random.nextInt(1_000_000) / 1000.0);
            assertEquals(Double.parseDouble(text), Numbers.parse(text), text);
        }
        for (String text : List.of("0", "-0.5", "1e3", "9007199254740993", "0.000000000000001", "123456789012345.6", "1E-400")) {
            assertEquals(Double.parseDouble(text), Numbers.parse(text), text);
        }
    }

    @Test
    void a_cut_weighed_by_the_user_keeps_its_id_and_its_share() {
        String dish = """
                { "hobside": "dish/1", "name": "pot", "serves": 4,
                  "ingredients": [ { "food": "beef-short-rib", "amount": "1 kg", "parts": {"fat": 0.31} } ] }
                """;
        Demo demo = read(dish);
        Food food = demo.dish().ingredients().get(0).food();
        assertEquals(0.31, food.parts().get(0).share().typical());
        assertEquals("beef-short-rib", food.id());
        assertTrue(DemoWriter.demo(demo, SHELF).contains("\"parts\": { \"fat\": 0.31 }"));
        assertFalse(DemoWriter.demo(demo, SHELF).contains("\"foods\""));
    }

    @Test
    void ids_are_made_from_the_foods_where_none_is_written_and_never_clash() {
        Demo demo = read("""
                { "hobside": "dish/1", "name": "pot", "serves": 4,
                  "ingredients": [ { "food": "onion", "amount": "1 kg" }, { "food": "onion", "amount": "2 large" },
                    { "id": "onion", "food": "butter", "amount": "20 g" } ] }
                """);
        assertEquals(List.of("onion-2", "onion-3", "onion"), demo.dish().ingredients().stream().map(each -> each.id()).toList());
    }

    @Test
    void the_weight_of_the_finished_dish_gives_its_moisture() {
        Dish dish = read("""
                { "hobside": "dish/1", "name": "pot", "serves": 4, "cookedWeight": "1.8 kg",
                  "ingredients": [ { "food": "water", "amount": "2 kg" } ] }
                """).dish();
        assertEquals(-10, dish.serving().moisture(), 1e-9);
    }

    @Test
    void peeled_weights_count_as_eaten() {
        Dish dish = read("""
                { "hobside": "dish/1", "name": "pot", "serves": 4,
                  "ingredients": [ { "food": "beef-short-rib", "amount": "730 g", "basis": "edible" } ] }
                """).dish();
        assertEquals(730, dish.ingredients().get(0).quantity().edible().value(), 1e-9);
        assertEquals(1000, dish.ingredients().get(0).quantity().asBought().value(), 1e-9);
    }

    @Test
    void the_dish_s_own_butter_stands_in_for_the_shelf_s_and_both_may_be_used() {
        Demo demo = read("""
                { "hobside": "dish/1", "name": "pot", "serves": 4,
                  "foods": [ { "id": "butter", "name": "whey butter", "per100g": {"FAT": 80, "FASAT": 50} } ],
                  "ingredients": [ { "id": "own", "food": "butter", "amount": "10 g" }, { "id": "ours",
                          "food": "shelf:butter", "amount": "10 g" } ] }
                """);
        assertEquals("whey butter", demo.dish().ingredients().get(0).food().name());
        assertEquals(SHELF.food("butter").orElseThrow(), demo.dish().ingredients().get(1).food());
        assertEquals(demo, read(DemoWriter.demo(demo, SHELF)));
    }

    @Test
    void water_may_be_given_in_the_dish_s_own_cups() {
        Demo demo = read("""
                { "hobside": "dish/1", "name": "pot", "serves": 4, "spoons": "us",
                  "ingredients": [ { "id": "c", "food": "coconut-cream", "amount": "3 cups" } ],
                  "plan": [ { "change": "dilute", "of": "c", "water": "1 cup", "poured": "3 cups" } ] }
                """);
        assertEquals(SpoonSet.US.cup(), ((hobside.dish.Dilute) demo.plan().changes().get(0).change()).water());
        assertEquals(demo, read(DemoWriter.demo(demo, SHELF)));
    }
}
