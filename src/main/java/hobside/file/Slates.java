package hobside.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What is being typed and not taken yet, in {@code scripts/.typing-1}, on the disk before the next key is read. It is wiped off when the
 * text is taken or left; so what stands on a slate that nobody holds was being typed when a program was stopped.
 *
 * <p>A slate has two sides that are written in turn, each with a number and a checksum: when a write is torn, the other side still holds
 * the text without the last key. Which side is the newer one, the number says and not the clock. The file never grows.
 */
public final class Slates {

    /** Bytes of a side: a text of 1,000 characters, each escaped, and what was asked. */
    static final int SIDE = 16 * 1024;

    private static final int MOST = 9;
    private static final String NAME = ".typing-";

    /** The first bytes of {@link Claims} belong to the live runs. */
    private static final int FIRST_CLAIM = 100;

    private static final int SUM = 8;
    private static final Keys KEYS = Keys.of("n", "at", "demo", "dish", "spot", "asked", "text");
    private static final Bounds NUMBER = Bounds.of(0, 9e15, "a number", "delete the file");

    private final Folder kitchen;
    private final Path scripts;
    private final Claims claims;
    private int place;
    private long number;
    private FileChannel channel;

    Slates(Folder kitchen, Path scripts, Claims claims) {
        this.kitchen = kitchen;
        this.scripts = scripts;
        this.claims = claims;
    }

    /** What it belongs to: the name of the demo's file (empty when it has none yet), the dish, and where in it. */
    public record About(String demo, String dish, String spot) {}

    /** A text that is being typed: when, in answer to what, and how far. */
    public record Scrap(About about, long at, String asked, String text) {}

    /** A scrap that was left, and the place it stands in. */
    public record Left(Scrap scrap, int place, long number) {}

    private Path file(int which) {
        return scripts.resolve(NAME + which);
    }

    /** Notes the text as it stands now: on the disk before this returns; or says why it is not. */
    public Optional<String> write(Scrap scrap) {
        try {
            byte[] side = side(number + 1, scrap);
            if (side.length > SIDE) {
                return Optional.of("What is typed here is only in memory until it is taken: it is too long to be noted as you type.");
            }
            if (!open()) {
                return Optional.of("What is typed here is only in memory until it is taken: " + MOST + " unfinished texts wait in scripts already. Start the program again and go through them.");
            }
            number++;
            channel.write(ByteBuffer.wrap(side), (number & 1) * SIDE);
            channel.force(false);
            return Optional.empty();
        } catch (IOException | RuntimeException fault) {
            close();
            return Optional.of("What is typed here is only in memory until it is taken: " + SafeFile.why(fault, file(Math.max(1, place))) + ".");
        }
    }

