package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.stage.run.Compared.Reasons;
import hobside.stage.run.Compared.Shorten;
import hobside.stage.run.Happening.What;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Why a cue is to be shortened, and which comes first: rows worked by hand. Each cue of the small talk is planned for ten seconds. */
class ComparedTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "4 | 0 | 0 | 9  | ''",
        "5 | 0 | 0 | 0  | 5 s over plan",
        "0 | 1 | 2 | 0  | marked too long once, stumbled twice",
        "0 | 2 | 3 | 0  | marked too long twice, stumbled 3 times",
        "6 | 0 | 1 | 10 | 6 s over plan, stumbled once, 10 s between its shortest and longest"})
    void only_what_is_worth_saying_is_said(int over, int tooLong, int stumbled, int spread, String said) {
        assertEquals(said, new Reasons(over, tooLong, stumbled, spread).said());
    }

    @Test
    void a_section_that_nobody_reached_has_no_spread() {
        assertEquals(0, new Compared.Row("table", "The table", 20, List.of(OptionalInt.empty(), OptionalInt.empty())).spread());
        assertEquals(0, new Compared.Row("table", "The table", 20, List.of(OptionalInt.of(9))).spread());
    }

    private static Run run(int number, Object... steps) {
        List<Happening> all = new ArrayList<>();
        for (int i = 0; i < steps.length; i += 3) {
            all.add(new Happening((int) steps[i] * 1_000L, (What) steps[i + 1], (String) steps[i + 2], ""));
        }
        return new Run(Talks.head(Run.Kind.REHEARSAL).begun(number), all);
    }

    private static List<String> first(Run... runs) {
        return Compared.of(List.of(runs), Talks.small()).shortenFirst().stream().map(Shorten::cue).toList();
    }

    /**
     * Both may be dropped. "most" took 10 s more than planned, which counts 10; "show" was stumbled at three times, which counts 15,
     * or twice, which counts 10 as well, and then the order of the talk holds.
     */
    @Test
    void a_stumble_counts_like_five_seconds_over_the_plan() {
        Object[] slow = {10, What.ON, "welcome/hello", 30, What.ON, "welcome/most", 31, What.STUMBLED, "change:trim:ribs/show", 32, What.STUMBLED, "change:trim:ribs/show"};
        assertEquals(List.of("welcome/most", "change:trim:ribs/show"), first(run(1, slow)));
        assertEquals(List.of("change:trim:ribs/show", "welcome/most"), first(run(1, slow), run(2, 1, What.STUMBLED, "change:trim:ribs/show")));
    }

    /** "most" took 14 s more than planned; "show" was marked once, which counts 10, then twice, which counts 20. */
    @Test
    void a_mark_counts_like_ten_seconds_over_the_plan() {
        Object[] slow = {10, What.ON, "welcome/hello", 34, What.ON, "welcome/most", 35, What.TOO_LONG, "change:trim:ribs/show"};
        assertEquals(List.of("welcome/most", "change:trim:ribs/show"), first(run(1, slow)));
        assertEquals(List.of("change:trim:ribs/show", "welcome/most"), first(run(1, slow), run(2, 1, What.TOO_LONG, "change:trim:ribs/show")));
    }

    /** Of 6, 10 and 16 s the middle is the plan, but ten seconds lie between; half of them count as much as one stumble. */
    @Test
    void an_uneven_cue_counts_by_half_of_its_spread() {
        Run[] runs = {run(1, 6, What.ON, "welcome/hello"), run(2, 10, What.ON, "welcome/hello", 11, What.STUMBLED, "change:trim:ribs/why"), run(3, 16, What.ON, "welcome/hello")};
        assertEquals(List.of("welcome/hello", "change:trim:ribs/why"), first(runs));
        Run again = run(4, 10, What.ON, "welcome/hello", 11, What.STUMBLED, "change:trim:ribs/why");
        assertEquals(List.of("change:trim:ribs/why", "welcome/hello"), first(runs[0], runs[1], runs[2], again));
        assertEquals(List.of(), first(run(1, 6, What.ON, "welcome/hello"), run(2, 10, What.ON, "welcome/hello"), run(3, 15, What.ON, "welcome/hello")));
    }

    @Test
    void the_plan_of_the_newest_run_is_shown() {
        Run.Head old = Talks.head(Run.Kind.REHEARSAL);
        List<Run.Planned> longer = old.plan().stream().map(each -> new Run.Planned(each.cue(), 25, each.must(), each.wording())).toList();
        Run newest = new Run(new Run.Head(old.kind(), old.demo(), old.begunAt() + 1, old.slot(), longer), List.of());
        assertEquals(50, Compared.of(List.of(newest, new Run(old, List.of())), Talks.small()).rows().get(0).planned());
    }
}
