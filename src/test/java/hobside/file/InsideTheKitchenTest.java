package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.abort;

import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Shelf;
import hobside.food.Source;
import hobside.practice.Attempt;
import hobside.practice.Card;
import hobside.practice.Kind;
import hobside.practice.WorkshopSet;
import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a thing is called, and wherever the links of a kitchen lead, nothing is written, deleted or made outside of it. */
class InsideTheKitchenTest {

    private static final Shelf SHELF = Library.bundledShelf();
    private static final hobside.practice.Label LABEL = new hobside.practice.Label(new Card(Kind.EXPLAIN, "trim"), 2, new hobside.practice.Label.Origin("pot", 7));
    private static final List<String> WICKED = List.of("../../outside/x", "..", ".", "", "/tmp/x", "C:\\x", "..\\..\\outside", "a/../../../outside/x", "x\0y", "con", "nul.txt",
            "~", "$HOME", "a\nb", "\u202egnp", "%2e%2e%2f", "....//", "file:///x", "-rf", " ", ".hidden", "x/", "é/../ü", "x".repeat(5_000));

    @TempDir
    private Path root;
    private Path folder;
    private Path outside;
    private Kitchen kitchen;

    @BeforeEach
    void open() throws IOException {
        folder = Files.createDirectories(root.resolve("home/kitchen"));
        outside = Files.createDirectories(root.resolve("outside"));
        Files.writeString(outside.resolve("x"), "a letter");
        Files.writeString(outside.resolve("x.jsonl"), "not ours\n");
        Files.writeString(outside.resolve("x.demo.json"), "not ours");
        kitchen = Kitchen.at(folder);
    }

