package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Shelf;
import hobside.food.Source;
import hobside.screen.Message;
import hobside.screen.desk.Answer;
import hobside.screen.desk.DiskWork;
import hobside.screen.desk.Work;
import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two copies of the program on one kitchen do not harm each other: real processes where it is a matter of the same moment. */
@Timeout(90)
class TwoCopiesTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final int EACH = 40;

    @TempDir
    private Path root;

    private Kitchen kitchen() {
        return Kitchen.at(root);
    }

    private static Demo demo() {
        return Kitchen.bundled("ropewalk-rib-pot", SHELF);
    }

    private static Food food(String name, double fat) {
        Composition composition = SHELF.food("butter").orElseThrow().composition();
        return Food.whole(new Label("", name, List.of("fat " + fat), "own", Source.OWN), composition, Handling.PLAIN);
    }

    /** The other copy of the program. */
    public static final class Other {

        private Other() {}

        public static void main(String[] args) throws IOException {
            Kitchen kitchen = Kitchen.at(Path.of(args[0]));
            if (args[1].equals("live")) {
                live(kitchen);
                return;
            }
            Version version = kitchen.open("pot", SHELF).value().orElseThrow().version();
            System.out.println("ready");
            System.in.read();
            for (int i = 0; i < EACH; i++) {
                Demo mine = demo().withNote(args[1] + " " + i);
                if (kitchen.save(mine, version, SHELF) instanceof Saving.Saved saved) {
                    version = saved.version();
                }
                kitchen.foods().add(food("Quay biscuit", i), SHELF);
            }
            System.out.println(version.name());
        }

        private static void live(Kitchen kitchen) throws IOException {
            Runs.Begun begun = kitchen.runs().begin(hobside.stage.run.Runs.head(Run.Kind.LIVE, "a", "b").begun(System.currentTimeMillis()));
            kitchen.runs().append(begun.open(), new Happening(1, Happening.What.ON, "a", ""));
            kitchen.slates().write(new Slates.Scrap(new Slates.About("pot", "", ""), 1, "asked", "half a wo"));
            System.out.println("ready");
            System.in.read();
        }
    }

    private Process other(String what) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(java, "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), Other.class.getName(), root.toString(), what)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static BufferedReader from(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    private static Demo sound(Kitchen kitchen, String name) {
        Read<Kitchen.Opened> read = kitchen.open(name, SHELF);
        assertInstanceOf(Loaded.class, read, () -> read.problems().toString());
        return read.value().orElseThrow().demo();
    }

    private static void go(Process process) throws IOException {
        process.getOutputStream().write('\n');
        process.getOutputStream().flush();
    }

    private List<String> names(String inside, String ending) throws IOException {
        try (Stream<Path> all = Files.list(root.resolve(inside))) {
            return all.map(path -> path.getFileName().toString()).filter(name -> name.endsWith(ending)).sorted().toList();
        }
    }

    @Test
    void two_that_save_and_write_foods_at_the_same_moment_overwrite_nothing_of_each_other() throws Exception {
        kitchen().save(demo(), Version.fresh("pot"), SHELF);
        Process one = other("one");
        Process two = other("two");
        try (BufferedReader first = from(one); BufferedReader second = from(two)) {
            assertEquals("ready", first.readLine());
            assertEquals("ready", second.readLine());
            go(one);
            go(two);
            Set<String> names = new HashSet<>(List.of(first.readLine(), second.readLine()));
            assertEquals(Set.of("pot", "pot-2"), names, "whoever came second went beside");
            assertTrue(one.waitFor(30, TimeUnit.SECONDS) && two.waitFor(30, TimeUnit.SECONDS));
        }
        Set<String> notes = new HashSet<>();
        for (String name : List.of("pot", "pot-2")) {
            notes.add(sound(kitchen(), name).note());
        }
        assertEquals(Set.of("one " + (EACH - 1), "two " + (EACH - 1)), notes);
        assertEquals(2 * EACH, names("foods/own", ".json").size(), "each food has its file");
        assertEquals(2 * EACH, Library.load(kitchen()).stock().own().size());
        assertEquals(List.of(), names("scripts", ".part"));
    }

    @Test
    void a_live_run_and_a_half_typed_text_of_another_copy_are_not_taken_over_until_it_is_gone() throws Exception {
        Process other = other("live");
        try (BufferedReader said = from(other)) {
            assertEquals("ready", said.readLine());
            Kitchen here = kitchen();
            assertEquals(Optional.empty(), here.runs().unfinished(System.currentTimeMillis()), "it goes on over there");
            assertEquals(Optional.empty(), here.slates().left("pot", ""));
            Runs mine = here.runs();
            Runs.Open own = mine.begin(hobside.stage.run.Runs.head(Run.Kind.LIVE, "a", "b").begun(System.currentTimeMillis())).open();
            Slates slates = here.slates();
            assertEquals(Optional.empty(), slates.write(new Slates.Scrap(new Slates.About("pot", "", ""), 2, "asked", "mine")));
            other.destroyForcibly().waitFor();
            assertEquals(List.of(Happening.What.ON), here.runs().unfinished(System.currentTimeMillis()).orElseThrow().open().run().happenings().stream()
                    .map(Happening::what).toList());
            assertEquals("half a wo", here.slates().left("pot", "").orElseThrow().scrap().text());
            mine.append(own, new Happening(2, Happening.What.OVER, "", ""));
            assertEquals(2, here.runs().of("rib-pot").runs().size(), "two journals");
            assertTrue(here.runs().unfinished(System.currentTimeMillis()).isPresent(), "that mine is over does not let go of the other one");
        }
    }

    @Test
    void a_food_that_the_other_copy_has_added_meanwhile_is_told() {
        Shelf before = Library.load(kitchen()).shelf();
        assertEquals("Quay biscuit is on the shelf (foods/own/quay-biscuit.json).", kitchen().foods().add(food("Quay biscuit", 1), before).saving().said());
        OwnFoods.Put second = kitchen().foods().add(food("Quay biscuit", 2), before);
        assertEquals("quay-biscuit-2", second.food().id());
        assertEquals("Quay biscuit is on the shelf (foods/own/quay-biscuit-2.json). There is another one of that name, written since this program was started: "
                + "foods/own/quay-biscuit.json. Look whether both are wanted.", second.saving().said());
        Shelf after = Library.load(kitchen()).shelf();
        assertEquals("Quay biscuit is on the shelf (foods/own/quay-biscuit-3.json).", kitchen().foods().add(food("Quay biscuit", 3), after).saving().said(), "these stand on the shelf and are seen there");
    }

    @Test
    void an_own_food_that_the_other_copy_has_changed_is_not_changed_over_it() {
        Kitchen one = kitchen();
        Kitchen two = kitchen();
        Food food = one.foods().add(food("Quay biscuit", 1), SHELF).food();
        Shelf both = Library.load(one).shelf();
        assertInstanceOf(Saving.Saved.class, one.foods().replace(food, food("Quay biscuit", 2), both).saving());
        String said = two.foods().replace(food, food("Quay biscuit", 3), both).saving().said();
        assertTrue(said.contains("its file was changed by someone else"), said);
        assertEquals(List.of("fat 2.0"), Library.load(one).shelf().food(food.id()).orElseThrow().label().also());
    }

    @Test
    void a_price_list_that_the_other_copy_has_changed_goes_beside_it() throws IOException {
        PriceFile fresh = OwnPricesTest.list("Quay", "EUR", SHELF, Map.of("butter", "2.50"));
        Version first = ((Saving.Saved) kitchen().prices().save(fresh, SHELF)).version();
        PriceFile one = new PriceFile(OwnPricesTest.list("Quay", "EUR", SHELF, Map.of("butter", "2.60")).list(), Optional.of(first));
        PriceFile two = new PriceFile(OwnPricesTest.list("Quay", "EUR", SHELF, Map.of("butter", "2.70")).list(), Optional.of(first));
        kitchen().prices().save(one, SHELF);
        String said = kitchen().prices().save(two, SHELF).said();
        assertTrue(said.startsWith("The file was changed by someone else since it was opened, so this is saved beside it in"), said);
        assertEquals(2, names("foods/own/prices", ".json").size());
    }

    @Test
    void a_demo_is_saved_readable_when_the_other_copy_has_taken_one_of_its_foods_away() {
        Kitchen one = kitchen();
        Food food = one.foods().add(food("Quay biscuit", 1), SHELF).food();
        Kitchen two = kitchen();
        Library library = Library.load(two);
        DiskWork disk = new DiskWork(two, Study.of(library), InstantSource.system());
        Demo demo = OwnFoodsTest.demo(food, "60 g");
        assertInstanceOf(Saving.Saved.class, one.foods().delete(food, Library.load(one).shelf()));
        Message.Told told = (Message.Told) disk.carryOut(new Work.Keep(demo, "")).orElseThrow();
        Answer.Stored stored = assertInstanceOf(Answer.Stored.class, told.answer());
        assertEquals(demo, sound(one, stored.kept().name()));
    }
}
