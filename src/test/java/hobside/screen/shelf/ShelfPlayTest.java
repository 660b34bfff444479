package hobside.screen.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Doubt;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Printed;
import hobside.screen.Evening;
import hobside.screen.Glyphs;
import hobside.screen.Golden;
import hobside.screen.Message;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Looking up foods and writing them down from packets: keys in, lines and files out. The biscuit is invented. */
class ShelfPlayTest {

    private static final Size WIDE = new Size(120, 40);

    @TempDir
    private Path folder;
    private Evening evening;

    @BeforeEach
    void open() {
        evening = new Evening(folder);
    }

    private VirtualStage shelf(Size size) {
        return evening.at("ropewalk-rib-pot", size).play("f");
    }

    private VirtualStage shelf() {
        return shelf(Size.HOME);
    }

    private static boolean shows(VirtualStage stage, String words) {
        return String.join(" ", stage.frame().text().split("\\s+")).contains(words);
    }

    private Optional<Food> own(String id) {
        return evening.library().shelf().food(id).filter(food -> evening.library().stock().own().contains(id));
    }

    /** Types one text into each line from the first on; an empty text leaves a line blank. */
    private static VirtualStage fill(VirtualStage form, String... lines) {
        for (String line : lines) {
            form.play("ctrl-u").type(line).play("down");
        }
        return form;
    }

    /** 30 g hold 590 kJ, 141 kcal, 6 g fat, 1.2 saturates, 18 carbohydrate, 7 sugars, 1.8 fibre, 2.4 protein, 0.3 salt. */
    private static VirtualStage biscuit(VirtualStage stage) {
        return fill(stage.play("ctrl-n"), "oat biscuit", "30 g", "590", "141", "6", "1.2", "18", "", "7", "1.8", "2.4", "0.3");
    }

    @Test
    void the_shelf_is_searched_while_one_types() {
        VirtualStage stage = shelf().type("coc cre");
        Golden.assertLooksAsKept("shelf-80x24", stage.frame());
        Golden.assertLooksAsKept("shelf-60x20", shelf(Size.LEAST).type("mince").frame());
        Golden.assertLooksAsKept("shelf-120x40", shelf(WIDE).type("milk").frame());
    }

    @Test
    void one_food_is_seen_in_full() {
        Golden.assertLooksAsKept("food-80x24", shelf().type("beef short rib").play("enter").frame());
        Golden.assertLooksAsKept("food-60x20", shelf(Size.LEAST).type("butter salted").play("enter space").frame());
        Golden.assertLooksAsKept("food-120x40", shelf(WIDE).type("milk whole").play("enter").frame());
    }

    @Test
    void what_is_not_known_is_said_to_be_unknown() {
        VirtualStage stage = shelf().type("oat biscuit");
        fill(stage.play("ctrl-n"), "oat biscuit", "100 g", "", "", "20").play("ctrl-s");
        assertTrue(shows(stage, "energy unknown"), stage.frame().text());
        assertTrue(shows(stage, "saturated unknown fat 20.0 g"), stage.frame().text());
        assertTrue(shows(stage, "sodium unknown"));
    }

    @Test
    void carbohydrate_without_its_fibre_is_at_least_so_much() {
        VirtualStage stage = fill(shelf().play("ctrl-n"), "oat biscuit", "30 g", "", "", "", "", "18").play("ctrl-s");
        assertTrue(shows(stage, "carbohydrate ≥ 60.0 g"), stage.frame().text());
        assertTrue(own("oat-biscuit").orElseThrow().composition().of(Nutrient.CHOCDF).isEmpty());
    }

    @Test
    void the_form_reads_and_checks_while_one_types() {
        Golden.assertLooksAsKept("packet-80x24", biscuit(shelf()).play("up up up up up up up up up up ctrl-u").type("950").frame());
        Golden.assertLooksAsKept("packet-60x20", biscuit(shelf(Size.LEAST)).frame());
        Golden.assertLooksAsKept("packet-120x40", biscuit(shelf(WIDE)).play("page-up down down").frame());
    }

