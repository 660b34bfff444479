package hobside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScoresTest {

    @Test
    void lines_and_branches_are_summed_by_package_with_the_folders_below_it_and_others_left_out() {
        List<String> table = Scores.coverage(List.of("GROUP,PACKAGE,CLASS,INSTRUCTION_MISSED,INSTRUCTION_COVERED,BRANCH_MISSED,BRANCH_COVERED,LINE_MISSED,LINE_COVERED,x,x,x,x",
                "h,hobside.talk,A,9,9,1,3,2,8,0,0,0,0", "h,hobside.talk.plain,B,9,9,0,4,1,9,0,0,0,0", "h,hobside.screen,C,9,9,9,9,9,9,0,0,0,0")).lines().toList();
        assertEquals(3, table.size());
        assertEquals(List.of("talk", "17 of 20, 85.0 %", "7 of 8, 87.5 %"), cells(table.get(1)));
        assertEquals(List.of("all of them", "17 of 20, 85.0 %", "7 of 8, 87.5 %"), cells(table.get(2)));
    }

    @Test
    void a_mutant_is_killed_by_a_test_that_fails_and_one_that_runs_on_or_is_not_reached_is_counted_apart() {
        List<String> table = Scores.mutation(List.of("T.java,hobside.dish.T,m,of,3,KILLED,t", "T.java,hobside.dish.T,m,of,3,TIMED_OUT,t",
                "T.java,hobside.dish.T,m,of,4,SURVIVED,none", "T.java,hobside.dish.T,m,of,5,NO_COVERAGE,none")).lines().toList();
        assertEquals(List.of("dish", "1 of 4, 25.0 %", "1, 1"), cells(table.get(1)));
    }

    /** Held against sha1sum, which puts Task first, then Turns, Visit and Slotted. */
    @Test
    void a_sample_is_chosen_by_the_hash_of_the_names() {
        List<String> names = List.of("hobside.stage.Slotted", "hobside.stage.order.Turns", "hobside.stage.run.Visit", "hobside.stage.Task");
        assertEquals("stage\\.Task|stage\\.order\\.Turns|stage\\.run\\.Visit", Scores.sample(names, 3));
    }

    private static List<String> cells(String line) {
        return List.of(line.strip().split(" {2,}"));
    }
}
