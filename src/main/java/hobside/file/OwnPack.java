package hobside.file;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * A large table of the user's in a form that costs a start next to nothing: its bytes are checked as a whole when they are read,
 * and its foods are looked at when somebody searches, or asks for one whose id begins with the name of the pack.
 *
 * <p>{@code hobside pack/1} and a line end, the checksum of the rest (CRC-32, 4 bytes), the tagnames in the order of the
 * figures, then index and records as {@link PackedFoods} has them.
 */
public final class OwnPack implements Shelf.Source {

    /** Ids of 60 characters must have room for a number behind the name of the pack. */
    public static final int NAME = 30;

    private static final String ENDING = ".pack";
    private static final byte[] MAGIC = "hobside pack/1\n".getBytes(StandardCharsets.US_ASCII);
    private static final int START = MAGIC.length + 4;

    private final String prefix;
    private final byte[] bytes;
    private PackedFoods foods;

    private OwnPack(String prefix, byte[] bytes) {
        this.prefix = prefix;
        this.bytes = bytes;
    }

    /** What the id of every food in the pack of this name begins with. */
    public static String prefix(String name) {
        return name + "-";
    }

    /** The bytes of a pack. Its foods have no parts, no class of flesh and no packet, and ids that begin with the name of the pack. */
    public static byte[] bytes(String name, List<Food> foods) {
        for (Food food : foods) {
            if (!food.id().startsWith(prefix(name)) || !food.parts().isEmpty() || food.handling().melts().isPresent()
                    || food.label().source().packet().isPresent()) {
                throw new IllegalArgumentException("not a food for the pack " + name + ": " + food.id());
            }
        }
        PackOut out = new PackOut();
        out.texts(Arrays.stream(Nutrient.values()).map(Nutrient::name).toList());
        byte[] tags = out.bytes();
        byte[] page = PackedFoods.page(Shelf.of(foods));
        byte[] all = Arrays.copyOf(MAGIC, START + tags.length + page.length);
        System.arraycopy(tags, 0, all, START, tags.length);
        System.arraycopy(page, 0, all, START + tags.length, page.length);
        int sum = checksum(all);
        for (int i = 0; i < 4; i++) {
            all[MAGIC.length + i] = (byte) (sum >>> 24 - 8 * i);
        }
        return all;
    }

    private static int checksum(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes, START, bytes.length - START);
        return (int) sum.getValue();
    }

    /** A pack from its file; the name of the pack is the name of the file without folder and ending. */
    static Read<OwnPack> read(RawFile file, String name) {
        Problems problems = new Problems(file.name());
        byte[] bytes = file.bytes();
        if (bytes.length < START || !Arrays.equals(MAGIC, 0, MAGIC.length, bytes, 0, MAGIC.length)) {
            problems.add(0, "a file that is no pack of this version", Wanted.of("a pack that hobside bring has made", "bring in the table again"));
        } else if (bytes.length > RawFile.MOST_BYTES || checksum(bytes) != new PackInt(bytes, MAGIC.length).value()) {
            problems.add(0, "a damaged pack", Wanted.of("the bytes that hobside bring has written", "take a good copy of it, or bring in the table again"));
        }
        return Read.of(problems.isEmpty() ? Optional.of(new OwnPack(prefix(name), bytes)) : Optional.empty(), problems);
    }

    /** The packs of a folder by name; damaged ones are left out and reported. */
    static List<OwnPack> all(Folder kitchen, Path own, List<InputProblem> problems) {
        List<OwnPack> packs = new ArrayList<>();
        for (Path path : kitchen.list(own, ENDING, problems)) {
            String file = path.getFileName().toString();
            Read<RawFile> raw = kitchen.read(path);
            problems.addAll(raw.problems());
            if (raw.value().isPresent()) {
                Read<OwnPack> pack = read(raw.value().get(), file.substring(0, file.length() - ENDING.length()));
                problems.addAll(pack.problems());
                if (pack.value().isPresent()) {
                    packs.add(pack.value().get());
                }
            }
        }
        return packs;
    }

    private record PackInt(byte[] bytes, int at) {
        int value() {
            int value = 0;
            for (int i = 0; i < 4; i++) {
                value = value << 8 | bytes[at + i] & 0xff;
            }
            return value;
        }
    }

    /** A pack whose checksum is right was written by us or by somebody who means harm: what cannot be read then holds nothing. */
    private synchronized PackedFoods known() {
        if (foods == null) {
            try {
                PackIn in = new PackIn(bytes).from(START);
                foods = PackedFoods.read(in, order(in.texts()));
            } catch (RuntimeException forged) {
                foods = PackedFoods.none();
            }
        }
        return foods;
    }

    /** The order of another version may differ; tagnames that this version does not know are passed over. */
    private static Nutrient[] order(String[] tagnames) {
        Nutrient[] order = new Nutrient[tagnames.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = Nutrient.parse(tagnames[i]).orElse(null);
        }
        return order;
    }

    @Override
    public Optional<Food> food(String id) {
        if (!id.startsWith(prefix)) {
            return Optional.empty();
        }
        try {
            Optional<Food> food = known().food(id);
            return food.isPresent() && isSound(food.get()) ? food : Optional.empty();
        } catch (RuntimeException | StackOverflowError forged) {
            return Optional.empty();
        }
    }

    /** Texts of a forged pack must not reach a terminal. */
    private static boolean isSound(Food food) {
        boolean sound = Ids.isId(food.id()) && isHarmless(food.name(), Limits.NAME) && isHarmless(food.label().group(), Limits.ID)
                && isHarmless(food.label().source().table(), Limits.NAME) && isHarmless(food.label().source().number(), Limits.ID);
        for (int i = 0; sound && i < food.label().also().size(); i++) {
            sound = isHarmless(food.label().also().get(i), Limits.NAME);
        }
        for (int i = 0; sound && i < food.handling().measures().size(); i++) {
            sound = isHarmless(food.handling().measures().get(i).name(), Limits.ID);
        }
        return sound;
    }

    private static boolean isHarmless(String text, int most) {
        for (int i = 0; i < text.length(); i++) {
            if (Shown.isHarmful(text, i)) {
                return false;
            }
        }
        return text.length() <= most;
    }

    @Override
    public List<Food> foods() {
        List<Food> all = new ArrayList<>(known().ids().size());
        for (String id : known().ids()) {
            Optional<Food> food = food(id);
            if (food.isPresent()) {
                all.add(food.get());
            }
        }
        return all;
    }

    @Override
    public Collection<String> ids() {
        List<String> sound = new ArrayList<>(known().ids().size());
        for (String id : known().ids()) {
            if (Ids.isId(id)) {
                sound.add(id);
            }
        }
        return sound;
    }
}
