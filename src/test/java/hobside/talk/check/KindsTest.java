package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What each kind of finding is told with, and where the same words mean something else. */
class KindsTest {

    private final TruthCheck check = Corpus.check();

    private List<Finding> check(String words, Place place) {
        return check.check(words, place);
    }

    private Finding only(String words, Place place) {
        List<Finding> findings = check(words, place);
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "NUMBER|There is 500 kJ less on each plate.", "NUMBER|It takes 12 grams off each plate.", "NUMBER|Each serve costs 3 crowns now and has 800 kilocalories.",
        "NUMBER|Each plate has thirty per cent less saturated fat.", "NUMBER|There is twice as much saturated fat in it.", "NUMBER|Only a tenth of the saturated fat is left.",
        "ABSOLUTE|These are the only ones that have no saturated fat.", "ABSOLUTE|It is 100 % healthy.", "ABSOLUTE|It contains 0 grams of fat.", "ABSOLUTE|All the saturated fat has gone.",
        "PROMISE|It heals the heart.", "PROMISE|It is safe for diabetics.", "PROMISE|It reduces your risk of dying.", "PROMISE|With this dish you can stop taking your pills.",
        "CLAIM|No cholesterol means low in saturated fat.", "CLAIM|Vegetable fat means low saturated fat.", "CLAIM|It's fat-free now.",
        "BASIS|Water takes the fat out.", "BASIS|The mince is now lean.", "BASIS|Rapeseed oil has no calories.", "BASIS|It is dearer per serve than before.",
        "BASIS|The pot holds less saturated fat now, because more people share it.", "BASIS|The whole pot now holds 7 grams of saturated fat.",
        "NUMBER|That knocks 900 kilocalories off a serve.", "NUMBER|We got rid of 95 per cent of the saturated fat.", "PROMISE|You can throw your pills away.",
        "PROMISE|People who eat this never get heart disease.", "BASIS|A little water and the dish gets leaner.", "BASIS|Barley soaks up the fat.",
        "SHAME|It is wrong to cook with lard.", "SHAME|You must never eat ribs again.", "SHAME|You should feel guilty about dripping.", "SHAME|It is poison for your heart."})
    void the_kind_is_found(String kind, String words) {
        assertTrue(check(words, Place.WHOLE).stream().anyMatch(finding -> finding.kind().name().equals(kind)), () -> check(words, Place.WHOLE).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Cook it on low.", "It is light and fluffy.", "Put 20 g of salt in 1 litre of water.", "Add 100 g of butter to the pan.", "A gram of fat gives 9 kilocalories.",
        "An adult needs about 2,000 kilocalories a day.", "A tablespoon of oil has about 120 kilocalories.", "Butter holds about 51 grams of saturated fat in 100 grams.",
        "The pan must be completely dry before the fat goes in.", "There is no oil in the pan yet.", "Pour off the fat until none runs any more.", "The heart of the cabbage goes in last.",
        "Each plate gets 120 g of meat.", "Free range chicken costs more.", "A third of the pot is barley and roots.", "Always taste; never guess.", "", " ", "...", "1,000,000,000,000,000 g"})
    void what_is_no_claim_about_fat_or_health_is_left_alone(String words) {
        assertEquals(List.of(), check(words, Place.WHOLE));
    }

    @Test
    void a_wrong_number_is_told_with_the_ledger_s_own_and_a_sentence_to_say_instead() {
        String words = "So that takes 30 grams of saturated fat off each plate.";
        Finding finding = only(words, Place.step(1));
        assertEquals("30 grams", finding.found());
        assertEquals("30 grams", words.substring(finding.from(), finding.to()));
        assertEquals("The ledger says about 20 grams of saturated fat less a serve through this change.", finding.reason());
        assertEquals("the ledger of this demo", finding.source());
        assertEquals(List.of(), check(finding.better(), Place.step(1)), finding.better());
    }

    @Test
    void the_better_words_of_every_planted_sentence_pass_themselves() {
        for (Corpus.Row row : Corpus.planted("dev")) {
            for (Finding finding : check(row.words(), row.place())) {
                assertEquals(List.of(), check(finding.better(), row.place()), row.words());
            }
        }
    }

    @Test
    void a_figure_that_is_right_in_one_place_may_be_wrong_in_another() {
        String end = "One serve holds about 7 grams of saturated fat.";
        assertEquals(List.of(), check(end, Place.RECAP));
        assertEquals(Finding.Kind.NUMBER, only(end, Place.WELCOME).kind());
        assertEquals(Finding.Kind.NUMBER, only(end, Place.step(0)).kind());
    }

    @Test
    void now_means_after_the_change_and_not_before_it() {
        assertEquals(List.of(), check("It was about 28 grams of saturated fat a serve.", Place.step(1)));
        assertEquals(Finding.Kind.NUMBER, only("Now it is about 28 grams of saturated fat a serve.", Place.step(1)).kind());
        assertEquals(List.of(), check("Now it is about 11 grams of saturated fat a serve.", Place.step(1)));
    }

    @Test
    void the_figure_of_the_pot_said_of_a_plate_is_named_as_such() {
        Finding finding = only("Each plate held 232 grams of saturated fat.", Place.WELCOME);
        assertEquals(Finding.Kind.BASIS, finding.kind());
        assertTrue(finding.reason().endsWith("This is the figure for the pot."), finding.reason());
    }

    @Test
    void a_claim_that_misses_says_figure_number_and_country() {
        Finding finding = only("This is a low-fat dish.", Place.RECAP);
        assertEquals(Finding.Kind.CLAIM, finding.kind());
        // Regulation (EC) No 1924/2006, Annex: at most 3 g of fat per 100 g of a solid food.
        assertTrue(finding.reason().startsWith("Misses the number for \"low fat\" under Regulation (EC) No 1924/2006, Annex (European Union): fat 4.79 g per 100 g (at most 3 g)."), finding.reason());
    }

    @Test
    void unknown_trans_fat_means_cannot_say() {
        Finding finding = only("It is reduced in saturated fat.", Place.RECAP);
        assertTrue(finding.reason().startsWith("Cannot say whether it meets the number"), finding.reason());
    }

    @Test
    void each_country_has_its_own_numbers() {
        TruthCheck american = TruthCheck.of(Facts.of(Corpus.STAND, Bundle.STUDY.published(), "United States"));
        String reason = american.check("This is a low-fat dish.", Place.RECAP).get(0).reason();
        assertTrue(reason.contains("(United States)") && !reason.contains("European"), reason);
        assertEquals(Facts.DEFAULT_COUNTRY, Facts.of(Corpus.STAND, Bundle.STUDY.published(), "Ostrey Landing").country());
        // Less fat by 62 % per 100 g: at least 30 % is asked for (Regulation (EC) No 1924/2006), so nothing is wrong with these words.
        assertEquals(List.of(), check("This is a reduced-fat dish.", Place.RECAP));
    }

    @Test
    void more_water_in_a_barley_pot_takes_nothing_out_but_saying_so_is_fine() {
        assertEquals(Finding.Kind.BASIS, only("Adding water makes it lower in fat.", Place.WHOLE).kind());
        assertEquals(List.of(), check("Adding water does not take any fat out.", Place.WHOLE));
    }

    @Test
    void up_and_down_are_held_against_the_ledger_of_that_step() {
        assertEquals(List.of(), check("Each serve is cheaper now.", Place.step(3)));
        assertEquals(Finding.Kind.BASIS, only("Each serve is dearer now.", Place.step(3)).kind());
        assertEquals(Finding.Kind.BASIS, only("With that the pot holds less saturated fat.", Place.step(3)).kind());
        assertEquals(List.of(), check("With that the pot holds less saturated fat.", Place.step(1)));
    }

    @Test
    void each_caution_that_is_taken_out_of_the_talk_is_missed_and_no_other() {
        List<Cue> cues = cues();
        assertEquals(List.of(), check.missing(cues));
        List<Cue> cautions = cues.stream().filter(cue -> cue.kind() == Cue.Kind.TAKE_CARE).toList();
        assertTrue(cautions.size() > 5);
        for (Cue caution : cautions) {
            List<Cue> others = cues.stream().filter(cue -> cue != caution).collect(Collectors.toList());
            List<Finding> missing = check.missing(others);
            assertEquals(List.of(caution.words()), missing.stream().map(Finding::better).toList());
            assertEquals(Finding.Kind.CAUTION, missing.get(0).kind());
        }
    }

    @Test
    void a_caution_may_be_shortened_and_reworded_but_not_emptied() {
        String hot = "Never leave hot fat alone; dry the food and lay it in away from you.";
        List<Cue> reworded = new ArrayList<>();
        cues().forEach(cue -> reworded.add(cue.words().startsWith(hot)
                ? inOtherWords(cue, "Hot fat is never left alone. If the pan catches fire, heat off, lid on, no water; leave it covered.") : cue));
        assertEquals(List.of(), check.missing(reworded));
        List<Cue> emptied = new ArrayList<>();
        cues().forEach(cue -> emptied.add(cue.words().startsWith(hot) ? inOtherWords(cue, "Take care with the pan.") : cue));
        assertFalse(check.missing(emptied).isEmpty());
    }

    /** Content words of the caution, four letters or more: those of a cue of one's own count when it has half of them. */
    @Test
    void a_cue_of_ones_own_may_say_a_caution_but_not_a_few_words_of_it() {
        List<Cue> cues = cues();
        Cue caution = cues.stream().filter(cue -> cue.kind() == Cue.Kind.TAKE_CARE).findFirst().orElseThrow();
        String[] words = caution.words().split(" ");
        List<Cue> others = new ArrayList<>(cues);
        others.remove(caution);
        others.add(said(String.join(" ", List.of(words).subList(0, words.length * 4 / 5))));
        assertEquals(List.of(), check.missing(others));
        others.set(others.size() - 1, said(String.join(" ", List.of(words).subList(0, words.length / 3))));
        assertEquals(List.of(caution.words()), check.missing(others).stream().map(Finding::better).toList());
    }

    private static Cue said(String words) {
        return new Cue("own:1", Cue.Kind.SAY, new Cue.Text(words, words), Cue.Details.SPOKEN);
    }

    /** In another language the words cannot be held against the English advice, so the key of the cue decides. */
    @Test
    void in_another_language_the_key_of_a_caution_is_enough() {
        Demo spanish = Corpus.RIBS.with(Corpus.RIBS.script().in("es"));
        TruthCheck inSpanish = TruthCheck.of(Facts.of(Corpus.stand(spanish), Bundle.STUDY.published()));
        List<Cue> cues = new ArrayList<>();
        Corpus.sections(spanish).forEach(section -> cues.addAll(section.cues()));
        assertEquals(List.of(), inSpanish.missing(cues));
        assertTrue(inSpanish.missing(List.of()).size() > 5);
    }

    private static Cue inOtherWords(Cue cue, String words) {
        return new Cue(cue.key(), cue.kind(), new Cue.Text(words, words), cue.details());
    }

    private static List<Cue> cues() {
        List<Cue> cues = new ArrayList<>();
        for (Talk.Section section : Corpus.sections(Corpus.RIBS)) {
            cues.addAll(section.cues());
        }
        return cues;
    }

    @Test
    void each_section_of_a_talk_has_its_place() {
        List<Talk.Section> sections = Corpus.sections(Corpus.RIBS);
        assertEquals(Place.WELCOME, Place.of(sections.get(0), Corpus.STAND.ledger()));
        assertEquals(Place.WHOLE, Place.of(sections.get(1), Corpus.STAND.ledger()));
        Talk.Section pour = sections.stream().filter(section -> section.heading().equals("Change 3: pour off the fat of the ribs")).findFirst().orElseThrow();
        assertEquals(Place.step(2), Place.of(pour, Corpus.STAND.ledger()));
        Talk.Section back = sections.stream().filter(section -> section.part() == Talk.Part.RECAP).findFirst().orElseThrow();
        assertEquals(Place.RECAP, Place.of(back, Corpus.STAND.ledger()));
    }

    @ParameterizedTest
    @CsvSource({"4.6, 4.6", "'1,000', 1000", "twenty-five, 25", "a hundred, 100", "two and a half, 2.5", "half a, 0.5", "a tenth of a, 0.1", "ninety, 90", "two hundred, 200"})
    void numbers_are_read_as_people_say_them(String words, double value) {
        assertTrue(words.matches(NumberWords.PATTERN), words);
        assertEquals(value, NumberWords.value(words), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"a third, 0.333333", "two thirds, 0.666667", "half, 0.5", "nine tenths, 0.9", "31.5 %, 0.315", "thirty per cent, 0.3", "40 per cent, 0.4"})
    void shares_are_read_as_people_say_them(String words, double value) {
        assertTrue(words.matches(NumberWords.SHARE), words);
        assertEquals(value, NumberWords.share(words), 1e-5);
    }
}
