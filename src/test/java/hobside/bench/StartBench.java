package hobside.bench;

import hobside.screen.terminal.Pty;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/**
 * Measures side by side, in turns on a real terminal, how long a bare Java program, the launcher, the jar alone and the portable folder take,
 * the last also on a day when a demo of one's own is opened at once,
 * from their start to a text on the screen, and the most memory they held by then; and counts the classes that no archive held.
 *
 * <p>Arguments: jar, launcher, the text to wait for, rounds; all may be left out.
 */
public final class StartBench {
    private static final String[] USUAL = {"target/hobside.jar", "target/hobside", "leave", "15"};

    /** Made by {@code mvn -q -Pportable -DskipTests package}; left out when it is not there. */
    private static final String PORTABLE = "target/portable/hobside/hobside";

    /** The end of the last line of the Bench: when it is there, the frame is whole. */
    private static final String LAST_WORD = "leave";

    /** The thread that reads keys starts when the first picture has been painted. */
    private static final String AFTER_THE_PICTURE = "hobside.screen.Loop$Reader";

    private StartBench() {}

    /** One start: milliseconds to the text and mebibytes at their most. */
    private record Start(double millis, double mebibytes) {}

    public static void main(String[] args) throws IOException {
        String[] words = USUAL.clone();
        System.arraycopy(args, 0, words, 0, args.length);
        Path hello = helloJar();
        Map<String, String> commands = new LinkedHashMap<>();
        commands.put("bare java", "exec java -Xshare:auto -jar '" + hello + "' " + words[2]);
        commands.put("launcher", "exec '" + words[1] + "'");
        commands.put("java -jar", "exec java -jar '" + words[0] + "'");
        if (Files.exists(Path.of(PORTABLE))) {
            commands.put("portable", "exec " + PORTABLE);
            commands.put("next day", "exec " + PORTABLE + " --kitchen '" + nextDay() + "'");
        }
        report(measure(commands, words[2], Integer.parseInt(words[3])));
        commands.remove("bare java");
        for (Map.Entry<String, String> each : commands.entrySet()) {
            System.out.printf(Locale.ROOT, "%-12s %d classes loaded before the first picture, %s of them from outside the archives%n", loaded(each, words[2]));
        }
        Files.delete(hello);
    }

    /** A kitchen where a demo of one's own was left yesterday, so that it is there at once today. */
    private static Path nextDay() throws IOException {
        Path kitchen = Files.createDirectories(Path.of("target/next-day"));
        Path scripts = Files.createDirectories(kitchen.resolve("scripts"));
        Files.copy(Path.of("scripts/lighter-rib-pot.demo.json"), scripts.resolve("lighter-rib-pot.demo.json"), StandardCopyOption.REPLACE_EXISTING);
        Files.writeString(scripts.resolve(".last-worked-on"), "lighter-rib-pot");
        return kitchen.toAbsolutePath();
    }

    /** A class that the archive of a build has lost costs ten times as much; nothing but this count shows it. */
    private static Object[] loaded(Map.Entry<String, String> command, String text) throws IOException {
        Path log = Files.createTempFile("classes", ".log");
        try (Pty pty = Pty.running("export _JAVA_OPTIONS=-Xlog:class+load:file=" + log + ":none; " + command.getValue())) {
            pty.await(text);
            pty.type("q\n");
            pty.end();
        }
        List<String> lines = Files.readAllLines(log).stream().takeWhile(line -> !line.startsWith(AFTER_THE_PICTURE)).toList();
        Files.delete(log);
        return new Object[] {command.getKey(), lines.size(), lines.stream().filter(line -> !line.contains("shared objects file")).count()};
    }

    /** The launcher's start with two kitchens, and the portable folder's with the second, side by side beside a bare Java program. */
    static void compare(Path without, Path with, int rounds) throws IOException {
        Path hello = helloJar();
        Map<String, String> commands = new LinkedHashMap<>();
        commands.put("bare java", "exec java -Xshare:auto -jar '" + hello + "' " + LAST_WORD);
        commands.put("without", "exec target/hobside --kitchen '" + without + "'");
        commands.put("with pack", "exec target/hobside --kitchen '" + with + "'");
        if (Files.exists(Path.of(PORTABLE))) {
            commands.put("portable", "exec " + PORTABLE + " --kitchen '" + with + "'");
        }
        report(measure(commands, LAST_WORD, rounds));
        Files.delete(hello);
    }

    private static Map<String, Start[]> measure(Map<String, String> commands, String text, int rounds) throws IOException {
        Map<String, Start[]> starts = new LinkedHashMap<>();
        for (int round = -1; round < rounds; round++) {
            for (Map.Entry<String, String> command : commands.entrySet()) {
                Start start = once(command.getValue(), text);
                if (round >= 0) {
                    starts.computeIfAbsent(command.getKey(), it -> new Start[rounds])[round] = start;
                }
            }
        }
        return starts;
    }

    private static Start once(String command, String text) throws IOException {
        try (Pty pty = Pty.running(command)) {
            long go = pty.await(Pty.GO);
            pty.takeSeen();
            long there = pty.await(text);
            double memory = pty.java().map(it -> peak(it.pid())).orElse(Double.NaN);
            pty.type("q\n");
            pty.end();
            return new Start((there - go) / 1e6, memory);
        }
    }

    /** The high-water mark of a process's memory, in MiB, as Linux keeps it. */
    private static double peak(long pid) {
        try {
            for (String line : Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status"))) {
                if (line.startsWith("VmHWM:")) {
                    return Double.parseDouble(line.replaceAll("\\D", "")) / 1024;
                }
            }
            return Double.NaN;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void report(Map<String, Start[]> starts) {
        double[] bare = null;
        System.out.println("                 ms median   (10 % .. 90 %)   ratio    MiB   ratio");
        for (Map.Entry<String, Start[]> each : starts.entrySet()) {
            Samples millis = column(each.getValue(), true);
            double memory = column(each.getValue(), false).median();
            bare = bare == null ? new double[] {millis.median(), memory} : bare;
            System.out.printf(
                    Locale.ROOT,
                    "%-12s %12.1f   (%5.1f .. %5.1f)  %6.2f %6.1f  %6.2f%n",
                    each.getKey(), millis.median(), millis.percentile(10), millis.percentile(90),
                    millis.median() / bare[0], memory, memory / bare[1]);
        }
    }

    private static Samples column(Start[] starts, boolean time) {
        double[] values = new double[starts.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = time ? starts[i].millis() : starts[i].mebibytes();
        }
        return Samples.of(values);
    }

    private static Path helloJar() throws IOException {
        Path jar = Files.createTempFile("hello", ".jar");
        String name = Hello.class.getName().replace('.', '/') + ".class";
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Hello.class.getName());
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                InputStream code = Hello.class.getClassLoader().getResourceAsStream(name)) {
            out.putNextEntry(new JarEntry(name));
            code.transferTo(out);
            out.closeEntry();
        }
        return jar;
    }
}
