package hobside.bench;

import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Study;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.DiskWork;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Somebody leans on the keyboard: keys at random, pastes and changes of size, over all screens and a kitchen of its own on the disk.
 * Whatever is pressed, no screen may fail, and none may show a character that a terminal obeys.
 */
final class Stray {

    /** What opens a screen or a question is pressed more often than what closes one. */
    private static final List<String> KEYS = List.of(("enter enter enter down down up tab left right escape space space backspace a b c d e f g h i j k l m n o p r s t u v w x y z "
            + "A C L R P E X X T W ? 1 2 3 4 5 9 0 ctrl-n ctrl-s ctrl-p ctrl-t ctrl-u f1 end home page-down page-up < > , . - insert delete back-tab").split(" "));

    /** A person at a keyboard goes back now and then; without it the first long question would take all keys. */
    private static final int BACK_ONE_IN = 25;

    private static final List<String> PASTES = List.of("2 kg", "1/2 cup", "", "\n\n", "a\tb", "\u202eevil\u202c", "\ud83c\udf72\ud83c\udf72", "e\u0301\u0301", "999999999999", "-1", "NaN", "{fasat}",
            "x".repeat(3_000), "\u6c34\u9c7c".repeat(40), "\033[2J\007");

    private static final List<Size> SIZES = List.of(Size.LEAST, Size.LEAST, Size.HOME, Size.HOME, new Size(120, 40), new Size(250, 70), new Size(61, 21), new Size(20, 5));

    private static final List<String> DEMOS = List.of("lighter-rib-pot", "lighter-potato-bake", "lighter-pumpkin-pot");

    private final Path folder;
    private final Set<String> screens = new TreeSet<>();
    private final List<String> trouble = new ArrayList<>();
    private long pressed;

    /** @param folder a new kitchen is made in it for each round */
    Stray(Path folder) {
        this.folder = folder;
    }

    /** The names of the kinds of screens that were reached. */
    Set<String> screens() {
        return Set.copyOf(screens);
    }

    /** What went wrong, with the round and all keys that led there. */
    List<String> trouble() {
        return List.copyOf(trouble);
    }

    long pressed() {
        return pressed;
    }

    /** One visit of so many keys, on one of the finished demos; the same round, the same keys. */
    void round(int round, int keys) throws IOException {
        Random random = new Random(round);
        Path kitchen = Files.createDirectories(folder.resolve("kitchen-" + round));
        Files.createDirectories(kitchen.resolve("scripts"));
        for (String demo : DEMOS) {
            Files.copy(Path.of("scripts", demo + ".demo.json"), kitchen.resolve("scripts").resolve(demo + ".demo.json"));
        }
        List<String> told = new ArrayList<>();
        try {
            visit(stage(Kitchen.at(kitchen), DEMOS.get(round % DEMOS.size()), SIZES.get(random.nextInt(3))), random, keys, told);
        } catch (RuntimeException | StackOverflowError | AssertionError fault) {
            StackTraceElement[] trace = fault.getStackTrace();
            trouble.add("round " + round + ": " + fault + (trace.length == 0 ? "" : " at " + trace[0]) + " after " + String.join(" ", told));
        }
        clear(kitchen);
    }

    private static void clear(Path kitchen) throws IOException {
        try (Stream<Path> walk = Files.walk(kitchen)) {
            for (Path each : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    private static VirtualStage stage(Kitchen kitchen, String demo, Size size) {
        Study study = Study.of(Library.load(kitchen));
        DiskWork disk = new DiskWork(kitchen, study, Instant::now);
        Answer.Opened opened = (Answer.Opened) disk.opened(new Answer.Choice(Answer.Kind.DEMO, demo, demo));
        return VirtualStage.with(Next.to(Bench.of(Desk.of(study, opened.demo(), opened.kept()), opened.words())), size, disk);
    }

    private void visit(VirtualStage stage, Random random, int keys, List<String> told) {
        Instant now = Instant.now();
        for (int i = 0; i < keys && !stage.isOver(); i++) {
            now = now.plus(Duration.ofMillis(random.nextInt(3_000)));
            step(stage, random, now, told);
            pressed++;
            if (!stage.isOver()) {
                look(stage);
            }
        }
    }

    private static void step(VirtualStage stage, Random random, Instant now, List<String> told) {
        int kind = random.nextInt(60);
        if (kind == 0) {
            int paste = random.nextInt(PASTES.size());
            told.add("(paste " + paste + ")");
            stage.tell(new Message.Pasted(PASTES.get(paste)));
        } else if (kind == 1) {
            Size size = SIZES.get(random.nextInt(SIZES.size()));
            told.add("(" + size.width() + "x" + size.height() + ")");
            stage.resize(size.width(), size.height());
        } else if (kind == 2) {
            stage.tell(new Message.Woken(now));
        } else {
            String key = random.nextInt(BACK_ONE_IN) == 0 ? "escape" : KEYS.get(random.nextInt(KEYS.size()));
            told.add(key);
            stage.play(key);
        }
    }

    private void look(VirtualStage stage) {
        screens.add(stage.screen().getClass().getSimpleName());
        String text = stage.frame().text();
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) != '\n' && Character.isISOControl(text.charAt(i))) {
                throw new AssertionError("a control character is shown: " + (int) text.charAt(i));
            }
        }
    }
}
