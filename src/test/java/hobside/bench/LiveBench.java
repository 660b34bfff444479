package hobside.bench;

import hobside.file.Kitchen;
import hobside.screen.live.OnTheDay;
import hobside.screen.terminal.Pty;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The Live screen: from key to picture on a real terminal; killed at random moments of a talk, and started again; and eight
 * simulated hours of it.
 *
 * <p>Arguments: kills (200), keys (500).
 */
public final class LiveBench {

    private static final Pattern PLACE = Pattern.compile("cue (\\d+) of (\\d+)");
    private static final String DEMO = "scripts/lighter-rib-pot.demo.json";
    private static final int HOURS = 8;

    private LiveBench() {}

    public static void main(String[] args) throws IOException {
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        int keys = args.length > 1 ? Integer.parseInt(args[1]) : 500;
        Path folder = Files.createTempDirectory("hobside-live");
        keys(folder.resolve("keys"), keys);
        kills(folder.resolve("kills"), kills);
        hours(folder.resolve("hours"));
        for (String each : new String[] {"keys", "kills", "hours"}) {
            Kitchen.clear(folder.resolve(each));
        }
        Files.deleteIfExists(folder);
    }

    private static String launch(Path kitchen, String demo) {
        return "exec target/hobside --kitchen '" + kitchen + "' " + demo;
    }

    private static void keys(Path kitchen, int keys) throws IOException {
        double[] millis = new double[keys];
        try (Pty pty = Pty.running(launch(kitchen, DEMO))) {
            pty.await("leave");
            pty.type("L");
            pty.await("cue 1 of");
            for (int i = 0; i < keys; i++) {
                pause(20);
                pty.readAvailable();
                pty.takeSeen();
                long before = System.nanoTime();
                pty.type(i % 2 == 0 ? " " : "\033[D");
                if (!pty.readSome()) {
                    throw new IOException("nothing was painted after a key");
                }
                millis[i] = (System.nanoTime() - before) / 1e6;
            }
            pty.java().ifPresent(ProcessHandle::destroyForcibly);
        }
        Samples all = Samples.of(millis);
        System.out.printf(Locale.ROOT, "live, %d keys to paint: p50 %.2f ms, p99 %.2f ms, most %.2f ms%n", keys, all.median(), all.percentile(99), all.percentile(100));
    }

    /** Types on and back at random, kills at a random moment, starts again, and reads where it stands. */
    private static void kills(Path kitchen, int kills) throws IOException {
        Random random = new Random(20261125);
        int place = 1;
        int lost = 0;
        int wrong = 0;
        for (int i = 0; i < kills; i++) {
            int before = place;
            int last = place;
            try (Pty pty = Pty.running(launch(kitchen, i == 0 ? DEMO : ""))) {
                if (i == 0) {
                    pty.await("leave");
                    pty.type("L");
                }
                place = read(pty);
                wrong += i > 0 && place != before ? 1 : 0;
                for (int key = 1 + random.nextInt(6); key > 0; key--) {
                    boolean on = place == 1 || random.nextInt(3) > 0 && place < 40;
                    last = place;
                    place += on ? 1 : -1;
                    long written = journal(kitchen);
                    pty.type(on ? " " : "\033[D");
                    waitFor(kitchen, key == 1 ? 0 : written);
                }
                pause(random.nextInt(25));
                pty.java().ifPresent(ProcessHandle::destroyForcibly);
            }
            int found = after(kitchen);
            lost += found != place && found == last ? 1 : 0;
            wrong += found != place && found != last ? 1 : 0;
            place = found;
        }
        System.out.printf(Locale.ROOT, "killed at %d random moments: resumed at another cue %d times; the last key missing %d times%n", kills, wrong, lost);
    }

    /** A key that still waits in the terminal was never accepted: each but the last is given the time to be. */
    private static void waitFor(Path kitchen, long written) throws IOException {
        for (int i = 0; written > 0 && i < 2_000 && journal(kitchen) <= written; i++) {
            pause(1);
        }
    }

    /** Bytes of all journals of the kitchen. */
    private static long journal(Path kitchen) throws IOException {
        long bytes = 0;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(kitchen.resolve("scripts"), "*.jsonl")) {
            for (Path file : files) {
                bytes += Files.size(file);
            }
        }
        return bytes;
    }

    private static int after(Path kitchen) throws IOException {
        try (Pty pty = Pty.running(launch(kitchen, ""))) {
            int place = read(pty);
            pty.java().ifPresent(ProcessHandle::destroyForcibly);
            return place;
        }
    }

    /** The number of the cue in the first full picture of the Live screen. */
    private static int read(Pty pty) throws IOException {
        pty.await("next:");
        pause(30);
        pty.readAvailable();
        Matcher matcher = PLACE.matcher(pty.takeSeen());
        int place = 0;
        while (matcher.find()) {
            place = Integer.parseInt(matcher.group(1));
        }
        if (place == 0) {
            throw new IOException("no cue was shown");
        }
        return place;
    }

    private static void hours(Path kitchen) throws IOException {
        OnTheDay day = new OnTheDay(kitchen).start().play("L");
        day.later(60);
        long heap = heap();
        for (int minute = 1; minute < HOURS * 60; minute++) {
            day.later(60);
            if (minute % 10 == 0) {
                day.play("space left");
            }
        }
        long grown = heap() - heap;
        long elapsed = day.playing().standing().elapsed(day.playing().now());
        System.out.printf(Locale.ROOT, "%d hours simulated, a wake each second, 94 keys: heap %+d KiB; the clock shows %d s of %d s%n",
                HOURS, grown / 1024, elapsed / 1000, HOURS * 3600);
    }

    private static long heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
            pause(50);
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
