package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Offered;
import hobside.Fixtures;
import hobside.RandomPlans;
import hobside.Seeds;
import hobside.talk.Demo;
import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the program writes itself must pass its own check, whatever the plan. */
class OwnWordsTest {

    private static List<String> tripped(Stand stand) {
        TruthCheck check = TruthCheck.of(Facts.of(stand, Bundle.STUDY.published()));
        List<String> tripped = new ArrayList<>();
        List<Cue> cues = new ArrayList<>();
        for (Talk.Section section : TalkWriter.write(stand).sections()) {
            Place place = Place.of(section, stand.ledger());
            section.cues().forEach(cue -> check.check(cue.words(), place).forEach(finding -> tripped.add(section.heading() + ": " + cue.words() + " -> " + finding)));
            cues.addAll(section.cues());
        }
        check.missing(cues).forEach(finding -> tripped.add("missing: " + finding));
        return tripped;
    }

    private static void assertNone(Set<String> tripped) {
        assertEquals(0, tripped.size(), () -> tripped.size() + " findings in our own words:\n" + String.join("\n", tripped));
    }

    @Test
    void the_talks_of_the_finished_demos_pass_their_own_check() {
        Set<String> tripped = new LinkedHashSet<>();
        for (String name : List.of("lighter-rib-pot", "lighter-pumpkin-pot", "lighter-potato-bake")) {
            tripped.addAll(tripped(Corpus.stand(Corpus.demo(name))));
        }
        Bundle.DISHES.forEach(dish -> tripped.addAll(tripped(Corpus.stand(Bundle.demo(dish)))));
        assertNone(tripped);
    }

    @Test
    void the_talks_of_300_random_plans_pass_their_own_check() {
        Set<String> tripped = new LinkedHashSet<>();
        for (long seed = 0; seed < Seeds.upTo(300); seed++) {
            Demo demo = Demo.of(Fixtures.pot()).with(RandomPlans.of(seed));
            Stand.Beside beside = new Stand.Beside(Bundle.STUDY.guide("eu-ri"), Bundle.STUDY.published().cautions(), Bundle.STUDY.substitutes(),
                    new Stand.Tongue(Bundle.STUDY.english(), Fixtures.CROWN));
            tripped.addAll(tripped(Stand.of(demo, Fixtures.books(), beside)));
        }
        assertNone(tripped);
    }

    @Test
    void the_talks_of_60_random_choices_of_offers_pass_their_own_check() {
        Set<String> tripped = new LinkedHashSet<>();
        for (long seed = 0; seed < Seeds.upTo(60); seed++) {
            tripped.addAll(tripped(Corpus.stand(Offered.random(seed))));
        }
        assertNone(tripped);
    }

    @Test
    void every_reason_and_limit_in_the_book_of_swaps_passes() {
        List<String> tripped = new ArrayList<>();
        List<String> said = new ArrayList<>();
        Bundle.STUDY.substitutes().swaps().forEach(swap -> said.addAll(List.of(swap.words().why(), swap.words().handling(), swap.words().not())));
        Bundle.STUDY.substitutes().bulk().forEach(bulk -> said.addAll(List.of(bulk.words().why(), bulk.words().not())));
        assertTrue(said.size() > 300, "sentences in the book: " + said.size());
        TruthCheck check = Corpus.check();
        said.forEach(words -> check.check(words, Place.WHOLE).forEach(finding -> tripped.add(words + " -> " + finding)));
        assertTrue(tripped.isEmpty(), () -> String.join("\n", tripped));
    }
}
