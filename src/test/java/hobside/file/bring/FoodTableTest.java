package hobside.file.bring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.food.Source;
import hobside.measure.Density;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoodTableTest {

    private static final Shelf SHELF = Bundle.STUDY.shelf();

    private static Read<Review> read(byte[] bytes) {
        try {
            return FoodTable.review(Input.of(new RawFile("t.csv", bytes)), SHELF, "t");
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }

    private static Review review(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8)).value().orElseThrow();
    }

    private static List<Food> foods(Review review) {
        return review.goods() instanceof Review.Goods.Pack pack ? pack.foods() : ((Review.Goods.Foods) review.goods()).foods();
    }

    private static Food only(String text) {
        Review review = review(text);
        assertEquals(List.of(), faults(review));
        assertEquals(1, foods(review).size());
        return foods(review).get(0);
    }

    private static List<String> faults(Review review) {
        return review.faults().stream().map(InputProblem::written).toList();
    }

    @Test
    void an_empty_field_is_a_figure_that_is_not_known() {
        Food food = only("name,FAT,FASAT,NA\nquay bun,12.5,,\n");
        assertEquals(12.5, food.composition().of(Nutrient.FAT).orElseThrow());
        assertTrue(food.composition().of(Nutrient.FASAT).isEmpty());
        assertTrue(food.composition().of(Nutrient.NA).isEmpty());
        assertEquals("quay-bun", food.id());
    }

    /** The same food in each manner of writing; the figures are 12.5 g of fat, 3.25 g saturated, 1,234 mg of sodium. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "name,FAT,FASAT,NA\\nlock bun,12.5,3.25,1234",
        "name;FAT;FASAT;NA\\nlock bun;12,5;3,25;1234",
        "name;FAT;FASAT;NA\\nlock bun;12,5;3,25;1.234,0",
        "name,FAT,FASAT,NA\\nlock bun,12.5,3.25,\"1,234\"",
        "name;FAT;FASAT;NA\\nlock bun;12,5;3,25;1 234",
        "name,FAT,FASAT,NA\\nlock bun,\"12,5\",\"3,25\",1234",
        "NA (mg),name,FAT (g),FASAT [mg]\\n1234,lock bun,12.5,3250",
        "name,FAT g/100 g,FASAT_g,NA (g)\\nlock bun,12.5,3.25,1.234",
        "\"name\",\"FAT\",\"FASAT\",\"NA\"\\n\"lock bun\",\"12.5\",\"3.25\",\"1234\""})
    void one_food_in_many_manners(String text) {
        Food food = only(text.replace("\\n", "\n").replace("1 234", "1\u00a0234"));
        assertEquals(12.5, food.per100g(Nutrient.FAT));
        assertEquals(3.25, food.per100g(Nutrient.FASAT));
        assertEquals(1234, food.per100g(Nutrient.NA));
        assertEquals("lock bun", food.name());
    }

    @Test
    void tabs_line_ends_of_every_system_and_blank_lines_are_understood() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            Food food = only(String.join(end, "", "name\tFAT", "", "hatch pie\t4.5", "", ""));
            assertEquals("hatch pie", food.name());
            assertEquals(4.5, food.per100g(Nutrient.FAT));
        }
    }

    @Test
    void energy_is_understood_in_either_unit() {
        assertEquals(418.4, only("name,ENERC (kcal)\nx,100").per100g(Nutrient.ENERC), 1e-9);
        assertEquals(100, only("name,ENERC (kJ)\nx,418.4").per100g(Nutrient.ENERC_KCAL), 1e-9);
        assertEquals(100, only("name,ENERC\nx,418.4").per100g(Nutrient.ENERC_KCAL), 1e-9);
    }

    @Test
    void available_carbohydrate_becomes_total_where_fibre_is_known() {
        assertEquals(25, only("name,CHOAVL,FIBTG\nx,20,5").per100g(Nutrient.CHOCDF));
        assertTrue(only("name,CHOAVL\nx,20").composition().of(Nutrient.CHOCDF).isEmpty());
    }

    @Test
    void letters_are_decided_and_told() {
        String text = "name;FAT\ncrème brûlée;12,5\n";
        Map<Charset, String> told = Map.of(StandardCharsets.UTF_8, "The letters are UTF-8.", StandardCharsets.ISO_8859_1, "The letters are Latin-1 (Windows-1252).");
        told.forEach((charset, words) -> {
            Review review = read(text.getBytes(charset)).value().orElseThrow();
            assertEquals("crème brûlée", foods(review).get(0).name());
            assertEquals(words + " Fields are separated by semicolons.", review.told().get(0));
            assertEquals("Figures have a decimal comma.", review.told().get(1));
        });
        Review marked = read(("\ufeff" + text).getBytes(StandardCharsets.UTF_8)).value().orElseThrow();
        assertEquals("The letters are UTF-8 with a byte order mark. Fields are separated by semicolons.", marked.told().get(0));
        assertEquals(1, foods(marked).size());
    }

    @Test
    void what_is_no_text_is_refused() {
        for (byte[] bytes : List.of("name,FAT\nx,1".getBytes(StandardCharsets.UTF_16), new byte[] {'P', 'K', 3, 4, 0}, "name\0,FAT\nx,1".getBytes(StandardCharsets.UTF_8), new byte[0],
                "\n \n".getBytes(StandardCharsets.UTF_8), "just words\nno table".getBytes(StandardCharsets.UTF_8))) {
            Read<Review> read = read(bytes);
            assertTrue(read.value().isEmpty());
            assertFalse(read.problems().get(0).remedy().isEmpty());
        }
    }

    @Test
    void a_figure_that_could_mean_two_things_is_refused() {
        assertEquals(List.of("t.csv:2: NA: found \"1,234\"; expected a number from 0 to 40000 with a decimal point; "
                + "write it so that the decimal mark is plain, such as 1234 or 1.5"), faults(review("name,NA\nx,\"1,234\"")));
        assertEquals(List.of("t.csv:2: NA: found \"1.234\"; expected a number from 0 to 40000 with a decimal comma; "
                + "correct it, or leave the field empty when it is not known"), faults(review("name;NA;FAT\nx;1.234;2,5")));
    }

    @Test
    void all_faults_come_with_their_line_and_the_good_rows_are_offered() {
        Review review = review("id,name,FAT\na,good,1\nb,too much,101\nc,below,-1\nd,words,lots\ne,huge,1" + "0".repeat(400) + "\nf,formula,=1+1\n,,5\ng,short\nh,long,1,2\na,again,1\n");
        assertEquals(List.of("good"), foods(review).stream().map(Food::name).toList());
        assertEquals(List.of(3, 4, 5, 6, 7, 8, 9, 10, 11), review.faults().stream().map(InputProblem::line).toList());
        assertEquals(new Review.Counts(10, 1, 0, 0, 0, 9), review.counts());
        assertTrue(faults(review).get(8).contains("it stands already in line 2"), faults(review).toString());
    }

    @Test
    void lines_are_counted_through_fields_that_hold_line_breaks() {
        Review review = review("name,also,FAT\n\"two\nlines\",\"a \"\"quoted\"\" word; b\",1\nbad,,x\n");
        assertEquals("two lines", foods(review).get(0).name());
        assertEquals(List.of("a \"quoted\" word", "b"), foods(review).get(0).label().also());
        assertEquals(4, review.faults().get(0).line());
    }

    @Test
    void a_quote_that_is_never_closed_stops_the_reading_and_is_said() {
        Review review = review("name,FAT\ngood,1\n\"open,2\nmore,3\n");
        assertEquals(List.of("good"), foods(review).stream().map(Food::name).toList());
        assertEquals(3, review.faults().get(0).line());
        assertTrue(faults(review).get(0).contains("a quote that is opened in this row and never closed"));
    }

    @Test
    void traces_and_dashes_are_not_known_and_never_zero() {
        Review review = review("name,FAT,FASAT,NA,CHOLE\nx,tr,<0.1,-,N\n");
        for (Nutrient nutrient : Nutrient.values()) {
            assertTrue(foods(review).get(0).composition().of(nutrient).isEmpty());
        }
        assertTrue(review.told().contains("2 figures are a trace or \"less than\": taken as not known, never as 0."));
    }

    @Test
    void hidden_characters_are_refused_and_never_shown() {
        Review review = review("name,group,FAT\nbun\u001b[2J,x,1\nok,g\u202er,1\n");
        assertEquals(0, foods(review).size());
        assertEquals(2, review.counts().leftOut());
        assertTrue(faults(review).toString().chars().noneMatch(each -> each == 0x1b || each == 0x202e));
        assertTrue(review.isEmpty());
    }

    @Test
    void hostile_ids_become_safe_ones() {
        Review review = review("id,name\n../../etc/passwd,a\nCON,b\n" + "x".repeat(60) + ",c\n..,d\n");
        assertEquals(List.of("etc-passwd", "con", "x".repeat(60), "food"), foods(review).stream().map(Food::id).map(id -> id.equals("dish-con") ? "con" : id).toList());
        assertTrue(review.told().contains("3 ids have been made to fit: a-z, 0-9 and -."), review.told().toString());
    }

    @Test
    void foods_of_one_name_are_named_and_both_kept() {
        Review review = review("name,FAT\nquay bun,1\nQuay bun,2\n\"" + SHELF.food("butter").orElseThrow().name() + "\",80\n");
        assertEquals(3, foods(review).size());
        assertEquals(3, foods(review).stream().map(Food::id).distinct().count());
        assertEquals(2, review.counts().sameName());
        assertEquals("a food of this name is there already, in line 2; both are kept", review.noted().get(0).why());
        assertEquals("a food of this name is there already, \"butter\" on the shelf; both are kept", review.noted().get(1).why());
    }

    @Test
    void an_id_of_the_shelf_is_never_taken_over() {
        Review review = review("id,name,FAT\nbutter,farm butter,81\n");
        assertEquals("butter-2", foods(review).get(0).id());
        assertEquals(Review.Mark.SAME_ID, review.noted().get(0).mark());
    }

    @Test
    void implausible_rows_are_offered_and_marked() {
        Review review = review("name,ENERC,ENERC_KCAL,PROCNT,FAT,CHOCDF,FASAT,FAMS,FAPU\nacids,1000,239,5,20,10,15,10,5\nenergy,239,57.1,5,20,10,1,1,1\nsound,995,238,5,20,10,5,5,5\n");
        assertEquals(3, foods(review).size());
        assertEquals(2, review.counts().doubtful());
        assertEquals("FASAT + FAMS + FAPU = 30; expected at most the fat of 20 g", review.noted().get(0).why());
        assertEquals("energy of 239 kJ; its protein, fat, carbohydrate and alcohol make 995 kJ", review.noted().get(1).why());
    }

    /**
     * USDA SR28 under its own figures: a check that cries wolf is soon passed over. What is left has acids or minerals that are
     * no carbohydrate (vinegar, baking powder), or a bran of which little is digested.
     */
    @Test
    void hardly_any_food_of_our_own_shelf_is_called_doubtful() {
        List<String> doubtful = SHELF.foods().stream().filter(food -> !Plausible.doubts(food.composition()).isEmpty()).map(Food::id).toList();
        assertTrue(doubtful.size() * 50 <= SHELF.foods().size(), "more than one in fifty: " + doubtful);
    }

    @Test
    void implausible_figures_stand_as_published_and_are_read_back(@TempDir Path folder) {
        Kitchen kitchen = Kitchen.at(folder);
        Review review = review("name,FAT,FASAT,FAMS,FAPU\nacids,20,15,10,5\n");
        assertInstanceOf(Saving.Saved.class, new Taking(kitchen, SHELF).take(review));
        Library library = Library.load(kitchen);
        assertEquals(List.of(), library.problems());
        assertEquals(foods(review).get(0), library.shelf().food("acids").orElseThrow());
    }

    private static Food random(Random random, int number) {
        List<String> starts = List.of("=bank", "+quay", "-lock", "@weir", "plain \"word\"", "semi;colon", "comma, in", "ünder");
        String name = starts.get(random.nextInt(starts.size())) + " " + number;
        Map<Nutrient, Double> figures = new java.util.EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : List.of(Nutrient.FAT, Nutrient.PROCNT, Nutrient.NA, Nutrient.ENERC)) {
            if (random.nextInt(4) > 0) {
                figures.put(nutrient, random.nextInt(1000) / 100.0);
            }
        }
        Handling handling = new Handling((1 + random.nextInt(100)) / 100.0, Optional.empty(), 9,
                random.nextBoolean() ? Optional.of(Density.of(0.9)) : Optional.empty(), List.of(), Handling.Warnings.NONE);
        Source source = random.nextBoolean() ? Source.OWN : new Source("=table", "0" + number);
        return Food.whole(new Label("made-" + number, name, random.nextBoolean() ? List.of("other " + number, "+" + number) : List.of(), "made", source),
                Composition.of(figures), handling);
    }

    @Test
    void what_is_given_as_a_table_is_brought_in_the_same() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Food> foods = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                foods.add(random(random, i));
            }
            Review review = review(FoodTableWriter.of(foods));
            assertEquals(List.of(), faults(review));
            assertEquals(foods, foods(review), "seed " + seed);
        }
    }

    @Test
    void no_given_text_is_a_formula_to_a_spreadsheet() {
        String text = FoodTableWriter.of(List.of(Food.whole(new Label("x", "=HYPERLINK(\"bad\")", List.of("@a"), "g", new Source("+t", "-1")), Composition.of(Map.of()), Handling.PLAIN)));
        assertTrue(text.contains("\"'=HYPERLINK(\"\"bad\"\")\",'@a,g,'+t,'-1,"), text);
    }

    @Test
    void a_table_that_was_taken_offers_nothing_the_second_time(@TempDir Path folder) throws IOException {
        Kitchen kitchen = Kitchen.at(folder);
        String text = "id,name,FAT\nhatch-pie,hatch pie,4\nlock-bun,lock bun,5\n";
        Saving saving = new Taking(kitchen, SHELF).take(review(text));
        assertEquals("Saved in foods/own/t.json.", saving.said());
        Library library = Library.load(kitchen);
        Review again = FoodTable.review(Input.of(RawFile.of("t.csv", text)), library.shelf(), kitchen.freeName(hobside.file.Own.FOODS, "t")).value().orElseThrow();
        assertTrue(again.isEmpty());
        assertEquals(2, again.counts().alreadyThere());
        assertTrue(new Taking(kitchen, library.shelf()).take(again).said().startsWith("Nothing is left"));
        assertEquals(List.of("t.json"), names(folder.resolve("foods/own")));
    }

    private static List<String> names(Path folder) throws IOException {
        try (java.util.stream.Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    /** A table that makes itself up as it is read: a million rows, 36 MB, are never in memory and hardly read. */
    private static final class Endless implements Input {
        private long bytes;

        @Override
        public String name() {
            return "million.csv";
        }

        @Override
        @SuppressWarnings("InputStreamSlowMultibyteRead") // Every byte is counted as it is read.
        public InputStream open() {
            return new InputStream() {
                private byte[] row = "name,FAT,FASAT,NA\n".getBytes(StandardCharsets.UTF_8);
                private int at;
                private int number;

                @Override
                public int read() {
                    if (at == row.length) {
                        if (number == 1_000_000) {
                            return -1;
                        }
                        row = ("food number " + number++ + ",12.5,3.25,400\n").getBytes(StandardCharsets.UTF_8);
                        at = 0;
                    }
                    bytes++;
                    return row[at++];
                }
            };
        }
    }

    @Test
    void of_a_million_rows_twenty_thousand_are_offered_and_the_limit_is_said() throws IOException {
        Endless endless = new Endless();
        Review review = FoodTable.review(endless, SHELF, "million").value().orElseThrow();
        assertEquals(20_000, foods(review).size());
        assertInstanceOf(Review.Goods.Pack.class, review.goods());
        assertEquals("million.csv:20002: found more than 20000 rows; expected at most 20000; this row and what follows is not read; split the table into several files",
                faults(review).get(0));
        assertTrue(endless.bytes < 50_000_000, "read " + endless.bytes);
    }

    @Test
    void a_large_table_becomes_a_pack_whose_ids_begin_with_its_name() {
        StringBuilder text = new StringBuilder("name,FAT\n");
        for (int i = 0; i <= FoodTable.SMALL; i++) {
            text.append("bank food ").append(i).append(",1\n");
        }
        Review review = review(text.toString());
        assertInstanceOf(Review.Goods.Pack.class, review.goods());
        assertEquals("t-bank-food-0", foods(review).get(0).id());
    }
}
