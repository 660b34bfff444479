package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Csv;
import java.util.List;
import org.junit.jupiter.api.Test;

class TruthCheckTest {

    private static boolean isCaught(Corpus.Row row) {
        return Corpus.CHECK.check(row.words(), row.place()).stream().anyMatch(finding -> finding.kind().name().equals(row.kind()));
    }

    private static List<String> missed(String set) {
        return Corpus.planted(set).stream().filter(row -> !isCaught(row)).map(row -> row.kind() + " " + row.words() + " -> "
                + Corpus.CHECK.check(row.words(), row.place())).toList();
    }

    private static List<String> falseAlarms(String set) {
        return Corpus.sound(set).stream().flatMap(row -> Corpus.CHECK.check(row.words(), row.place()).stream()
                .map(finding -> row.words() + " -> " + finding)).toList();
    }

    @Test
    void every_planted_sentence_that_was_worked_with_is_caught() {
        List<String> missed = missed("dev");
        assertEquals(List.of(), missed, () -> missed.size() + " missed:\n" + String.join("\n", missed));
    }

    @Test
    void no_true_sentence_that_was_worked_with_trips_it() {
        List<String> alarms = falseAlarms("dev");
        assertEquals(List.of(), alarms, () -> alarms.size() + " alarms:\n" + String.join("\n", alarms));
    }

    @Test
    void held_measure() {
        List<String> missed = missed("held");
        List<String> alarms = falseAlarms("held");
        System.out.println("HELD missed " + missed.size() + "\n" + String.join("\n", missed));
        System.out.println("HELD alarms " + alarms.size() + "\n" + String.join("\n", alarms));
    }

    @Test
    void the_tables_are_whole() {
        assertEquals(60, Csv.beside(Corpus.class, "/check/planted.csv").rows().size());
        assertEquals(200, Csv.beside(Corpus.class, "/check/true.csv").rows().size());
        assertTrue(Corpus.planted("held").size() == 30 && Corpus.sound("held").size() == 100);
    }
}