    /** All that stands beside the kitchen, with its bytes. */
    private Map<String, String> beside() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(root)) {
            for (Path path : walk.filter(each -> !each.startsWith(folder)).toList()) {
                all.put(root.relativize(path).toString(), Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS) ? Files.readString(path) : "");
            }
        }
        return all;
    }

    private static Demo demo() {
        return Kitchen.bundled("ropewalk-rib-pot", SHELF);
    }

    private static Food food(String name) {
        Composition composition = SHELF.food("butter").orElseThrow().composition();
        return Food.whole(new Label(name, name.isBlank() ? "x" : name, List.of(), "own", Source.OWN), composition, Handling.PLAIN);
    }

    /** Every way by which a name comes to the disk. What is no name is refused, and that is fine here. */
    private void everything(String name) {
        tried(() -> kitchen.save(demo(), new Version(name, Optional.empty()), SHELF));
        tried(() -> kitchen.save(demo(), Version.fresh(name), SHELF));
        tried(() -> kitchen.write(name, "txt", "text"));
        tried(() -> kitchen.write("pot", name, "text"));
        tried(() -> kitchen.remember(name));
        tried(() -> kitchen.open(name, SHELF));
        tried(() -> kitchen.keep(Own.DISH, name, new byte[1]));
        tried(() -> kitchen.keep(Own.FOODS, kitchen.freeName(Own.FOODS, name), "{}".getBytes(StandardCharsets.UTF_8)));
        tried(() -> kitchen.foods().add(food(name), SHELF));
        tried(() -> kitchen.foods().replace(food(name), food("y"), SHELF));
        tried(() -> kitchen.foods().delete(food(name), SHELF));
        PriceFile prices = OwnPricesTest.list("Quay", "EUR", SHELF, Map.of("butter", "2.50"));
        PriceFile named = new PriceFile(prices.list(), Optional.of(new Version(name, Optional.empty())));
        tried(() -> kitchen.prices().save(named, SHELF));
        tried(() -> kitchen.prices().use(named));
        tried(() -> kitchen.prices().delete(named));
        runs(name);
        practice(name);
        tried(() -> kitchen.slates().write(new Slates.Scrap(new Slates.About(name, name, name), 1, name, name)));
    }

    private void runs(String name) {
        Run.Head head = hobside.stage.run.Runs.head(Run.Kind.LIVE, "a", "b");
        tried(() -> {
            Runs.Open open = kitchen.runs().begin(new Run.Head(Run.Kind.LIVE, name, head.begunAt(), 0, head.plan())).open();
            kitchen.runs().append(open, new Happening(1, Happening.What.NOTE, name, name));
            kitchen.runs().putAway(open);
        });
        tried(() -> kitchen.runs().of(name));
    }

    private void practice(String name) {
        Practices practices = kitchen.practices();
        Practices.Done done = new Practices.Done(LABEL, new Attempt.Result(1, "", Map.of(), name));
        tried(() -> practices.done(name, 1, done));
        tried(() -> practices.erase(name, 1));
        tried(() -> practices.keep(new WorkshopSet(name, WorkshopSet.Wanted.ANYTHING, 0, "en")));
        tried(() -> practices.write(name, "txt", "text"));
        tried(() -> practices.write("report", name, "text"));
        tried(() -> practices.gather(outside.resolve(name.replace("\0", "")).toString()));
    }

    private static void tried(Runnable work) {
        try {
            work.run();
        } catch (IllegalArgumentException | NullPointerException refused) {
            return;
        }
    }

    @Test
    void no_name_leads_out_of_the_kitchen() throws IOException {
        Map<String, String> before = beside();
        List<String> names = new ArrayList<>(WICKED);
        Random random = new Random(11);
        for (int i = 0; i < 20; i++) {
            StringBuilder name = new StringBuilder();
            for (int part = 2 + random.nextInt(6); part > 0; part--) {
                name.append(List.of("..", "/", "\\", ".", "x", "outside", ":", "\0", " ", "\n").get(random.nextInt(10)));
            }
            names.add(name.toString());
        }
        names.forEach(this::everything);
        assertEquals(before, beside());
    }

    /** Links that somebody has laid in the kitchen, each to a place outside. */
    @ParameterizedTest
    @ValueSource(strings = {"scripts", "foods", "foods/own", "foods/own/prices", "foods/own/dishes", "practice", "practice/results", "practice/sets"})
    void no_folder_that_is_a_link_is_written_through(String link) throws IOException {
        linked(folder.resolve(link), outside);
        Map<String, String> before = beside();
        everything("pot");
        assertEquals(before, beside());
    }

    @ParameterizedTest
    @ValueSource(strings = {".lock", ".claims", "scripts/.typing-1", "scripts/.live", "scripts/pot.demo.json", "scripts/pot.txt", "scripts/.last-worked-on", "scripts/pot.demo.json.damaged-1",
            "foods/own/pot.json", "foods/own/prices/.in-use", "foods/own/prices/quay-2026-11-02.json", "practice/report.txt"})
    void no_file_that_is_a_link_is_written_through_or_made(String link) throws IOException {
        linked(folder.resolve(link), outside.resolve("x"));
        Map<String, String> before = beside();
        everything("pot");
        assertEquals(before, beside());
        Files.delete(folder.resolve(link));
        linked(folder.resolve(link), outside.resolve("not-there-yet"));
        everything("pot");
        assertEquals(before, beside(), "nothing is made at the end of a loose link either");
    }

    private static void linked(Path link, Path to) throws IOException {
        try {
            Files.createDirectories(link.getParent());
            Files.deleteIfExists(link);
            Files.createSymbolicLink(link, to);
        } catch (UnsupportedOperationException none) {
            abort("no links can be made here");
        }
    }

    @Test
    void a_marker_that_names_a_journal_elsewhere_is_not_followed() throws IOException {
        Files.createDirectories(folder.resolve("scripts"));
        for (String name : List.of("../../../outside/x.jsonl", "..", "", "/etc/passwd", "x.run-../../../../outside/x.jsonl")) {
            Files.writeString(folder.resolve("scripts/.live"), name);
            Files.writeString(folder.resolve("scripts/.last-worked-on"), name);
            assertEquals(Optional.empty(), kitchen.runs().unfinished(1));
            assertEquals(Optional.empty(), kitchen.last());
        }
    }

    @Test
    void a_name_that_is_not_safe_is_refused_where_only_safe_ones_are_handed_in() {
        assertThrows(IllegalArgumentException.class, () -> kitchen.keep(Own.DISH, "../x", new byte[1]));
    }
}
