package hobside;

import hobside.command.Commands;
import hobside.command.Exit;
import hobside.command.Given;
import hobside.talk.Demo;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Moving;
import hobside.file.Read;
import hobside.file.Runs;
import hobside.file.Study;
import hobside.screen.Glyphs;
import hobside.screen.Next;
import hobside.screen.Outside;
import hobside.screen.SteadyClock;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.DiskWork;
import hobside.screen.desk.Work;
import hobside.screen.live.Starting;
import hobside.screen.terminal.Opening;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.module.ModuleDescriptor;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Starts the program: reads the command line, then opens the Bench or carries out a command. */
public final class Hobside {

    private static final String FIRST_DISH = "ropewalk-rib-pot";

    private static final String DOWN = "\033[B";
    private static final String UP = "\033[A";
    private static final String ESCAPE = "\033";

    /** Keys that visit the screens once, so that the class archive of the build holds what they need. */
    private static final List<String> VISIT = List.of(DOWN, UP, "\r", DOWN, "\r", "b", "b", "\t", DOWN, "\r", "\r", "t", " ", DOWN, "\r", "x", ESCAPE, "c", ESCAPE, "p", ESCAPE, ESCAPE, "A", DOWN, "2", "3", ESCAPE,
            "?", ESCAPE, "u", "r", "\t", "e", ESCAPE, "p", "g", ESCAPE, "\r", "o", "b", "u", "tre", "\r", ESCAPE, ESCAPE, ESCAPE, "a", "oil",
            DOWN, ESCAPE, "o", ESCAPE, "f", "oil", "\r", ESCAPE, ESCAPE, "P", "t", ESCAPE, ESCAPE, "L", " ", "l", ESCAPE, "j", DOWN, "\r", ESCAPE, "e", ESCAPE,
            "R", " ", ESCAPE, "c", ESCAPE, ESCAPE, "s", "q");

    /** A short visit, for an archive that must be small: the first picture and a few steps. */
    private static final List<String> BRIEF_VISIT = List.of(DOWN, UP, "\t", "q");

    /** The next day: the demo of the first visit is opened again. */
    private static final List<String> SECOND_VISIT = List.of(DOWN, "\r", ESCAPE, "q");

    private Hobside() {}

    public static void main(String[] arguments) throws IOException {
        int code = run(Given.parse(List.of(arguments)));
        if (code != 0) {
            System.exit(code);
        }
    }

    private static int run(Given given) throws IOException {
        boolean unicode = Opening.surroundings(given.options()).unicode();
        Commands.Streams streams = new Commands.Streams(out(FileDescriptor.out), out(FileDescriptor.err), new Shown(unicode));
        if (given.problem().isPresent()) {
            streams.complaints().println(given.problem().get());
            return Exit.BAD_INPUT.code();
        }
        if (given.has(Given.VERSION)) {
            streams.answers().println("hobside " + version());
            streams.answers().flush();
            return Exit.DONE.code();
        }
        Kitchen kitchen = Kitchen.chosen(given.kitchen(), around());
        if (Files.exists(kitchen.folder()) && !Files.isDirectory(kitchen.folder())) {
            streams.complaints().println("The kitchen must be a folder, and " + kitchen.folder().getFileName() + " is a file. Name a folder after --kitchen.");
            return Exit.BAD_INPUT.code();
        }
        if (given.has(Given.HELP) || given.first().isPresent() && Commands.isCommand(given.first().get())) {
            int code = new Commands(given, kitchen, streams).run().code();
            streams.answers().flush();
            return code;
        }
        return open(given, kitchen, streams);
    }

    private static Kitchen.Surroundings around() {
        return new Kitchen.Surroundings(System.getenv(), Path.of("").toAbsolutePath(), Path.of(System.getProperty("user.home", ".")));
    }

