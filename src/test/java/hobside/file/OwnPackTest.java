package hobside.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.food.Food;
import hobside.food.Label;
import hobside.food.Shelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

class OwnPackTest {

    private static final List<Food> FOODS = foods();

    /** Foods of the shelf as if a table had brought them: without parts and class of flesh, under ids of the pack. */
    private static List<Food> foods() {
        List<Food> foods = new ArrayList<>();
        for (Food food : Library.bundledShelf().foods()) {
            if (food.parts().isEmpty() && food.handling().melts().isEmpty()) {
                foods.add(Food.whole(new Label("own-" + food.id(), food.name(), food.label().also(), food.label().group(), food.label().source()),
                        food.composition(), food.handling()));
            }
        }
        return foods;
    }

    private static OwnPack pack(byte[] bytes) {
        Read<OwnPack> read = OwnPack.read(new RawFile("own.pack", bytes), "own");
        assertEquals(List.of(), read.problems());
        return read.value().orElseThrow();
    }

    @Test
    void foods_come_out_as_they_were_put_in_one_by_one_and_all_together() {
        byte[] bytes = OwnPack.bytes("own", FOODS);
        assertEquals(FOODS, pack(bytes).foods());
        OwnPack pack = pack(bytes);
        for (int i = FOODS.size() - 1; i >= 0; i--) {
            assertEquals(FOODS.get(i), pack.food(FOODS.get(i).id()).orElseThrow());
        }
        assertTrue(pack.food("butter").isEmpty());
        assertTrue(pack.food("own-nothing").isEmpty());
    }

    @Test
    void a_food_of_another_pack_is_a_broken_promise() {
        assertThrows(IllegalArgumentException.class, () -> OwnPack.bytes("other", FOODS));
    }

    /** Whoever forges a pack can make its checksum right: it may hold nonsense, but breaks nothing and shows nothing harmful. */
    @Test
    void a_forged_pack_with_a_right_checksum_does_no_harm() {
        byte[] good = OwnPack.bytes("own", FOODS.subList(0, 40));
        for (int seed = 0; seed < 3_000; seed++) {
            Random random = new Random(seed);
            byte[] forged = good.clone();
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                forged[19 + random.nextInt(random.nextBoolean() ? 600 : forged.length - 19)] = (byte) random.nextInt(256);
            }
            seal(forged);
            Shelf shelf = Shelf.drawingOn(new Layered(Shelf.EMPTY, List.of(pack(forged))));
            for (Food food : shelf.find("", 100)) {
                assertTrue(Ids.isId(food.id()), "seed " + seed);
                assertTrue(food.name().chars().allMatch(each -> each >= 0x20 && each != 0x7f), "seed " + seed);
            }
            assertTrue(shelf.ids().stream().allMatch(Ids::isId), "seed " + seed);
        }
    }

    private static void seal(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes, 19, bytes.length - 19);
        for (int i = 0; i < 4; i++) {
            bytes[15 + i] = (byte) (sum.getValue() >>> 24 - 8 * i);
        }
    }

    @Test
    void figures_of_a_version_with_other_tagnames_are_found_by_their_names() {
        byte[] bytes = OwnPack.bytes("own", FOODS);
        byte[] other = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).replaceFirst("CHOLE", "ZZOLE").getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        seal(other);
        Food food = pack(other).foods().get(0);
        assertTrue(food.composition().of(hobside.food.Nutrient.CHOLE).isEmpty());
        assertEquals(FOODS.get(0).composition().of(hobside.food.Nutrient.FAT), food.composition().of(hobside.food.Nutrient.FAT));
    }
}
