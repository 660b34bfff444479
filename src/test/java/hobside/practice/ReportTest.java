package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.talk.paper.HtmlSheet;
import hobside.talk.paper.TextSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who can explain what, what is misunderstood, what to teach next. */
class ReportTest {

    private final List<Entry> log = new ArrayList<>();

    private void did(String trainee, Kind kind, Attempt.Result result) {
        log.add(new Attempt(new Attempt.Head("m" + trainee + "-" + log.size(), trainee, log.size()), new Label(new Card(kind, "trim"), 1, new Label.Origin("pot", 1)), result));
    }

    private static Attempt.Result wrong(String mistake) {
        return new Attempt.Result(0, mistake, Map.of(), "");
    }

    private Report report() {
        return Report.of(Results.of(log));
    }

    @Test
    void the_commonest_misunderstanding_is_what_most_trainees_share() {
        did("ana", Kind.GUESS, wrong("whole-pot"));
        did("ben", Kind.GUESS, wrong("whole-pot"));
        for (int i = 0; i < 5; i++) {
            did("ben", Kind.GUESS, wrong("twice"));
        }
        assertEquals(new Report.Common("whole-pot", 2, 2), report().common().get(0));
        assertEquals(new Report.Common("twice", 1, 5), report().common().get(1));
        String text = TextSheet.of(ReportSheet.of(report(), Bundle.STUDY.english()));
        assertTrue(text.contains("takes the pot for a plate (2 trainees, 2 times)"), text);
        assertTrue(text.contains("Speak about this first: takes the pot for a plate."), text);
        assertTrue(text.contains("guess: trimming: 0 % of the answers were right"), text);
    }

    @Test
    void the_last_five_answers_count() {
        for (int i = 0; i < 5; i++) {
            did("ana", Kind.GUESS, wrong("twice"));
        }
        for (int i = 0; i < 4; i++) {
            did("ana", Kind.GUESS, new Attempt.Result(1, "", Map.of(), ""));
        }
        assertEquals(Optional.of(0.8), report().share("ana", Kind.GUESS));
        assertEquals(Optional.empty(), report().share("ana", Kind.SPOT));
    }

    @Test
    void points_are_counted_half_where_they_are_half_there() {
        did("ana", Kind.EXPLAIN, Points.result(Points.asked(2), Map.of("what", "yes", "why", "part", "how-much", "none"), "x"));
        did("ana", Kind.EXPLAIN, Points.result(Points.asked(2), Map.of("what", "yes", "why", "no", "how-much", "unsure"), "x"));
        assertEquals(Optional.of(1.0), report().share("ana", "what"));
        assertEquals(Optional.of(0.25), report().share("ana", "why"));
        assertEquals(Optional.empty(), report().share("ana", "how-much"), "what does not apply or cannot be told says nothing");
        assertEquals(List.of("what", "why", "how-much"), report().points());
    }

    @Test
    void a_table_for_spreadsheets_holds_no_formula_and_quotes_its_commas() {
        assertEquals("'=1+1", ReportSheet.field("=1+1"));
        assertEquals("'-x", ReportSheet.field("-x"));
        assertEquals("\"'@a,b\"", ReportSheet.field("@a,b"));
        assertEquals("\"say \"\"no\"\"\"", ReportSheet.field("say \"no\""));
        did("ana", Kind.GUESS, wrong("twice"));
        assertEquals("trainee,answers,guess\r\nana,1,0\r\n", ReportSheet.csv(report(), Bundle.STUDY.english()));
    }

    @Test
    void every_report_prints_in_both_languages_also_an_empty_one() {
        for (String code : List.of("en", "es")) {
            assertFalse(TextSheet.of(ReportSheet.of(Report.of(Results.NONE), Bundle.STUDY.words(code))).contains("{"));
        }
        did("ana", Kind.GUESS, wrong("whole-pot"));
        did("ben", Kind.ANSWER, wrong("point-why"));
        log.add(new Attempt(new Attempt.Head("other-1", "ana", 99), new Label(new Card(Kind.ANSWER, "myth:light"), 1, new Label.Origin("pot", 1)), wrong("promise")));
        for (String code : List.of("en", "es")) {
            String html = HtmlSheet.of(ReportSheet.of(report(), Bundle.STUDY.words(code)));
            assertTrue(html.contains("ana") && !html.contains("{title"), html);
        }
        assertTrue(TextSheet.of(ReportSheet.of(report(), Bundle.STUDY.english())).contains("ana has practised on 2 machines"));
    }
}
