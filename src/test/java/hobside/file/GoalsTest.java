package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.advice.Goal;
import hobside.dish.Plan;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import hobside.talk.Demo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GoalsTest {

    private static final Demo RIBS = Bundle.demo("ropewalk-rib-pot");

    private static Goal goal(String text) {
        return Goals.parse(text, RIBS, Bundle.STUDY).value().orElseThrow();
    }

    private static Outcome outcome(Plan plan) {
        return Ledger.outcome(RIBS.dish(), plan.told(), Bundle.STUDY.books());
    }

    private static final Outcome START = outcome(Plan.EMPTY);
    private static final Outcome TRIMMED = outcome(Plan.of(new Trim("ribs", Taken.TYPICAL)));

    /** What the trimmed pot holds is worked out here by hand from the ledger's own figures. */
    @Test
    void a_goal_in_grams_a_serve_is_reached_just_at_its_figure() {
        double grams = TRIMMED.of(Nutrient.FASAT, Basis.SERVE);
        assertTrue(goal(Math.round(Math.ceil(grams)) + " g").isReached(TRIMMED));
        assertTrue(!goal(Math.round(Math.floor(grams)) + " g").isReached(TRIMMED));
        assertTrue(!goal("6 g").isReached(START));
    }

    @Test
    void a_share_less_is_reckoned_from_the_dish_as_it_is_cooked_here() {
        double saved = 1 - TRIMMED.of(Nutrient.FASAT, Basis.SERVE) / START.of(Nutrient.FASAT, Basis.SERVE);
        assertTrue(goal(Math.round(Math.floor(saved * 100)) + " % less").isReached(TRIMMED));
        assertTrue(!goal(Math.round(Math.ceil(saved * 100)) + " %").isReached(TRIMMED));
        assertEquals(goal("a third less").isReached(TRIMMED), saved >= 1 / 3.0);
    }

    @Test
    void a_share_of_energy_takes_37_kilojoules_a_gram() {
        // Regulation (EU) No 1169/2011, Annex XIV: fat 37 kJ/g.
        double share = TRIMMED.of(Nutrient.FASAT, Basis.SERVE) * 37 / TRIMMED.of(Nutrient.ENERC, Basis.SERVE);
        assertTrue(goal(Math.round(Math.ceil(share * 100)) + " % of energy").isReached(TRIMMED));
        assertTrue(!goal(Math.round(Math.floor(share * 100)) + " % of energy").isReached(TRIMMED));
    }

    @Test
    void a_claim_is_the_published_number_of_the_guides_country() {
        // Regulation (EC) No 1924/2006, Annex: low in saturated fat is 1.5 g per 100 g and 10 % of energy; reduced is 30 % less (second-hand).
        Goal low = goal("low in saturated fat");
        assertEquals(goal("1.5 g per 100 g").isReached(TRIMMED) && goal("10 % of energy").isReached(TRIMMED), low.isReached(TRIMMED));
        assertTrue(low.told().contains("European Union"), low.told());
        assertTrue(goal("reduced saturated fat").isReached(TRIMMED));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "much better", "6 pounds", "less", "-3 g", "101 % less", "low in sugar"})
    void what_is_no_goal_says_what_would_be_one(String text) {
        Goals.Parsed parsed = Goals.parse(text, RIBS, Bundle.STUDY);
        assertTrue(parsed.value().isEmpty() && parsed.problem().contains("a third less"), parsed.problem());
    }

    @ParameterizedTest
    @CsvSource({"6 g,at most 6 g a serve", "6g,6.0 g per serve", "half,50 % less", "a quarter less,25 %"})
    void one_goal_can_be_typed_in_several_ways(String one, String other) {
        assertEquals(goal(one).isReached(TRIMMED), goal(other).isReached(TRIMMED));
    }
}
