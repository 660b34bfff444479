package hobside.talk.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Scripts;
import hobside.talk.Cue;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The spoken words of the bundled talks, as a listener meets them. */
class TalkGradeTest {

    private static final Set<Cue.Kind> SPOKEN = Set.of(Cue.Kind.SAY, Cue.Kind.ASK, Cue.Kind.TAKE_CARE);

    private static List<String> spoken(String dish) {
        return Scripts.talk(Bundle.demo(dish), Bundle.STUDY).sections().stream().flatMap(section -> section.cues().stream())
                .filter(cue -> SPOKEN.contains(cue.kind())).map(Cue::words).toList();
    }

    /** Sixth grade: the lower end of MedlinePlus (2012), the upper of the SMOG sheet of the National Cancer Institute. */
    @Test
    void each_bundled_talk_is_of_the_sixth_grade_at_most() {
        for (String dish : Bundle.DISHES) {
            Report report = Sayability.of(spoken(dish), Rules.of("en", PlainWords.NONE));
            assertEquals(Report.Verdict.PLAIN, report.verdict(), dish + ": " + report.grades());
            assertTrue(report.words() > 100, dish + " has only " + report.words() + " words");
        }
    }

    @Test
    void every_place_leads_back_to_its_sentence() {
        for (String dish : Bundle.DISHES) {
            List<String> spoken = spoken(dish);
            for (Measured sentence : Sayability.of(spoken, Rules.of("en", PlainWords.NONE)).sentences()) {
                Place place = sentence.place();
                assertEquals(sentence.sentence(), spoken.get(place.cue()).substring(place.from(), place.to()));
            }
        }
    }

    @Test
    void the_counts_of_the_sentences_sum_to_those_of_the_talk() {
        for (String dish : Bundle.DISHES) {
            List<String> spoken = spoken(dish);
            int parts = spoken.stream().mapToInt(words -> Sayability.of(words, Rules.of("en", PlainWords.NONE)).words()).sum();
            assertEquals(parts, Sayability.of(spoken, Rules.of("en", PlainWords.NONE)).words());
        }
    }
}
