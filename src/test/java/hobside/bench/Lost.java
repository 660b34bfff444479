package hobside.bench;

import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Loaded;
import hobside.file.Slates;
import hobside.file.Study;
import hobside.screen.Key;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.DiskWork;
import hobside.screen.terminal.Pty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Kills the real program while somebody types, and counts what is missing. What ought to be on the disk after each key is known from
 * the same screens played in memory over a copy of the kitchen. Every key but the last that changes something is given the time to be
 * accepted: one that still waits in the terminal was never the program's.
 */
public final class Lost {

    private static final String NAME = "lost";
    private static final String DEMO = "scripts/lighter-rib-pot.demo.json";
    private static final String KEPT_AS = "scripts/" + NAME + ".demo.json";
    private static final int PATIENCE_MILLIS = 4_000;

    /** A kitchen grows with each price list and food; after so many kills a new one is taken. */
    private static final int FRESH_AFTER = 25;

    private final String program;
    private final Path kitchen;
    private final Path model;
    private final Random random;
    private final Count count = new Count();

    /** What came of it. */
    public static final class Count {
        public int kills;
        public int nothing;
        public int lastKey;
        public int more;
        public int offeredAgain;
        public int unreadable;
        public int leftOver;
        public int leftAtTheEnd;
        public final Map<String, Integer> ways = new TreeMap<>();
        public final List<String> words = new ArrayList<>();
    }

    /** Files by name, and what stands on the slate. */
    private record State(Map<String, String> files, String typed) {}

    /**
     * @param program a shell command up to the option for the kitchen
     * @param folder for the kitchen and its copy
     */
    public Lost(String program, Path folder, long seed) {
        this.program = program;
        this.kitchen = folder.resolve("kitchen");
        this.model = folder.resolve("model");
        this.random = new Random(seed);
    }

    public Count kill(int times) throws IOException {
        for (int i = 0; i < times; i++) {
            if (i % FRESH_AFTER == 0) {
                clear(kitchen);
                Files.createDirectories(kitchen.resolve("scripts"));
                Files.copy(Path.of(DEMO), kitchen.resolve(KEPT_AS));
            }
            once();
        }
        sweep();
        clear(kitchen);
        clear(model);
        return count;
    }

    /** The ways of typing that are tried: the name of each and its keys. */
    private List<String> way() {
        List<String> keys = new ArrayList<>();
        String name = List.of("plan", "amount", "words", "note", "save", "prices", "food").get(random.nextInt(7));
        count.ways.merge(name, 1, Integer::sum);
        switch (name) {
            case "plan" -> plan(keys, 6);
            case "amount" -> asked(keys, "down ".repeat(random.nextInt(5)) + "e", "1 2 3 4 backspace space g enter");
            case "words" -> asked(keys, "t " + "down ".repeat(1 + random.nextInt(8)) + "enter", letters(2 + random.nextInt(14)) + " enter");
            case "note" -> asked(keys, "tab down n", letters(2 + random.nextInt(10)) + " enter");
            case "save" -> {
                plan(keys, 3);
                keys.add("s");
            }
            case "prices" -> asked(keys, "P n", letters(3) + " enter enter enter b u t t e r enter ctrl-u 2 5 0 space g enter 2 . 6 0 enter");
            default -> asked(keys, "f ctrl-n", letters(4) + " down down 1 9 0 0 down down 2 0 down 8 ctrl-s");
        }
        return keys;
    }

    private void plan(List<String> keys, int most) {
        keys.addAll(List.of("tab", "down"));
        for (int i = 1 + random.nextInt(most); i > 0; i--) {
            keys.add(List.of("space", "x", "u", ">", "down", "space").get(random.nextInt(6)));
        }
    }

    private static void asked(List<String> keys, String way, String typed) {
        keys.addAll(List.of(way.split(" ")));
        keys.addAll(List.of(typed.strip().split(" ")));
    }