    private static int open(Given given, Kitchen kitchen, Commands.Streams streams) throws IOException {
        if (given.has(Given.WARM_UP)) {
            return warmUp(given);
        }
        Optional<String> refusal = Opening.surroundings(given.options()).refusal();
        if (refusal.isPresent()) {
            streams.complaints().println(refusal.get());
            return Exit.BAD_INPUT.code();
        }
        if (!Moving.isLocked(kitchen)) {
            return bench(given, kitchen, streams, "");
        }
        Settling settling = new Settling(kitchen, around());
        Outside settled = new Outside(settling, SteadyClock.ofThisMachine(), new NothingLeftToDo());
        int code = Opening.open(settling.question(), settled, given.options(), streams.complaints());
        return settling.kitchen().isPresent() ? bench(given, settling.kitchen().get(), streams, settling.said()) : code;
    }

    /** @param told what is said first; empty for nothing */
    private static int bench(Given given, Kitchen kitchen, Commands.Streams streams, String told) throws IOException {
        Library library = Library.load(kitchen);
        Study study = Study.of(library);
        InstantSource clock = SteadyClock.ofThisMachine();
        DiskWork disk = new DiskWork(kitchen, study, clock);
        Optional<Runs.Unfinished> live = kitchen.runs().unfinished(clock.millis());
        if (live.isPresent() && live.get().isWaitedFor(clock.millis()) && isWanted(given, live.get(), kitchen, library)) {
            Bench bench = bench(named(live.get().open().run().head().demo(), kitchen, library, disk), study, library.problems());
            return Opening.open(Starting.resuming(bench, disk.carryOut(new Work.Resume())), outside(disk, clock), given.options(), streams.complaints());
        }
        Answer first = first(given, kitchen, library, disk);
        Optional<String> notThere = refused(given, first);
        if (notThere.isPresent()) {
            streams.complaints().println(streams.shown().apply(notThere.get()));
            return Exit.BAD_INPUT.code();
        }
        Bench bench = bench(first, study, library.problems());
        if (live.isPresent() && library.problems().isEmpty()) {
            bench = Starting.reminding(bench, live.get());
        }
        return Opening.open(opening(first, told.isEmpty() ? bench : bench.saying(told)), outside(disk, clock), given.options(), streams.complaints());
    }

    // Named classes instead of lambdas here and in all that runs before the first picture: each lambda is linked at its first use.

    /** Every step was put away when it was made: a forced exit has nothing left to save. */
    private static final class NothingLeftToDo implements Runnable {
        @Override
        public void run() {}
    }

    /** Without a name a talk that was interrupted just now is gone on with; with one, when it is the dish of that talk. */
    private static boolean isWanted(Given given, Runs.Unfinished live, Kitchen kitchen, Library library) {
        String demo = live.open().run().head().demo();
        if (!kitchen.isSaved(demo)) {
            return false;
        }
        if (given.first().isEmpty() || given.first().get().equals(demo)) {
            return true;
        }
        Read<Demo> wanted = kitchen.demo(given.first().get(), library.shelf());
        Read<Demo> told = kitchen.demo(demo, library.shelf());
        return wanted.value().isPresent() && told.value().isPresent() && wanted.value().get().dish().name().equals(told.value().get().dish().name());
    }

    /** Why what was named cannot be opened. What was not named is only missed in a sentence, once the program is open. */
    private static Optional<String> refused(Given given, Answer first) {
        return first instanceof Answer.Failed failed && given.first().isPresent() ? Optional.of(failed.words()) : Optional.empty();
    }

    private static Answer first(Given given, Kitchen kitchen, Library library, DiskWork disk) {
        if (given.first().isPresent()) {
            return named(given.first().get(), kitchen, library, disk);
        }
        Optional<String> last = kitchen.last();
        return last.isPresent() ? named(last.get(), kitchen, library, disk) : asItIs(Kitchen.bundled(FIRST_DISH, library.shelf()));
    }

    private static Answer named(String name, Kitchen kitchen, Library library, DiskWork disk) {
        if (kitchen.isSaved(name)) {
            return disk.opened(new Answer.Choice(Answer.Kind.DEMO, name, name));
        }
        Read<Demo> read = kitchen.demo(name, library.shelf());
        return read.value().isPresent()
                ? asItIs(read.value().get())
                : new Answer.Failed(read.problems().get(0).written());
    }

