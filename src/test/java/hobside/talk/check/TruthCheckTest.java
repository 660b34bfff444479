package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Csv;
import java.util.List;
import org.junit.jupiter.api.Test;

class TruthCheckTest {

    private final TruthCheck check = Corpus.check();

    private boolean isCaught(Corpus.Row row) {
        return check.check(row.words(), row.place()).stream().anyMatch(finding -> finding.kind().name().equals(row.kind()));
    }

    private List<String> missed(String set) {
        return Corpus.planted(set).stream().filter(row -> !isCaught(row)).map(row -> row.kind() + " " + row.words() + " -> "
                + check.check(row.words(), row.place())).toList();
    }

    private List<String> falseAlarms(String set) {
        return Corpus.sound(set).stream().flatMap(row -> check.check(row.words(), row.place()).stream()
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

    /**
     * The held half was read once, when the check was done: 28 of 30 caught, no false alarm among 100. Both halves are by the hand that
     * wrote the check, so strangers' sentences will fare worse. The two: "We have halved the saturated fat", which the range of the pot
     * bears out, and "a light dish", whose number the pot meets.
     */
    @Test
    void of_the_planted_sentences_that_were_held_back_28_of_30_are_caught() {
        List<String> missed = missed("held");
        assertTrue(missed.size() <= 2, () -> missed.size() + " missed:\n" + String.join("\n", missed));
    }

    @Test
    void none_of_the_true_sentences_that_were_held_back_trips_it() {
        List<String> alarms = falseAlarms("held");
        assertEquals(List.of(), alarms, () -> alarms.size() + " alarms:\n" + String.join("\n", alarms));
    }

    @Test
    void the_tables_are_whole() {
        assertEquals(60, Csv.beside(Corpus.class, "/check/planted.csv").rows().size());
        assertEquals(200, Csv.beside(Corpus.class, "/check/true.csv").rows().size());
        assertTrue(Corpus.planted("held").size() == 30 && Corpus.sound("held").size() == 100);
    }
}
