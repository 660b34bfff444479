package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Seeds;
import hobside.stage.run.Compared.Shorten;
import hobside.stage.run.Happening.What;
import hobside.stage.run.RunReport.Care;
import hobside.stage.run.RunReport.Row;
import hobside.talk.Cue;
import hobside.talk.Script;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RunReportTest {

    private static final Talk TALK = Talks.small();

    private final List<Happening> happened = new ArrayList<>();

    private RunReportTest then(long seconds, What what, String cue, String text) {
        happened.add(new Happening(seconds * 1_000, what, cue, text));
        return this;
    }

    private RunReportTest then(long seconds, What what, String cue) {
        return then(seconds, what, cue, "");
    }

    private Run run(int number) {
        Run run = new Run(Talks.head(Run.Kind.LIVE).begun(number), happened);
        happened.clear();
        return run;
    }

    private Run evening() {
        return then(12, What.ON, "welcome/hello").then(13, What.SKIP, "welcome/most").then(20, What.ON, "bench/care:raw-meat")
                .then(22, What.DROPPED, "", "questions:salt/ask\nquestions:salt/answer").then(60, What.ON, "change:trim:ribs/why")
                .then(61, What.STUMBLED, "change:trim:ribs/do").then(75, What.ON, "change:trim:ribs/do").then(80, What.ASKED, "", "Can I use oil?")
                .then(85, What.ON, "change:trim:ribs/show").then(86, What.TOO_LONG, "own-1").then(105, What.ON, "own-1").then(106, What.CARE_ASKED, "raw-meat")
                .then(110, What.CARE_DONE, "raw-meat").then(111, What.CARE_DONE, "raw-meat").then(120, What.NOTE, "", "less salt").then(125, What.OVER, "").run(1);
    }

    @Test
    void a_report_says_what_became_of_each_cue() {
        RunReport.Fates fates = RunReport.of(evening()).fates();
        assertEquals(Set.of("welcome/hello", "bench/care:raw-meat", "change:trim:ribs/why", "change:trim:ribs/do", "change:trim:ribs/show", "own-1"), fates.said());
        assertEquals(Set.of("welcome/most"), fates.skipped());
        assertEquals(Set.of("questions:salt/ask", "questions:salt/answer"), fates.dropped());
        assertEquals(Set.of("table/serve", "table/care:samples"), fates.open());
        assertTrue(RunReport.of(evening()).finished());
    }

    /** Worked by hand: welcome 12 + 1 s, bench 7 s, change 40 + 15 + 10 + 20 s, table 20 s of 20 planned; 125 s of 100 in all. */
    @Test
    void planned_stands_against_taken_section_by_section() {
        List<Row> expected = List.of(new Row("welcome", 20, 13), new Row("bench", 10, 7), new Row("change:trim:ribs", 40, 85), new Row("questions", 20, 0),
                new Row("table", 20, 20));
        assertEquals(expected, RunReport.of(evening()).times().sections());
        assertEquals(expected, RunReport.of(evening(), TALK).times().sections());
        assertEquals(new Row("", 110, 125), RunReport.of(evening()).times().all());
        assertEquals(45, expected.get(2).over());
    }

    @Test
    void marks_questions_and_cautions_come_with_their_times() {
        RunReport.Remarks remarks = RunReport.of(evening()).remarks();
        assertEquals(List.of(What.STUMBLED, What.TOO_LONG), remarks.marks().stream().map(Happening::what).toList());
        assertEquals("Can I use oil?", remarks.asked().get(0).text());
        assertEquals("less salt", remarks.notes().get(0).text());
        assertEquals(List.of(new Care("raw-meat", OptionalLong.of(106_000), OptionalLong.of(110_000))), remarks.cautions());
    }

    @Test
    void a_report_can_be_made_of_any_run() {
        for (long seed = 0; seed < Seeds.upTo(300); seed++) {
            Run run = Runs.wild(seed);
            RunReport report = RunReport.of(run);
            int planned = report.times().sections().stream().mapToInt(Row::planned).sum();
            assertEquals(report.times().all().planned(), planned);
            assertFalse(report.finished());
        }
    }

    @Test
    void runs_stand_side_by_side_the_oldest_first() {
        Run first = evening();
        Run second = then(30, What.ON, "welcome/hello").then(36, What.OVER, "").run(2);
        Compared compared = Compared.of(List.of(second, first), TALK);
        assertEquals(List.of(1L, 2L), compared.runs().stream().map(Run.Head::begunAt).toList());
        Compared.Row welcome = compared.rows().get(0);
        assertEquals(new Compared.Row("welcome", "The welcome", 20, List.of(OptionalInt.of(13), OptionalInt.of(36))), welcome);
        assertEquals(23, welcome.spread());
        assertEquals(List.of(OptionalInt.of(85), OptionalInt.empty()), compared.rows().get(2).taken());
    }

    @Test
    void what_may_be_dropped_is_shortened_before_what_must_be_said_and_cautions_never() {
        Run slow = then(40, What.ON, "welcome/hello").then(70, What.ON, "welcome/most").then(130, What.ON, "bench/care:raw-meat").then(142, What.ON, "change:trim:ribs/why")
                .then(143, What.TOO_LONG, "change:trim:ribs/do").then(150, What.ON, "change:trim:ribs/do").then(160, What.OVER, "").run(1);
        Run quick = then(12, What.ON, "welcome/hello").then(40, What.ON, "welcome/most").then(100, What.ON, "bench/care:raw-meat").run(2);
        List<Shorten> first = Compared.of(List.of(slow, quick), TALK).shortenFirst();
        assertEquals(List.of("welcome/most", "welcome/hello", "change:trim:ribs/do"), first.stream().map(Shorten::cue).toList());
        assertEquals("19 s over plan", first.get(0).reasons().said());
        assertEquals("16 s over plan, 28 s between its shortest and longest", first.get(1).reasons().said());
        assertEquals("marked too long once", first.get(2).reasons().said());
    }

    @Test
    void a_run_goes_over_all_cues_but_the_list_of_the_bench() {
        List<Run.Planned> plan = Planning.plan(TALK, Timing.at(Script.Pacing.FIRST));
        assertEquals(TALK.cues().size() - 1, plan.size());
        assertTrue(plan.stream().noneMatch(planned -> planned.cue().equals("bench/in:ribs")));
        assertTrue(plan.stream().filter(planned -> Cue.isCaution(planned.cue())).allMatch(Run.Planned::must));
    }

    @Test
    void what_remains_begins_with_the_rest_of_the_cue_one_is_on() {
        Timing timing = Timing.at(Script.Pacing.FIRST);
        Standing standing = Standing.at(Talks.head(Run.Kind.LIVE), Talks.head(Run.Kind.LIVE).keys()).after(new Happening(9_000, What.ON, "welcome/hello", ""));
        List<CatchUp.Remaining> rest = Remainder.of(TALK, timing, standing, 12_000);
        assertEquals(CatchUp.Remaining.of("welcome/most", timing.seconds(TALK.cues().get(1)) - 3, true, 5), rest.get(0));
        assertEquals(standing.toCome(), rest.stream().map(CatchUp.Remaining::cue).toList());
        CatchUp.Answer answer = CatchUp.of(rest, 0);
        assertEquals(Set.of("change:trim:ribs/show", "questions:salt/ask", "questions:salt/answer"), Set.copyOf(answer.drop()));
        assertTrue(answer.late() > 0);
    }

    @Test
    void a_caution_has_no_worth_and_showing_a_change_has_more_than_a_question() {
        List<Cue> cues = TALK.cues();
        assertThrows(IllegalArgumentException.class, () -> Worth.of(cues.get(3), Talk.Part.BENCH));
        assertTrue(Worth.of(cues.get(6), Talk.Part.CHANGE) > Worth.of(cues.get(8), Talk.Part.QUESTIONS));
        assertTrue(Worth.of(cues.get(4), Talk.Part.CHANGE) > Worth.of(cues.get(4), Talk.Part.ASIDE));
    }

    @Test
    void a_plan_takes_the_seconds_of_the_stage_where_there_are_some() {
        Timing timing = Timing.at(Script.Pacing.FIRST);
        List<Run.Planned> plain = Planning.plan(TALK, timing);
        List<Run.Planned> staged = Planning.plan(TALK, timing, Map.of("welcome/most", 77));
        assertEquals(77, staged.get(1).seconds());
        assertEquals(plain.get(0), staged.get(0));
        assertEquals(new Run.Planned("welcome/most", 77, false, plain.get(1).wording()), staged.get(1));
        Run.Head head = Planning.head(Run.Kind.LIVE, "rib-pot", Script.Pacing.FIRST, plain);
        assertEquals(new Run.Head(Run.Kind.LIVE, "rib-pot", 0, Script.Pacing.FIRST.slot(), plain), head);
    }

    /** Twelve seconds on the first cue, which is planned for ten: none of it is left, and it is not less than none. */
    @Test
    void nothing_is_left_of_a_cue_that_took_too_long_already() {
        Standing standing = Standing.at(Talks.head(Run.Kind.LIVE), Talks.head(Run.Kind.LIVE).keys());
        Timing timing = Timing.at(Script.Pacing.FIRST);
        List<CatchUp.Remaining> rest = Remainder.of(TALK, timing, standing, 500_000);
        assertEquals(0, rest.get(0).seconds());
        assertEquals(timing.seconds(TALK.cues().get(1)), rest.get(1).seconds());
        assertTrue(rest.stream().filter(each -> Cue.isCaution(each.cue())).allMatch(each -> each.must() && each.value() == 0));
        Standing end = standing.after(new Happening(1, What.JUMP, "table/care:samples", "")).after(new Happening(2, What.ON, "", ""));
        assertEquals(List.of(), Remainder.of(TALK, timing, end, 3));
    }

    @Test
    void a_question_stands_in_the_questions_and_a_cue_of_ones_own_with_the_one_before() {
        List<Run.Planned> plan = List.of(new Run.Planned("questions:salt/ask", 5, true, 0), new Run.Planned("own-1", 6, true, 0), new Run.Planned("alone", 7, true, 0));
        List<Row> rows = RunReport.of(new Run(new Run.Head(Run.Kind.LIVE, "pot", 0, 0, plan), List.of())).times().sections();
        assertEquals(List.of(new Row("questions", 11, 0), new Row("alone", 7, 0)), rows);
    }

    @Test
    void a_run_that_broke_off_took_as_long_as_is_known() {
        Run run = then(12, What.ON, "welcome/hello").then(30, What.NOTE, "", "salt").run(1);
        assertEquals(30, RunReport.of(run).times().all().taken());
        assertEquals(0, RunReport.of(run(2)).times().all().taken());
        assertFalse(RunReport.of(run).finished());
    }

    @Test
    void the_words_of_a_cue_have_the_number_of_its_text() {
        assertEquals(Wording.of("Words of welcome/hello"), Wording.of(TALK.cues().get(0)));
    }

    @Test
    void a_cue_belongs_to_the_section_in_which_the_talk_has_it_now() {
        Talk.Section welcome = TALK.sections().get(0);
        Talk moved = new Talk(TALK.front(), List.of(new Talk.Section(new Talk.Section.Head(Talk.Part.RECAP, "recap", "At last"), welcome.cues(), welcome.board(), welcome.figures())));
        Run run = then(12, What.ON, "welcome/hello").run(1);
        assertEquals(new Row("recap", 20, 12), RunReport.of(run, moved).times().sections().get(0));
        assertEquals(new Row("welcome", 20, 12), RunReport.of(run).times().sections().get(0));
    }
}
