package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.practice.rubric.Feedback;
import hobside.practice.rubric.Judged;
import hobside.practice.rubric.Mark;
import hobside.practice.rubric.Model;
import hobside.practice.rubric.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the marks of an explanation come to, worked by hand. */
class PointsTest {

    private static final List<String> THREE = List.of("what", "why", "how-much");

    @ParameterizedTest
    @CsvSource({"1, 2, why", "2, 3, how-much", "3, 4, not", "4, 5, safety", "5, 8, length"})
    void each_level_asks_for_more_points(int level, int count, String last) {
        List<String> asked = Points.asked(level);
        assertEquals(count, asked.size());
        assertEquals(last, asked.get(count - 1));
        assertEquals(asked, Points.asked(Label.parse("explain/trim/" + level + "/pot/1").orElseThrow()));
    }

    @Test
    void an_answer_has_points_of_its_own_and_one_who_is_watched_has_all() {
        assertEquals(List.of("what", "true", "plain", "respect", "length"), Points.asked(Label.parse("answer/question:salt/4/pot/1").orElseThrow()));
        assertEquals(Points.all(), Points.asked(Label.parse("watched/trim/1/pot/1").orElseThrow()));
        assertEquals(8, Points.all().size());
    }

    @ParameterizedTest
    @CsvSource({"yes, yes, yes, 1", "yes, part, no, 0.5", "yes, none, unsure, 1", "none, none, none, 0", "no, no, no, 0", "part, none, no, 0.25"})
    void half_counts_half_and_what_cannot_be_told_counts_nowhere(String what, String why, String howMuch, double score) {
        assertEquals(score, Points.score(THREE, Map.of("what", what, "why", why, "how-much", howMuch)), 1e-12);
    }

    /** Our own choice: 0.4 at most. What scores less keeps its score. */
    @Test
    void something_untrue_is_never_known() {
        List<String> asked = List.of("what", "true", "plain");
        assertEquals(0.4, Points.score(asked, Map.of("what", "yes", "true", "no", "plain", "yes")), 1e-12);
        assertEquals(0, Points.score(asked, Map.of("what", "no", "true", "no", "plain", "no")), 1e-12);
        assertEquals("point-true", Points.missing(asked, Map.of("what", "no", "true", "no")));
    }

    @Test
    void the_first_point_left_out_is_the_misunderstanding() {
        assertEquals("point-why", Points.missing(THREE, Map.of("what", "part", "why", "no", "how-much", "no")));
        assertEquals("", Points.missing(THREE, Map.of("what", "yes", "why", "unsure", "length", "no")));
    }

    private static Feedback marked(Point point, Mark mark) {
        List<Judged> all = new ArrayList<>();
        for (Point each : Point.values()) {
            all.add(new Judged(each, each == point ? mark : Mark.YES, List.of(), List.of(), "", 1, Optional.empty()));
        }
        return new Feedback(all, List.of(), new Model("We trim it."));
    }

    @Test
    void it_is_unfair_to_ask_for_what_the_ready_answer_does_not_meet() {
        assertFalse(Points.isFair(marked(Point.WHY, Mark.NO), THREE));
        assertTrue(Points.isFair(marked(Point.WHY, Mark.PART), THREE));
        assertTrue(Points.isFair(marked(Point.SAFETY, Mark.NO), THREE), "nobody asked for it");
        assertTrue(Points.isFair(marked(Point.PLAIN, Mark.NO), Points.all()));
        assertTrue(Points.isFair(marked(Point.LENGTH, Mark.NO), Points.all()));
    }
}
