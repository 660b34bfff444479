package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own price lists on the disk; places and prices are invented. */
class OwnPricesTest {

    private static final Shelf SHELF = Library.bundledShelf();

    @TempDir
    private Path root;
    private Kitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = Kitchen.at(root);
    }

    /** A list of packs of 500 g. */
    static PriceFile list(String place, String code, Shelf shelf, Map<String, String> prices) {
        Currency currency = Currency.of(code).orElseThrow();
        List<PriceList.Pack> packs = new ArrayList<>();
        prices.forEach((id, price) -> packs.add(PriceList.Pack.of(shelf.food(id).orElseThrow(), Amount.grams(500), Money.parse(price, currency).orElseThrow()).orElseThrow()));
        return PriceFile.fresh(PriceList.of(new PriceList.Heading(place, "2026-11-02", false), currency, packs));
    }

    private PriceFile saved(PriceFile list) {
        Saving.Saved saved = assertInstanceOf(Saving.Saved.class, kitchen.prices().save(list, SHELF));
        return new PriceFile(list.list(), Optional.of(saved.version()));
    }

    @Test
    void a_list_is_named_by_place_and_day_and_read_back_the_same() {
        PriceFile list = saved(list("Quay market", "JPY", SHELF, Map.of("butter", "350", "salt", "90")));
        assertEquals("quay-market-2026-11-02", list.name());
        PriceFile read = Library.load(kitchen).priced().all().get(0);
        assertEquals(list.version(), read.version());
        assertEquals(list.list().heading(), read.list().heading());
        assertEquals(list.list().currency(), read.list().currency());
        assertEquals(List.copyOf(list.list().packs()), List.copyOf(read.list().packs()));
    }

    @Test
    void the_bundled_list_is_written_and_read_back_the_same() {
        PriceList ours = Originals.prices(SHELF).get(0);
        PriceList again = PriceReader.read(RawFile.of("again.json", PriceWriter.file(ours)), SHELF).value().orElseThrow();
        assertEquals(ours.heading(), again.heading());
        assertEquals(ours.currency(), again.currency());
        assertEquals(List.copyOf(ours.packs()), List.copyOf(again.packs()));
    }

    @Test
    void the_list_in_use_is_remembered_and_goes_by_itself_to_the_next_when_it_is_deleted() {
        PriceFile quay = saved(list("Quay", "EUR", SHELF, Map.of("butter", "3.50")));
        PriceFile hill = saved(list("Hill", "EUR", SHELF, Map.of("butter", "4.00")));
        assertEquals("Hill", Library.load(kitchen).prices().heading().place());
        kitchen.prices().use(quay);
        assertEquals("Quay", Library.load(kitchen).prices().heading().place());
        assertInstanceOf(Saving.Saved.class, kitchen.prices().delete(quay));
        assertEquals("Hill", Library.load(kitchen).prices().heading().place());
        PriceFile bundled = Library.load(kitchen).priced().all().get(1);
        kitchen.prices().use(bundled);
        assertTrue(Library.load(kitchen).prices().heading().invented(), "the list of the program can be chosen again");
        assertEquals(hill.name(), Library.load(kitchen).priced().all().get(0).name());
    }

    @Test
    void a_list_that_somebody_else_has_changed_is_not_overwritten_nor_deleted() throws IOException {
        PriceFile list = saved(list("Quay", "EUR", SHELF, Map.of("butter", "3.50")));
        Path file = root.resolve("foods/own/prices/quay-2026-11-02.json");
        String theirs = Files.readString(file).replace("3.50", "3.75");
        Files.writeString(file, theirs);
        Saving.Saved beside = assertInstanceOf(Saving.Saved.class, kitchen.prices().save(list.with(list.list().without("butter")), SHELF));
        assertEquals("foods/own/prices/quay-2026-11-02-2.json", beside.file());
        assertInstanceOf(Saving.NotSaved.class, kitchen.prices().delete(list));
        assertEquals(theirs, Files.readString(file));
    }

    @Test
    void a_second_list_of_the_same_place_and_day_gets_a_number() {
        saved(list("Quay", "EUR", SHELF, Map.of("butter", "3.50")));
        assertEquals("quay-2026-11-02-2", saved(list("Quay", "EUR", SHELF, Map.of("salt", "1.00"))).name());
    }

    @Test
    void a_list_in_a_folder_that_leads_out_of_the_kitchen_is_not_written() throws IOException {
        Path outside = Files.createDirectories(root.resolveSibling(root.getFileName() + "-outside"));
        Files.createDirectories(root.resolve("foods/own"));
        Files.createSymbolicLink(root.resolve("foods/own/prices"), outside);
        assertInstanceOf(Saving.NotSaved.class, kitchen.prices().save(list("Quay", "EUR", SHELF, Map.of("butter", "3.50")), SHELF));
        assertInstanceOf(Saving.NotSaved.class, kitchen.prices().use(list("Quay", "EUR", SHELF, Map.of())));
        try (Stream<Path> written = Files.list(outside)) {
            assertEquals(0, written.count());
        }
        Files.delete(outside);
    }
}
