package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.guide.Component;
import hobside.guide.Guide;
import hobside.ledger.Figure;
import hobside.measure.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayShareTest {

    private final DayShare day = new DayShare(Bundle.STUDY.english());

    private String spoken(String key, double part) {
        Guide guide = Bundle.STUDY.guide(key).orElseThrow();
        return day.spoken(new Guide.Share(guide, guide.line(Component.SATURATED).orElseThrow(), new Figure(Range.exactly(part), false)));
    }

    /** Fractions up to a day, times above it; each to the nearest that is said. */
    @ParameterizedTest
    @CsvSource({"0.33, about a third of a day's saturated fat", "0.92, about nine tenths of a day's saturated fat", "0.93, about a whole day's saturated fat", "1.12, about a whole day's saturated fat",
        "1.13, about one and a quarter times a whole day's saturated fat", "1.45, about one and a half times a whole day's saturated fat", "1.8, nearly twice a whole day's saturated fat",
        "2.1, about twice a whole day's saturated fat", "2.6, about two and a half times a whole day's saturated fat", "9, about five times a whole day's saturated fat"})
    void a_serve_is_told_in_parts_or_times_of_a_day(double part, String words) {
        assertTrue(spoken("eu-ri", part).startsWith("One serve holds " + words + "."), spoken("eu-ri", part));
    }

    /** 20 g a day: Regulation (EU) No 1169/2011, Annex XIII. */
    @Test
    void the_guide_is_named_with_its_figure_and_its_country() {
        assertTrue(spoken("eu-ri", 1).endsWith("The guide is 20 g a day: reference intakes (European Union)."), spoken("eu-ri", 1));
    }

    /** At most 10 % of energy: the guide of the World Health Organization, 2023. */
    @Test
    void a_guide_in_shares_of_energy_is_told_in_per_cent() {
        String said = spoken("who-2023", 0.29);
        assertTrue(said.startsWith("About 29 per cent of its energy comes from saturated fat."), said);
        assertTrue(said.contains("at most 10 % of energy, over the whole day."), said);
    }

    @Test
    void a_figure_that_is_not_confirmed_is_marked() {
        Guide european = Bundle.STUDY.guide("eu-ri").orElseThrow();
        assertFalse(european.published().citation().isConfirmed());
        assertTrue(day.small(european).endsWith("(The figure is second-hand; check it before you rely on it.)"), day.small(european));
        assertEquals(european.sentence().strip(), day.small(european).substring(0, european.sentence().strip().length()));
    }
}
