package hobside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CsvTest {

    @Test
    void quoted_fields_hold_commas_line_ends_and_doubled_quotes() {
        Csv table = Csv.of("name,grams\n\"Beef, trimmed to 1/8\"\" fat,\nraw\",12.5\nplain,3\r\n");
        assertEquals(2, table.rows().size());
        assertEquals("Beef, trimmed to 1/8\" fat,\nraw", table.rows().get(0).text("name"));
        assertEquals(12.5, table.rows().get(0).number("grams"));
        assertEquals(3, table.rows().get(1).number("grams"));
    }

    @Test
    void an_empty_field_is_not_a_zero() {
        Csv.Row row = Csv.of("a,b,c\n1,,\n").rows().get(0);
        assertTrue(row.has("a"));
        assertFalse(row.has("b"));
        assertFalse(row.has("c"));
        assertThrows(IllegalArgumentException.class, () -> row.number("b"));
    }

    @Test
    void what_does_not_fit_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Csv.of("a,b\n1\n"));
        assertThrows(IllegalArgumentException.class, () -> Csv.of("a,b\n1,2,3\n"));
        assertThrows(IllegalArgumentException.class, () -> Csv.of("a,a\n1,2\n"));
        assertThrows(IllegalArgumentException.class, () -> Csv.of("a,b\n\"1,2\n"));
        assertThrows(IllegalArgumentException.class, () -> Csv.of("a,b\n\"1\"2,3\n"));
        assertThrows(IllegalArgumentException.class, () -> Csv.of("a\n1\n").rows().get(0).text("b"));
    }
}
