package hobside.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.file.Scripts;
import hobside.food.Food;
import hobside.measure.Amount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the rib pot and its foods are called, in Spanish with its genders and in English. */
class CalledTest {

    private static Called in(String language) {
        Demo pot = Bundle.demo("ropewalk-rib-pot");
        Demo told = pot.with(pot.script().in(language));
        return new Called(told, Scripts.stand(told, Bundle.STUDY).words());
    }

    private static Food food(String id) {
        return Bundle.STUDY.shelf().food(id).orElseThrow();
    }

    @Test
    void spanish_names_bring_their_article_and_can_do_without() {
        assertEquals("las costillas", in("es").the("ribs"));
        assertEquals("costillas", in("es").bare("ribs"));
        assertEquals("el agua", in("es").the("water"));
        assertEquals("agua", in("es").bare("water"));
        assertEquals("el aceite de colza", in("es").the(food("canola-oil")));
        assertEquals("aceite de colza", in("es").whole(food("canola-oil")));
        assertEquals("tomates en lata", in("es").brief(food("tomatoes-tinned")));
    }

    @Test
    void english_names_are_those_of_the_cook() {
        assertEquals("the ribs", in("en").the("ribs"));
        assertEquals("ribs", in("en").bare("ribs"));
        assertEquals("the rapeseed oil", in("en").the(food("canola-oil")));
    }

    @Test
    void the_words_of_a_bundled_dish_are_told_in_the_language() {
        assertEquals("Olla de costillas de la Cordelería", in("es").dish());
        assertEquals("en rodajas", in("es").preparation(Bundle.demo("ropewalk-rib-pot").dish().ingredient("onions").orElseThrow()));
        assertEquals("sliced", in("en").preparation(Bundle.demo("ropewalk-rib-pot").dish().ingredient("onions").orElseThrow()));
        assertEquals("x", in("en").step(1, "x"), "English has the words of the record");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1|cup|1 taza", "2|cups|2 tazas", "1.5|cups|1 1/2 tazas", "0.5|cup|1/2 taza", "1200|g|1.200 g", "2|bunches|2 manojos", "2|leaves|2 hojas", "3|''|3", "2|smidgens|2 smidgens"})
    void an_amount_has_the_unit_and_the_number_of_its_language(double count, String unit, String told) {
        assertEquals(told, in("es").amount(Amount.of(count, unit)));
    }

    @Test
    void every_ingredient_can_be_named_in_typed_words() {
        assertEquals("las hojas de laurel", in("es").ingredients().get("bay"));
        assertEquals(12, in("es").ingredients().size());
    }

    @Test
    void a_local_word_stands_beside_the_name() {
        Demo pot = Bundle.demo("ropewalk-rib-pot");
        Called called = new Called(pot.with(pot.script().withGloss("ribs", "asado")), Bundle.STUDY.english());
        assertEquals("the ribs (asado)", called.withGloss("ribs", "the ribs"));
        assertEquals("the salt", called.withGloss("salt", "the salt"));
    }
}