    @Test
    void a_food_from_its_packet_is_on_the_disk_and_on_every_shelf_at_once() {
        VirtualStage stage = biscuit(shelf()).play("ctrl-s");
        assertTrue(shows(stage, "oat biscuit is on the shelf (foods/own/oat-biscuit.json)."), stage.frame().text());
        Food food = own("oat-biscuit").orElseThrow();
        assertEquals(20, food.per100g(Nutrient.FAT), 1e-9);
        assertEquals(400, food.per100g(Nutrient.NA), 1e-9); // 0.3 g of salt in 30 g: 120 mg of sodium
        assertEquals(66, food.per100g(Nutrient.CHOCDF), 1e-9); // 18 + 1.8 in 30 g
        stage.play("escape escape a").type("oat bisc").play("enter").type("60 g").play("enter");
        assertTrue(shows(stage, "Added oat biscuit."), stage.frame().text());
        stage.play("home enter f").type("oat bisc");
        assertTrue(shows(stage, "oat biscuit"), "it can be swapped in as well");
    }

    @Test
    void undo_still_gives_back_the_old_dish_after_a_new_food() {
        VirtualStage stage = evening.at("ropewalk-rib-pot", Size.HOME).play("enter enter");
        biscuit(stage.play("f")).play("ctrl-s escape escape");
        assertTrue(shows(stage.play("u"), "Taken back."), stage.frame().text());
        assertEquals(0, evening.saved("ropewalk-rib-pot").plan().size());
        stage.play("r");
        assertEquals(1, evening.saved("ropewalk-rib-pot").plan().size());
    }

    @Test
    void a_figure_that_is_hard_to_believe_is_overruled_with_a_reason_that_is_kept() {
        VirtualStage stage = biscuit(shelf()).play("page-up down down ctrl-u").type("950").play("ctrl-s");
        assertTrue(shows(stage, "Is it right all the same?"), stage.frame().text());
        assertTrue(own("oat-biscuit").isEmpty(), "nothing is written before the reason");
        assertTrue(shows(stage.play("enter"), "only overruled with a reason"));
        stage.type("the packet says so").play("enter");
        List<Doubt.Overruled> overruled = own("oat-biscuit").orElseThrow().label().source().overruled();
        assertEquals("the packet says so", overruled.get(0).reason());
        assertTrue(shows(stage.play("space space"), "because: the packet says so"), stage.frame().text());
        assertTrue(shows(stage.play("e ctrl-s"), "the packet says so"), "the reason is there to be given again");
    }

    @Test
    void more_than_100_grams_in_100_cannot_be_overruled() {
        VirtualStage stage = fill(shelf().play("ctrl-n"), "cake", "30 g", "", "", "31").play("ctrl-s");
        assertTrue(shows(stage, "100 g of no food hold more than 100"), stage.frame().text());
        assertTrue(evening.library().stock().own().isEmpty());
    }

    @Test
    void what_cannot_be_read_is_said_beside_its_line_and_nothing_is_written() {
        VirtualStage stage = fill(shelf().play("ctrl-n"), "cake", "100 g", "plenty").play("up");
        assertTrue(shows(stage, "\"plenty\" is no figure. Write a number of kJ"), stage.frame().text());
        assertTrue(shows(fill(stage, "<0.5").play("up"), "is a limit, not a figure"), stage.frame().text());
        assertTrue(shows(stage.play("ctrl-s"), "Not yet:"));
        assertTrue(evening.library().stock().own().isEmpty());
    }

    @Test
    void figures_for_100_ml_ask_for_the_density() {
        VirtualStage stage = fill(shelf().play("ctrl-n"), "plum juice", "100 ml", "200").play("ctrl-s");
        assertTrue(shows(stage, "Figures for ml need the density"), stage.frame().text());
        stage.type("1.05").play("ctrl-s");
        assertEquals(200 / 1.05, own("plum-juice").orElseThrow().composition().of(Nutrient.ENERC).getAsDouble(), 1e-9);
    }

    @Test
    void allergens_and_a_measure_go_with_the_food() {
        VirtualStage stage = biscuit(shelf()).play("page-down up up enter down down down enter escape down").type("biscuit 15 g").play("ctrl-s");
        Food food = own("oat-biscuit").orElseThrow();
        assertEquals(Set.of("gluten-oats"), food.handling().warnings().allergens());
        assertEquals("biscuit", food.handling().measures().get(0).name());
        assertTrue(shows(stage, "biscuit 15 g"));
        assertTrue(shows(stage, "oats (gluten)"), stage.frame().text());
    }

