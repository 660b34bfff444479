package hobside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.dish.Dish;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.ledger.Ledger;
import hobside.measure.Range;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is uncertain about a dish is uncertain about its claims and bands. */
class SpreadTest {

    /** A cut of which a fifth is fat that is all fat; 40 to 60 % of it is trimmed: 9 to 13 g of fat per 100 g, typically 11. */
    private static Sample trimmed() {
        Food lean = Food.whole(Label.of("lean", "lean"), Composition.of(Map.of(Nutrient.FAT, 0.0)), Handling.PLAIN);
        Food fat = Food.whole(Label.of("fat", "fat"), Composition.of(Map.of(Nutrient.FAT, 100.0)), Handling.PLAIN);
        Food cut = Food.cut(Label.of("cut", "cut"), lean, List.of(new Part(Part.Kind.FAT, fat, Range.exactly(0.2))), Handling.PLAIN);
        Dish dish = Table.dish(Table.ingredient("cut", cut));
        return Sample.of(Ledger.totals(dish, List.of(new Trim("cut", Taken.TYPICAL)), Table.books()));
    }

    private static Claim atMost(double grams) {
        Published published = new Published("own", "low fat", "nowhere", Citation.of("an invented rule", "2025", Mark.CONFIRMED));
        return new Claim(published, ClaimKind.LOW_FAT, Per.HUNDRED_GRAMS,
                List.of(new Condition(Condition.Rule.AT_MOST, Component.FAT, grams, Unit.AMOUNT)));
    }

    @Test
    void a_limit_within_the_spread_cannot_be_judged() {
        Claim.Finding finding = atMost(11.5).check(trimmed(), trimmed());
        assertEquals(Verdict.CANNOT_SAY, finding.verdict());
        assertTrue(finding.sentence().startsWith("Cannot say whether it meets the number for \"low fat\""), finding.sentence());
        assertTrue(finding.sentence().contains("too close to say"), finding.sentence());
    }

    @Test
    void a_limit_outside_the_spread_can() {
        assertEquals(Verdict.MEETS, atMost(14).check(trimmed(), trimmed()).verdict());
        assertEquals(Verdict.MISSES, atMost(8).check(trimmed(), trimmed()).verdict());
    }

    @Test
    void a_band_that_the_spread_straddles_is_told_as_two() {
        Published published = new Published("own", "bands", "nowhere", Citation.of("an invented rule", "2025", Mark.CONFIRMED));
        Band band = new Band(published, Component.FAT, Per.HUNDRED_GRAMS, new Band.Edges(11, 20, new Band.BigPortion(100, 50)));
        assertEquals(List.of(Band.Level.LOW, Band.Level.MEDIUM), band.levelsOf(trimmed()));
        assertEquals("fat: low (green) or medium (amber) by the bands (nowhere)", band.told(trimmed()));
    }
}
