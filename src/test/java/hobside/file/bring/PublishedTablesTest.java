package hobside.file.bring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Fixtures;
import hobside.talk.Demo;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.file.Version;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Published tables, laid out as FoodData Central is (USDA, download field descriptions), made up by seed. */
class PublishedTablesTest {

    private static final Shelf SHELF = Bundle.STUDY.shelf();

    private static Review review(Map<String, String> files) throws IOException {
        Read<Review> read = PublishedTables.review("tables", MadeTables.inputs(files), SHELF, "bank");
        assertEquals(List.of(), read.problems().stream().map(InputProblem::written).toList());
        return read.value().orElseThrow();
    }

    private static List<Food> foods(Review review) {
        return assertInstanceOf(Review.Goods.Pack.class, review.goods()).foods();
    }

    private static void same(List<MadeTables.Made> made, List<Food> foods) {
        assertEquals(made.size(), foods.size());
        for (int i = 0; i < made.size(); i++) {
            Food food = foods.get(i);
            assertEquals("bank-" + made.get(i).id(), food.id());
            assertEquals(made.get(i).name(), food.name());
            for (Nutrient nutrient : Nutrient.values()) {
                Double figure = made.get(i).figures().get(nutrient);
                if (figure != null) {
                    assertEquals(figure, food.composition().of(nutrient).orElseThrow(), food.name() + " " + nutrient);
                } else if (nutrient != Nutrient.ENERC) {
                    assertTrue(food.composition().of(nutrient).isEmpty(), food.name() + " has no " + nutrient);
                }
            }
            assertEquals(made.get(i).measures().size(), food.handling().measures().size());
        }
    }

    @Test
    void eight_thousand_foods_come_in_as_they_were_made_whatever_the_order_of_the_rows() throws IOException {
        MadeTables made = MadeTables.of(8, 8_000);
        Review review = review(made.files(true));
        same(made.foods(), foods(review));
        assertEquals(new Review.Counts(8_000, 8_000, 0, 0, 0, 0), review.counts());
        assertEquals(List.of(), review.faults());
        assertTrue(review.told().contains("1 records of the type sub_sample_food are samples behind the foods; they are not taken."), review.told().toString());
    }

    @Test
    void a_pack_lies_beside_the_shelf_after_it_was_taken(@TempDir Path folder) throws IOException {
        MadeTables made = MadeTables.of(9, 300);
        Kitchen kitchen = Kitchen.at(folder);
        Review review = review(made.files(false));
        assertInstanceOf(Saving.Saved.class, new Taking(kitchen, SHELF).take(review));
        Library library = Library.load(kitchen);
        assertEquals(List.of(), library.problems());
        assertEquals(SHELF.foods().size() + 300, library.shelf().foods().size());
        for (Food food : foods(review)) {
            assertEquals(food, library.shelf().food(food.id()).orElseThrow());
        }
        assertEquals("bank-" + made.foods().get(150).id(), library.shelf().find("of bank 150", 1).get(0).id());
        assertEquals(SHELF.food("butter"), library.shelf().food("butter"));
        assertEquals("foods/own/bank.pack", assertInstanceOf(Saving.Saved.class, new Taking(Kitchen.at(folder.resolve("other")), SHELF).take(review)).file());
        assertInstanceOf(Saving.NotSaved.class, new Taking(kitchen, SHELF).take(review), "never over another file");
        assertEquals("bank-2", kitchen.freeName(hobside.file.Own.PACK, "bank"));
    }

    @Test
    void an_own_food_can_be_deleted_while_a_demo_uses_a_food_of_a_pack(@TempDir Path folder) throws IOException {
        Kitchen kitchen = Kitchen.at(folder);
        new Taking(kitchen, SHELF).take(review(MadeTables.of(9, 20).files(false)));
        Shelf shelf = Library.load(kitchen).shelf();
        Food brought = shelf.find("of bank 7", 1).get(0);
        Demo demo = Demo.of(Fixtures.dish(Fixtures.ingredient(brought, 500)));
        assertInstanceOf(Saving.Saved.class, kitchen.save(demo, Version.fresh("bank pot"), shelf));
        assertEquals(demo, kitchen.open("bank-pot", shelf).value().orElseThrow().demo());
        Food own = kitchen.foods().add(Food.whole(Label.of("quay-bun", "quay bun"), Fixtures.composition(5, 2), Handling.PLAIN), shelf).food();
        Shelf both = Library.load(kitchen).shelf();
        assertEquals(own, both.food("quay-bun").orElseThrow());
        assertInstanceOf(Saving.Saved.class, kitchen.foods().delete(own, both));
    }

    @Test
    void a_damaged_pack_is_left_out_and_reported(@TempDir Path folder) throws IOException {
        Kitchen kitchen = Kitchen.at(folder);
        new Taking(kitchen, SHELF).take(review(MadeTables.of(9, 20).files(false)));
        Path pack = folder.resolve("foods/own/bank.pack");
        byte[] bytes = Files.readAllBytes(pack);
        for (int at : new int[] {0, 16, 40, bytes.length / 2, bytes.length - 1}) {
            byte[] damaged = bytes.clone();
            damaged[at] ^= 4;
            Files.write(pack, damaged);
            Library library = Library.load(kitchen);
            assertEquals(SHELF.foods().size(), library.shelf().foods().size(), "byte " + at);
            assertTrue(library.problems().get(0).written().startsWith("foods/own/bank.pack: found a "), "byte " + at);
        }
        Files.write(pack, java.util.Arrays.copyOf(bytes, 10));
        assertEquals(1, Library.load(kitchen).problems().size());
    }