    private static Answer asItIs(Demo dish) {
        String words = dish.plan().size() == 0 ? "The dish as it is cooked here. Go to an ingredient and press Enter; ? helps."
                : "A finished demo, opened as a copy of your own. t talk, C running order, L live; ? helps.";
        return new Answer.Opened(dish, Desk.Kept.NOT_YET, words);
    }

    /** What was to be opened, or the first dish and a sentence about why it is not that. */
    private static Bench bench(Answer first, Study study, List<InputProblem> problems) {
        String trouble = problems.isEmpty() ? "" : problems.get(0).written();
        if (first instanceof Answer.Opened opened) {
            return Bench.of(Desk.of(study, opened.demo(), opened.kept()), trouble.isEmpty() ? opened.words() : trouble);
        }
        Demo dish = Kitchen.bundled(FIRST_DISH, study.shelf());
        return Bench.of(Desk.of(study, dish, Desk.Kept.NOT_YET), first instanceof Answer.Failed failed ? failed.words() : trouble);
    }

    private static Next opening(Answer first, Bench bench) {
        return first instanceof Answer.Opened opened ? bench.opening(opened.missing()) : bench.lookingBack();
    }

    private static int warmUp(Given given) throws IOException {
        if (given.has(Given.BRIEF) && given.kitchen().isPresent()) {
            // The first day on a stick, and the next day, when a demo of one's own is there at once; nothing that only a visit like this one needs.
            Kitchen prepared = Kitchen.chosen(given.kitchen(), around());
            visit(Kitchen.at(prepared.folder().resolve("new")), BRIEF_VISIT);
            visit(prepared, BRIEF_VISIT);
            return Exit.DONE.code();
        }
        Path folder = Files.createTempDirectory("hobside-warm-up");
        for (List<String> visit : given.has(Given.BRIEF) ? List.of(BRIEF_VISIT) : List.of(VISIT, SECOND_VISIT)) {
            visit(Kitchen.at(folder), visit);
        }
        Kitchen.clear(folder);
        return Exit.DONE.code();
    }

    /** All that a real start does, so that the archive of classes holds what it needs. */
    private static void visit(Kitchen kitchen, List<String> keys) throws IOException {
        Library library = Library.load(kitchen);
        Study study = Study.of(library);
        InstantSource clock = SteadyClock.ofThisMachine();
        DiskWork disk = new DiskWork(kitchen, study, clock);
        Moving.isLocked(kitchen);
        kitchen.runs().unfinished(clock.millis());
        Answer first = first(Given.parse(List.of()), kitchen, library, disk);
        refused(Given.parse(List.of()), first);
        Opening.rehearse(opening(first, bench(first, study, library.problems())), outside(disk, clock), keys);
    }

    private static Outside outside(DiskWork disk, InstantSource clock) {
        return new Outside(disk, clock, new NothingLeftToDo());
    }

    private static PrintStream out(FileDescriptor descriptor) {
        return new PrintStream(new BufferedOutputStream(new FileOutputStream(descriptor), 8192), descriptor == FileDescriptor.err, StandardCharsets.UTF_8);
    }

    /** A text as the terminal can show it, which may know only ASCII. */
    private record Shown(boolean unicode) implements UnaryOperator<String> {
        @Override
        public String apply(String text) {
            if (unicode) {
                return text;
            }
            StringBuilder plain = new StringBuilder(text.length());
            for (int i = 0; i < text.length(); i++) {
                char each = text.charAt(i);
                plain.append(each == '\n' ? each : Glyphs.plain(each));
            }
            return plain.toString();
        }
    }

    private static String version() {
        Optional<String> jar = Optional.ofNullable(Hobside.class.getPackage().getImplementationVersion());
        Optional<String> image = Optional.ofNullable(Hobside.class.getModule().getDescriptor()).flatMap(ModuleDescriptor::rawVersion);
        return jar.or(() -> image).orElse("(not packed)");
    }
}