    static byte[] side(long number, Scrap scrap) {
        String row = new Row().number("n", (double) number).number("at", (double) scrap.at()).textIfAny("demo", scrap.about().demo()).textIfAny("dish", scrap.about().dish())
                .textIfAny("spot", scrap.about().spot()).text("asked", scrap.asked()).text("text", scrap.text()).written();
        byte[] bytes = row.getBytes(StandardCharsets.UTF_8);
        return (sum(bytes) + " " + row + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String sum(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        String hex = Long.toHexString(sum.getValue());
        return "0".repeat(SUM - hex.length()) + hex;
    }

    /** Ready to be written on; false when no slate is free. One that went with its stick is made anew. */
    private boolean open() throws IOException {
        if (channel != null && Files.exists(file(place), LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        close();
        kitchen.make(scripts);
        if (place == 0 && !chosen()) {
            return false;
        }
        claims.take(FIRST_CLAIM + place);
        boolean fresh = !Files.exists(file(place), LinkOption.NOFOLLOW_LINKS);
        channel = FileChannel.open(file(place), StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        if (fresh) {
            SafeFile.forceFolder(scripts);
        }
        return true;
    }

    /** The first slate that nobody holds and on which nothing waits. */
    private boolean chosen() {
        for (int which = 1; which <= MOST; which++) {
            if (claims.take(FIRST_CLAIM + which)) {
                if (read(which).isEmpty()) {
                    place = which;
                    return true;
                }
                claims.give(FIRST_CLAIM + which);
            }
        }
        return false;
    }

    private void close() {
        SafeFile.close(channel);
        channel = null;
    }

    /** Nothing is being typed any more. */
    public void wipe() {
        if (place == 0) {
            return;
        }
        close();
        clean(place);
        claims.give(FIRST_CLAIM + place);
        place = 0;
    }

    /** A slate that cannot be deleted is offered again, which is no harm. */
    private void clean(int which) {
        try {
            Files.deleteIfExists(file(which));
        } catch (IOException | RuntimeException staysThere) {
            return;
        }
    }

    /** What was being typed on this demo, or on this dish before it had a file, when the program was stopped; the first of several. */
    public Optional<Left> left(String demo, String dish) {
        for (int which = 1; which <= MOST; which++) {
            if (which != place && Files.exists(file(which), LinkOption.NOFOLLOW_LINKS)) {
                Optional<Left> left = unheld(which);
                if (left.isPresent() && isOf(left.get().scrap().about(), demo, dish)) {
                    return left;
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isOf(About about, String demo, String dish) {
        boolean unknown = about.demo().isEmpty() && about.dish().isEmpty();
        return unknown || (about.demo().isEmpty() ? about.dish().equals(dish) : about.demo().equals(demo));
    }

    private Optional<Left> unheld(int which) {
        if (!claims.take(FIRST_CLAIM + which)) {
            return Optional.empty();
        }
        Optional<Left> left = read(which);
        claims.give(FIRST_CLAIM + which);
        return left;
    }

    /** Goes on with what was left: from now on this copy writes there. */
    public void goOn(Left left) {
        wipe();
        if (claims.take(FIRST_CLAIM + left.place())) {
            place = left.place();
            number = left.number();
        }
    }

    /** Throws away what was left. */
    public void forget(Left left) {
        if (claims.take(FIRST_CLAIM + left.place())) {
            clean(left.place());
            claims.give(FIRST_CLAIM + left.place());
        }
    }

    /** The newer of the two sides that can be trusted. */
    private Optional<Left> read(int which) {
        Optional<RawFile> raw = kitchen.read(file(which)).value();
        return raw.isEmpty() ? Optional.empty() : read(raw.get().bytes(), which);
    }

    /** What stands on a slate, from its bytes: for those who look at a kitchen from outside. */
    public static Optional<Left> on(byte[] bytes) {
        return read(bytes, 0);
    }

    private static Optional<Left> read(byte[] bytes, int which) {
        Optional<Left> one = sideOf(bytes, 0, which);
        Optional<Left> other = sideOf(bytes, SIDE, which);
        boolean second = other.isPresent() && (one.isEmpty() || other.get().number() > one.get().number());
        return second ? other : one;
    }

    private static Optional<Left> sideOf(byte[] bytes, int from, int which) {
        int end = from;
        while (end < bytes.length && end < from + SIDE && bytes[end] != '\n') {
            end++;
        }
        if (end >= bytes.length || bytes[end] != '\n' || end - from <= SUM) {
            return Optional.empty();
        }
        byte[] row = Arrays.copyOfRange(bytes, from + SUM + 1, end);
        String written = new String(bytes, from, SUM, StandardCharsets.ISO_8859_1);
        return written.equals(sum(row)) ? left(row, which) : Optional.empty();
    }

    private static Optional<Left> left(byte[] row, int which) {
        Problems problems = new Problems(NAME + which);
        Optional<Json> tree = JsonTree.read(new RawFile(NAME + which, row), problems);
        Optional<Fields> fields = tree.isEmpty() ? Optional.empty() : Fields.of(tree.get(), Where.TOP, KEYS, problems);
        return fields.isEmpty() ? Optional.empty() : left(fields.get(), which, problems);
    }

    private static Optional<Left> left(Fields fields, int which, Problems problems) {
        double number = fields.needed("n", NUMBER).orElse(0);
        double at = fields.needed("at", NUMBER).orElse(0);
        About about = new About(fields.textOr("demo", Limits.ID, ""), fields.textOr("dish", Limits.NAME, ""), fields.textOr("spot", RunReader.KEY, ""));
        Scrap scrap = new Scrap(about, (long) at, fields.textOr("asked", Limits.NOTE, ""), fields.textOr("text", Limits.NOTE, ""));
        return problems.isEmpty() ? Optional.of(new Left(scrap, which, (long) number)) : Optional.empty();
    }
}