    @Test
    void columns_are_found_in_any_order_and_portions_of_all_three_kinds_are_understood() throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("food.csv", "description,fdc_id,data_type\nBankside broth,7,foundation_food\n\"Cordial, quay\",8,survey_fndds_food\n");
        files.put("nutrient.csv", "nutrient_nbr,unit_name,id\n204,G,1004\n957,KCAL,2047\n958,KCAL,2048\n307,G,1093\n");
        files.put("food_nutrient.csv", "amount,nutrient_id,fdc_id\n3.5,1004,7\n50,2047,7\n48,2048,7\n0.3,1093,7\n1,204,8\n,1093,8\n");
        files.put("measure_unit.csv", "id,name\n1000,cup\n1001,tablespoon\n9999,undetermined\n");
        files.put("food_portion.csv", "fdc_id,amount,measure_unit_id,portion_description,modifier,gram_weight\n"
                + "7,1,1000,,chopped,120\n7,2,1001,,,30\n7,1,9999,,\"ladle, full\",90\n8,,9999,1 cup,10205,240\n8,,9999,1 fl oz,30000,30\n8,,9999,Quantity not specified,90000,100\n");
        List<Food> foods = foods(review(files));
        Food broth = foods.get(0);
        assertEquals(3.5, broth.per100g(Nutrient.FAT));
        assertEquals(48, broth.per100g(Nutrient.ENERC_KCAL), "the specific factors come before the general ones");
        assertEquals(300, broth.per100g(Nutrient.NA));
        assertEquals(List.of("cup, chopped", "tbsp", "ladle, full"), broth.handling().measures().stream().map(each -> each.name()).toList());
        assertEquals(120 * 250 / 236.5882365, broth.handling().measures().get(0).grams().value(), 1e-9);
        assertEquals(90, broth.handling().measures().get(2).grams().value());
        Food cordial = foods.get(1);
        assertEquals(1, cordial.per100g(Nutrient.FAT), "numbers of the older reference are understood too");
        assertTrue(cordial.composition().of(Nutrient.NA).isEmpty());
        assertEquals(1.014, cordial.handling().density().orElseThrow().gramsPerMillilitre(), 1e-9);
        assertEquals(List.of(), cordial.handling().measures());
    }

    @Test
    void what_is_missing_or_wrong_is_said_with_file_and_line() throws IOException {
        Read<Review> none = PublishedTables.review("tables", MadeTables.inputs(Map.of("food.csv", "fdc_id\n1\n")), SHELF, "bank");
        assertEquals(List.of("tables: found no file nutrient.csv; expected the files food.csv, nutrient.csv, food_nutrient.csv; unpack the whole download into one folder",
                "tables: found no file food_nutrient.csv; expected the files food.csv, nutrient.csv, food_nutrient.csv; unpack the whole download into one folder"),
                none.problems().stream().map(InputProblem::written).toList());
        Map<String, String> files = new LinkedHashMap<>(Map.of("food.csv", "fdc_id,description\n1,good\n2,bad figure\n1,again\nx,no number\n3,\u001b[2J\n4,bare\n",
                "nutrient.csv", "id,unit_name,nutrient_nbr\n1004,G,204\n1003,SHEKEL,203\n", "food_nutrient.csv", "fdc_id,nutrient_id,amount\n1,1004,1.5\n2,1004,101\n1,1004\n"));
        Review review = PublishedTables.review("tables", MadeTables.inputs(files), SHELF, "bank").value().orElseThrow();
        List<String> faults = review.faults().stream().map(InputProblem::written).toList();
        assertEquals(6, faults.size(), faults.toString());
        assertTrue(faults.toString().contains("tables:3: food_nutrient.csv amount: found \"101\"; expected a number from 0 to 100"), faults.toString());
        assertTrue(faults.toString().contains("tables:4: food_nutrient.csv: found 2 fields"), faults.toString());
        assertTrue(faults.toString().contains("SHEKEL"), faults.toString());
        assertFalse(faults.toString().contains("\u001b"));
        assertEquals(List.of("good"), foods(review).stream().map(Food::name).toList());
        assertEquals(5, review.counts().leftOut());
    }

    @Test
    void more_than_twenty_thousand_foods_are_cut_off_and_said() throws IOException {
        StringBuilder foods = new StringBuilder("fdc_id,description\n");
        StringBuilder figures = new StringBuilder("fdc_id,nutrient_id,amount\n");
        for (int i = 0; i < 30_000; i++) {
            foods.append(i).append(",food ").append(i).append('\n');
            figures.append(i).append(",1004,1\n");
        }
        Review review = review(new LinkedHashMap<>(Map.of("food.csv", foods.toString(), "food_nutrient.csv", figures.toString(), "nutrient.csv", "id,unit_name,nutrient_nbr\n1004,G,204\n")));
        assertEquals(20_000, foods(review).size());
        assertEquals(10_000, review.counts().leftOut());
        assertTrue(review.faults().get(0).written().contains("more than 20000 foods in food.csv"));
    }
}
