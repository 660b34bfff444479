package hobside.stage.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.Finished;
import hobside.file.Scripts;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.talk.Demo;
import hobside.talk.Talk;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What can be done when something is missing, in an order that can be looked through. */
class MissingTest {

    private static List<Remedy> of(Demo demo, String id) {
        return Missing.of(RandomWhatIfs.about(demo), id, Bundle.STUDY.shelf());
    }

    private static Remedy labelled(List<Remedy> remedies, String start) {
        return remedies.stream().filter(each -> each.label().startsWith(start)).findFirst().orElseThrow(() -> new AssertionError(start + " in " + remedies));
    }

    @Test
    void whatever_is_missing_the_first_way_out_adds_no_allergen() {
        for (String name : Finished.NAMES) {
            Demo demo = Finished.demo(name);
            for (Ways.Row row : Ways.ingredients(demo)) {
                List<Remedy> remedies = of(demo, row.id());
                assertTrue(remedies.get(0).allergens().isEmpty(), name + " " + row.name());
                assertTrue(remedies.stream().anyMatch(each -> each.label().equals("leave it out")), row.name());
            }
        }
    }

    @Test
    void what_is_on_the_bench_comes_before_what_would_have_to_be_fetched() {
        for (String name : Finished.NAMES) {
            Demo demo = Finished.demo(name);
            for (Ways.Row row : Ways.ingredients(demo)) {
                boolean away = false;
                for (Remedy remedy : of(demo, row.id()).stream().filter(each -> each.allergens().isEmpty()).toList()) {
                    assertFalse(away && remedy.place().isAtHand(), row.name() + ": " + remedy.label());
                    away |= !remedy.place().isAtHand();
                }
            }
        }
    }

    @Test
    void what_the_missing_food_was_to_replace_goes_back_as_the_dish_has_it() {
        Demo bake = Finished.demo("lighter-potato-bake");
        Remedy butter = labelled(of(bake, "butter"), "butter");
        assertEquals("butter, with salt, 60 g", butter.label());
        assertEquals(Remedy.Place.ON_THE_BENCH, butter.place());
        assertEquals(Remedy.Kept.KEPT, butter.role().kept());
        assertEquals(bake.plan().told().size() - 1, butter.notion().demo().plan().told().size());
    }

    @Test
    void a_substitute_with_a_new_allergen_is_marked_and_comes_last() {
        List<Remedy> milk = of(Finished.demo("lighter-potato-bake"), "milk");
        Remedy soy = labelled(milk, "soy drink");
        assertEquals(List.of("soy"), soy.allergens());
        assertTrue(milk.indexOf(soy) > milk.indexOf(labelled(milk, "goat's milk")));
    }

    @Test
    void the_difference_is_that_of_the_what_if() {
        Demo bake = Finished.demo("lighter-potato-bake");
        Remedy skimmed = labelled(of(bake, "milk"), "milk, skimmed");
        Trial trial = RandomWhatIfs.about(bake).trial(List.of(skimmed.notion()));
        assertEquals(trial.thanPlanned().saved(Nutrient.FASAT, Basis.SERVE), skimmed.effect().saved(Nutrient.FASAT, Basis.SERVE));
    }

    @Test
    void the_missing_food_is_never_its_own_substitute() {
        Demo ribs = Finished.demo("lighter-rib-pot");
        assertTrue(of(ribs, "carrots").stream().noneMatch(each -> each.label().startsWith("carrot,")));
        assertTrue(of(ribs, "no-such").isEmpty());
    }

    @Test
    void the_words_that_change_are_told_cue_by_cue() {
        Demo bake = Finished.demo("lighter-potato-bake");
        Talk before = Scripts.talk(bake, Bundle.STUDY);
        Demo without = labelled(of(bake, "crumbs"), "leave it out").notion().demo();
        List<ChangedWords.Row> rows = ChangedWords.of(before, Scripts.talk(without, Bundle.STUDY));
        ChangedWords.Row crumbs = rows.stream().filter(row -> row.key().equals("bench/in:crumbs")).findFirst().orElseThrow();
        assertTrue(crumbs.isGone() && crumbs.before().startsWith("1/2 cup breadcrumbs"), crumbs.toString());
        assertTrue(rows.stream().anyMatch(row -> row.isNew() && row.key().startsWith("change:leave-out:crumbs")));
        rows.forEach(row -> assertFalse(row.before().equals(row.after()), row.key()));
        assertEquals(List.of(), ChangedWords.of(before, Scripts.talk(bake, Bundle.STUDY)));
    }
}
