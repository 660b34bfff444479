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

    private static Attempt.Result scored(double score) {
        return new Attempt.Result(score, "", Map.of(), "");
    }

    /** Three answers say something, two do not; what is known by four fifths needs no teaching. */
    @Test
    void what_the_group_has_least_luck_with_was_tried_often_enough() {
        did("ana", Kind.GUESS, wrong("twice"));
        did("ben", Kind.GUESS, wrong("twice"));
        assertEquals(Optional.empty(), report().weakest());
        did("ana", Kind.GUESS, scored(1));
        assertEquals(new Report.Weak(new Card(Kind.GUESS, "trim"), 1 / 3.0, 3), report().weakest().orElseThrow());
        for (double score : new double[] {0.8, 0.8, 0.8}) {
            did("ana", Kind.SPOT, scored(score));
        }
        for (double score : new double[] {0, 0.5, 0}) {
            did("ben", Kind.SHOW, scored(score));
        }
        assertEquals(new Report.Weak(new Card(Kind.SHOW, "trim"), 0.5 / 3, 3), report().weakest().orElseThrow());
    }

    @Test
    void where_all_is_well_nothing_is_weak() {
        for (int i = 0; i < 3; i++) {
            did("ana", Kind.SPOT, scored(0.8));
        }
        assertEquals(Optional.empty(), report().weakest());
    }

    @Test
    void answers_and_machines_are_counted_for_each_trainee() {
        did("ben", Kind.GUESS, scored(1));
        did("ana", Kind.SPOT, scored(1));
        log.add(new Attempt(new Attempt.Head("other-1", "ana", 99), new Label(new Card(Kind.GUESS, "trim"), 1, new Label.Origin("pot", 1)), scored(0.5)));
        Report report = report();
        assertEquals(List.of("ana", "ben"), report.trainees());
        assertEquals(3, report.answers());
        assertEquals(2, report.answers("ana"));
        assertEquals(0, report.answers("cleo"));
        assertEquals(2, report.machines("ana"));
        assertEquals(1, report.machines("ben"));
        assertEquals(List.of(Kind.GUESS, Kind.SPOT), report.kinds());
        assertFalse(TextSheet.of(ReportSheet.of(report, Bundle.STUDY.english())).contains("ben has practised on"));
    }

    @Test
    void of_misunderstandings_that_as_many_share_the_more_frequent_comes_first() {
        did("ana", Kind.GUESS, wrong("twice"));
        did("ana", Kind.GUESS, wrong("nothing"));
        did("ana", Kind.GUESS, wrong("nothing"));
        did("ana", Kind.GUESS, wrong("all-fat"));
        assertEquals(List.of("nothing", "all-fat", "twice"), report().common().stream().map(Report.Common::mistake).toList());
        assertTrue(TextSheet.of(ReportSheet.of(report(), Bundle.STUDY.english())).contains("Nobody shares a misunderstanding so far."));
    }

    @Test
    void a_point_that_is_not_among_the_usual_ones_stands_last() {
        did("ana", Kind.ANSWER, Points.result(List.of("what", "true"), Map.of("true", "yes", "what", "yes"), "x"));
        did("ana", Kind.EXPLAIN, Points.result(List.of("why"), Map.of("why", "yes"), "x"));
        assertEquals(List.of("what", "why", "true"), report().points());
    }

    /** By the table in the properties: 1 of 2 right is 50 %, and what nobody was marked by is left empty. */
    @Test
    void a_table_has_a_column_for_each_kind_and_point() {
        did("ana", Kind.EXPLAIN, Points.result(List.of("what", "why"), Map.of("what", "yes", "why", "no"), "x"));
        did("ben", Kind.GUESS, scored(1));
        String what = Bundle.STUDY.english().say("practice.point.what");
        String why = Bundle.STUDY.english().say("practice.point.why");
        assertEquals(List.of("trainee,answers,guess,explain," + what + "," + why, "ana,1,,50,100,0", "ben,1,100,,,"),
                ReportSheet.csv(report(), Bundle.STUDY.english()).lines().toList());
        String text = TextSheet.of(ReportSheet.of(report(), Bundle.STUDY.english()));
        assertTrue(text.contains("WHO EXPLAINS WHAT") && text.contains("100 %           0 %"), text);
    }

    @Test
    void topics_and_mistakes_that_the_words_do_not_know_are_told_as_they_are_written() {
        assertEquals("a question: salt", ReportSheet.topic("question:salt", Bundle.STUDY.english()));
        assertEquals("other:salt", ReportSheet.topic("other:salt", Bundle.STUDY.english()));
        assertEquals(":salt", ReportSheet.topic(":salt", Bundle.STUDY.english()));
        assertEquals("trimming", ReportSheet.topic("trim", Bundle.STUDY.english()));
        assertEquals("unheard", ReportSheet.topic("unheard", Bundle.STUDY.english()));
        assertEquals("unheard", ReportSheet.mistake("unheard", Bundle.STUDY.english()));
        assertEquals("leaves out: unheard", ReportSheet.mistake("point-unheard", Bundle.STUDY.english()));
        assertEquals("guess: trimming", ReportSheet.card(new Card(Kind.GUESS, "trim"), Bundle.STUDY.english()));
    }

    @Test
    void two_lines_of_one_number_are_told_in_the_report() {
        for (double score : new double[] {0, 1}) {
            log.add(new Attempt(new Attempt.Head("m-1", "ana", 1), new Label(new Card(Kind.GUESS, "trim"), 1, new Label.Origin("pot", 1)), scored(score)));
        }
        String text = TextSheet.of(ReportSheet.of(report(), Bundle.STUDY.english()));
        assertTrue(text.contains("bear one number but differ"), text);
        assertEquals(List.of("m-1"), report().clashes());
    }

    @Test
    void a_field_is_quoted_only_where_it_must_be() {
        assertEquals("", ReportSheet.field(""));
        assertEquals("plain", ReportSheet.field("plain"));
        assertEquals("\"a\nb\"", ReportSheet.field("a\nb"));
        assertEquals("\"a\rb\"", ReportSheet.field("a\rb"));
        assertEquals("'+1", ReportSheet.field("+1"));
    }

    @Test
    void an_answer_that_was_right_is_no_misunderstanding() {
        did("ana", Kind.GUESS, scored(1));
        assertEquals(List.of(), report().common());
        String text = TextSheet.of(ReportSheet.of(report(), Bundle.STUDY.english()));
        assertTrue(text.contains("More answers are needed before anything can be said."), text);
        assertFalse(text.contains("WHO EXPLAINS WHAT"), "nobody explained anything");
    }

    @Test
    void a_report_of_nothing_says_only_that() {
        String text = TextSheet.of(ReportSheet.of(Report.of(Results.NONE), Bundle.STUDY.english()));
        assertTrue(text.contains("There are no answers yet.") && !text.contains("trainee"), text);
    }
}