    private String letters(int many) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < many; i++) {
            all.append(random.nextInt(8) == 0 ? "backspace" : String.valueOf((char) ('a' + random.nextInt(26)))).append(' ');
        }
        return all.toString().strip();
    }

    private void once() throws IOException {
        List<String> keys = way();
        List<State> states = expected(keys);
        int first = firstChange(states);
        int last = first > keys.size() ? keys.size() : first + random.nextInt(keys.size() - first + 1);
        int change = lastChange(states, last);
        try (Pty pty = Pty.running(program + " --kitchen '" + kitchen + "' " + NAME)) {
            pty.await("leave");
            for (int i = 1; i <= last; i++) {
                pty.type(bytes(keys.get(i - 1)));
                if (i < change && !states.get(i).equals(states.get(i - 1))) {
                    waitFor(states.get(i), keys.subList(0, i));
                }
                pty.readAvailable();
            }
            pause(random.nextInt(30));
            pty.java().ifPresent(Lost::kill);
        }
        count.kills++;
        judge(states, change, keys.subList(0, last));
    }

    private static void kill(ProcessHandle java) {
        java.destroyForcibly();
        java.onExit().join();
    }

    private static int firstChange(List<State> states) {
        int at = 1;
        while (at < states.size() && states.get(at).equals(states.get(0))) {
            at++;
        }
        return at;
    }

    private static int lastChange(List<State> states, int upTo) {
        int at = Math.min(upTo, states.size() - 1);
        while (at > 0 && states.get(at).equals(states.get(at - 1))) {
            at--;
        }
        return at;
    }

    /** What the disk ought to hold before the first key and after each. */
    private List<State> expected(List<String> keys) throws IOException {
        clear(model);
        copy(kitchen, model);
        Kitchen copy = Kitchen.at(model);
        Study study = Study.of(Library.load(copy));
        DiskWork disk = new DiskWork(copy, study, InstantSource.system());
        Answer.Opened opened = (Answer.Opened) disk.opened(new Answer.Choice(Answer.Kind.DEMO, NAME, NAME));
        Bench bench = Bench.of(Desk.of(study, opened.demo(), opened.kept()), opened.words());
        VirtualStage stage = VirtualStage.with(Next.to(bench), Size.HOME, disk);
        List<State> states = new ArrayList<>(List.of(state(model)));
        for (String key : keys) {
            stage.play(key);
            states.add(state(model));
        }
        return states;
    }

    private static State state(Path kitchen) throws IOException {
        Map<String, String> files = new TreeMap<>();
        StringBuilder typed = new StringBuilder();
        for (Path file : all(kitchen)) {
            String name = kitchen.relativize(file).toString();
            if (name.endsWith(".json")) {
                files.put(name, Files.readString(file));
            } else if (name.startsWith("scripts/.typing")) {
                Slates.on(Files.readAllBytes(file)).ifPresent(left -> typed.append(left.scrap().asked()).append('\n').append(left.scrap().text()).append('\n'));
            }
        }
        return new State(files, typed.toString());
    }

    private static List<Path> all(Path kitchen) throws IOException {
        if (!Files.exists(kitchen)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(kitchen)) {
            return walk.filter(Files::isRegularFile).toList();
        }
    }

    private void waitFor(State wanted, List<String> keys) throws IOException {
        for (int i = 0; i < PATIENCE_MILLIS / 2; i++) {
            if (isThere(wanted)) {
                return;
            }
            pause(2);
        }
        count.words.add("never came, after " + keys);
    }

    /** Files come and go while they are looked at. */
    private boolean isThere(State wanted) {
        try {
            return state(kitchen).equals(wanted);
        } catch (IOException | RuntimeException moving) {
            return false;
        }
    }

    private void judge(List<State> states, int change, List<String> keys) throws IOException {
        State found = state(kitchen);
        State now = states.get(change);
        State before = states.get(Math.max(0, change - 1));
        boolean files = found.files().equals(now.files());
        if (found.equals(now)) {
            count.nothing++;
        } else if (found.equals(before)) {
            count.lastKey++;
        } else if (files && found.typed().equals(before.typed())) {
            count.offeredAgain++;
        } else {
            count.more++;
            count.words.add("more than the last key is missing, after " + keys);
        }
        read();
    }

    /** Everything is read with the program's own readers; what was half typed is thrown away for the next time. */
    private void read() throws IOException {
        Kitchen there = Kitchen.at(kitchen);
        Library library = Library.load(there);
        for (InputProblem problem : library.problems()) {
            count.unreadable++;
            count.words.add(problem.written());
        }
        for (Kitchen.Recent recent : there.recent()) {
            if (!(there.open(recent.name(), library.shelf()) instanceof Loaded)) {
                count.unreadable++;
                count.words.add("unreadable: " + recent.name());
            }
        }
        count.leftOver += parts().size();
        Slates slates = there.slates();
        for (Optional<Slates.Left> left = slates.left(NAME, ""); left.isPresent(); left = slates.left(NAME, "")) {
            slates.forget(left.get());
        }
    }

    private List<String> parts() throws IOException {
        return all(kitchen).stream().map(path -> kitchen.relativize(path).toString()).filter(name -> name.endsWith(".part")).toList();
    }

    /** One more start and save, as on the next day: what a killed write left lying about goes then. */
    private void sweep() throws IOException {
        try (Pty pty = Pty.running(program + " --kitchen '" + kitchen + "' " + NAME)) {
            pty.await("leave");
            pty.type("s");
            pty.await("to open again");
            pty.type("q");
            pty.end();
        }
        for (String part : parts()) {
            count.leftAtTheEnd++;
            count.words.add("still there after the next save: " + part);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        for (Path file : all(from)) {
            Path there = to.resolve(from.relativize(file));
            Files.createDirectories(there.getParent());
            if (file.toString().endsWith(".json")) {
                Files.copy(file, there);
            }
        }
    }

    private static void clear(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path each : walk.sorted((one, other) -> other.compareTo(one)).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }

    private static String bytes(String word) {
        Key key = Key.parse(word);
        return switch (key.kind()) {
            case CHARACTER -> Character.toString(key.codePoint());
            case CTRL -> Character.toString(key.codePoint() - 'a' + 1);
            case ENTER -> "\r";
            case TAB -> "\t";
            case BACKSPACE -> "\177";
            case DOWN -> "\033[B";
            case UP, LEFT, RIGHT, HOME, END, PAGE_UP, PAGE_DOWN, DELETE, INSERT, FUNCTION, ESCAPE, BACK_TAB ->
                    throw new IllegalStateException("not typed here: " + word);
        };
    }

    private static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