    @Test
    void a_food_of_ours_cannot_be_changed_or_deleted_but_copied() {
        VirtualStage stage = shelf().type("butter").play("enter");
        assertTrue(shows(stage.play("e"), "stays as it is"));
        assertTrue(shows(stage.play("x"), "stays on the shelf"));
        stage.play("c ctrl-u").type("whey butter").play("ctrl-s");
        Food copy = own("whey-butter").orElseThrow();
        assertEquals(evening.library().shelf().food("butter").orElseThrow().composition(), copy.composition());
        assertTrue(copy.label().source().table().startsWith("copied from USDA SR28"), copy.label().source().table());
    }

    @Test
    void a_corrected_food_corrects_the_dish_on_the_bench_and_undo_takes_that_back() {
        VirtualStage stage = biscuit(shelf()).play("ctrl-s escape escape a").type("oat bisc").play("enter").type("60 g").play("enter");
        stage.play("f").type("oat bisc").play("enter e down down down down ctrl-u").type("5").play("ctrl-s");
        assertEquals(5, fat("oat-biscuit"));
        assertTrue(shows(stage.play("escape escape"), "The dish has the new figures of oat biscuit; u takes that back."), stage.frame().text());
        stage.play("u");
        assertEquals(6, fat("oat-biscuit"), "the dish has its old record back");
        assertEquals(5, own("oat-biscuit").orElseThrow().label().source().packet().orElseThrow().of(Printed.FAT).getAsDouble(), "and the shelf the new one");
    }

    private double fat(String id) {
        return evening.saved("ropewalk-rib-pot").dish().ingredient(id).orElseThrow().food().label().source().packet().orElseThrow().of(Printed.FAT).getAsDouble();
    }

    @Test
    void an_own_food_is_deleted_after_a_question() throws IOException {
        VirtualStage stage = biscuit(shelf()).play("ctrl-s x enter");
        assertTrue(own("oat-biscuit").isPresent(), "the first row keeps it");
        stage.play("x down enter");
        assertTrue(own("oat-biscuit").isEmpty());
        assertTrue(shows(stage, "The shelf"));
        try (Stream<Path> files = Files.list(folder.resolve("foods/own"))) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void a_form_with_something_typed_is_left_only_on_the_second_escape() {
        VirtualStage stage = biscuit(shelf()).play("escape");
        assertTrue(shows(stage, "Escape once more leaves it"), stage.frame().text());
        assertTrue(shows(stage.type("0.3"), "A new food"));
        assertTrue(shows(stage.play("escape escape"), "The shelf"));
        assertTrue(shows(shelf().play("ctrl-n escape"), "The shelf"), "an empty form is left at once");
    }

    @Test
    void a_disk_that_refuses_leaves_the_form_as_it_is() throws IOException {
        Files.createDirectories(folder.resolve("foods"));
        Files.writeString(folder.resolve("foods/own"), "a file where the folder should be");
        VirtualStage stage = biscuit(shelf()).play("ctrl-s");
        assertTrue(shows(stage, "Not saved:"), stage.frame().text());
        assertTrue(shows(stage.play("page-up"), "oat biscuit"));
    }

    @Test
    void a_name_from_elsewhere_loses_its_control_characters() {
        VirtualStage stage = shelf().play("ctrl-n").tell(new Message.Pasted("bis\u001b[2Jcuit\nfine"));
        fill(stage.play("down"), "100 g", "", "", "1").play("ctrl-s");
        Food food = evening.library().shelf().foods().stream().filter(each -> each.name().contains("cuit")).findFirst().orElseThrow();
        assertFalse(food.name().chars().anyMatch(Character::isISOControl));
    }

    @Test
    void every_screen_of_the_shelf_has_its_keys_on_the_last_line_and_is_plain_in_ascii() {
        for (String way : List.of("", "enter", "ctrl-n", "f1", "enter ?", "enter c", "ctrl-n f1")) {
            for (Size size : List.of(Size.LEAST, Size.HOME, WIDE)) {
                VirtualStage stage = shelf(size).play(way);
                assertTrue(stage.line(size.height() - 1).strip().length() > 10, way + ": " + stage.frame().text());
                stage.frame().text().chars().filter(each -> each != '\n').forEach(each ->
                        assertTrue(each == '?' || Glyphs.plain((char) each) != Glyphs.UNKNOWN, way + " shows " + (char) each));
            }
        }
    }
}
