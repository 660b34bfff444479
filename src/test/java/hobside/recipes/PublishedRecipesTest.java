package hobside.recipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import hobside.Csv;
import hobside.Fixtures;
import hobside.talk.Demo;
import hobside.dish.Plan;
import hobside.file.DemoReader;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published recipe calculations as dish files, read and reckoned by ours: per 100 g as cooked they must come out as published.
 * Sources: first line of published.csv, and the note of each dish.
 */
class PublishedRecipesTest {

    static List<Csv.Row> recipes() {
        return Csv.beside(PublishedRecipesTest.class, "published.csv").rows();
    }

    @Test
    void the_table_is_complete() {
        assertEquals(17, recipes().size());
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void a_dish_reckoned_from_its_file_is_the_published_one(Csv.Row row) throws IOException {
        Read<Demo> read = DemoReader.read(file(row.text("file")), Shelf.EMPTY);
        assertEquals(List.of(), read.problems());
        Ledger ledger = Ledger.of(read.value().orElseThrow().dish(), Plan.EMPTY, Fixtures.books());
        within(0.5, row.number("saturated_g"), ledger, Nutrient.FASAT);
        within(0.5, row.number("fat_g"), ledger, Nutrient.FAT);
        within(0.5, row.number("protein_g"), ledger, Nutrient.PROCNT);
        within(0.5, row.number("carbohydrate_g"), ledger, Nutrient.CHOCDF);
        within(2, row.number("energy_kcal"), ledger, Nutrient.ENERC_KCAL);
    }

    private static void within(double percent, double published, Ledger ledger, Nutrient nutrient) {
        Figure ours = ledger.start().of(nutrient, Basis.HUNDRED_GRAMS);
        assertFalse(ours.atLeast(), nutrient + " is not known of every ingredient");
        assertEquals(published, ours.typical(), percent / 100 * published, nutrient.toString());
    }

    private static RawFile file(String name) throws IOException {
        try (InputStream in = PublishedRecipesTest.class.getResourceAsStream(name)) {
            return new RawFile(name, in.readAllBytes());
        }
    }
}
