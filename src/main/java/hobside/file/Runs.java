package hobside.file;

import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The runs of the demos, each in a journal of its own in {@code scripts}: {@code NAME.run-20260131-093000.jsonl}. A line is on the
 * disk before the next thing can happen; nothing that stands in a journal is written a second time.
 */
public final class Runs {

    static final String ENDING = ".jsonl";

    private static final String RUN = ".run-";
    private static final String LIVE = ".live";

    /** So many copies of the program can have a live run going at once; each has a marker of its own. */
    private static final int MOST_LIVE = 9;
    private static final int MOST_NAME = 120;
    private static final int MOST_OF_A_SECOND = 100;

    /** A live run that was broken off longer ago than this is not offered any more. */
    private static final long TOO_OLD = 12L * 60 * 60 * 1_000;

    /** A live run whose last happening is older than this was not interrupted a moment ago: a start does not go straight on with it. */
    private static final long LATELY = 30L * 60 * 1_000;

    /** Stands in a marker, after the name of the journal, when the user has left the run. */
    private static final String LEFT = "\nleft";

    private final Folder kitchen;
    private final Path scripts;
    private final Claims claims;

    Runs(Folder kitchen, Path scripts, Claims claims) {
        this.kitchen = kitchen;
        this.scripts = scripts;
        this.claims = claims;
    }

    /** What is added to the name of a journal that was put away. */
    private static final String AWAY = ".away";

    /** A run whose journal is being written. What could not be written yet is kept here, and written with the next line. */
    public static final class Open {

        private final List<byte[]> lines = new ArrayList<>();
        private final String name;
        private Journal journal;
        private Run run;
        private boolean marked;
        private int place;

        private Open(Run run, String name, Journal journal) {
            this.run = run;
            this.name = name;
            this.journal = journal;
        }

        /** What has happened so far, whether it is on the disk or not. */
        public Run run() {
            return run;
        }

        /** The name of its file; empty while there is none. */
        public String file() {
            return journal == null ? "" : "scripts/" + journal.file().getFileName();
        }
    }

    /** A run that has begun, and why it is not on the disk if it is not. */
    public record Begun(Open open, Optional<String> trouble) {}

    /** The runs that could be read, the oldest first, and the faults of all journals; a run with a faulty line is there without that line. */
    public record Found(List<Run> runs, List<InputProblem> problems) {

        public Found {
            runs = List.copyOf(runs);
            problems = List.copyOf(problems);
        }
    }

    /**
     * A live run that is not over, ready to go on, and the faults of its journal.
     *
     * @param left the user has left it; false when the program was stopped under it
     */
    public record Unfinished(Open open, List<InputProblem> problems, boolean left) {

        /** When the last thing happened in it: milliseconds since 1970, UTC. */
        public long lastAt() {
            long last = 0;
            for (Happening happening : open.run().happenings()) {
                last = Math.max(last, happening.at());
            }
            return open.run().head().begunAt() + last;
        }

        /** Whether it was interrupted less than half an hour before this time, so that an audience may be waiting. */
        public boolean isWaitedFor(long now) {
            return !left && now - lastAt() <= LATELY;
        }
    }

    /** Begins a journal. The run goes on even if it cannot be written. */
    public Begun begin(Run.Head head) {
        Run.Head clean = RunWriter.cleaned(head);
        Open open = new Open(new Run(clean, List.of()), name(clean), null);
        open.lines.add(RunWriter.head(clean));
        return new Begun(open, written(open));
    }

    private static String name(Run.Head head) {
        return head.demo() + RUN + DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT)
                .format(Instant.ofEpochMilli(head.begunAt()).atZone(ZoneId.systemDefault()));
    }

    /** Adds what has happened, cleaned of what a terminal could obey: on the disk before this returns; or says why it is not there yet. Then the next one brings it along. */
    public Optional<String> append(Open open, Happening happening) {
        Happening clean = RunWriter.cleaned(happening);
        open.run = open.run.with(clean);
        open.lines.add(RunWriter.happening(clean));
        return written(open);
    }

    private Optional<String> written(Open open) {
        try {
            prepare();
            if (open.journal == null || !Files.exists(open.journal.file(), LinkOption.NOFOLLOW_LINKS)) {
                open.journal = fresh(open.name);
                open.marked = false;
            }
            open.journal.write(open.lines);
            mark(open);
            return Optional.empty();
        } catch (IOException | RuntimeException fault) {
            return Optional.of("This run is only in memory: " + SafeFile.why(fault, scripts.resolve(open.name + ENDING))
                    + ". It goes on, and the next key tries again.");
        }
    }

    private void prepare() throws IOException {
        kitchen.make(scripts);
    }

    private Journal fresh(String name) throws IOException {
        for (int number = 1; number <= MOST_OF_A_SECOND; number++) {
            Path file = scripts.resolve(name + (number == 1 ? "" : "-" + number) + ENDING);
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                return Journal.fresh(file);
            }
        }
        throw new IOException("a hundred runs have begun in this second");
    }

    /** A marker names a live run that is going on, so that a start need not look through all journals. */
    private void mark(Open open) throws IOException {
        if (!open.run.head().isLive()) {
            return;
        }
        String journal = open.journal.file().getFileName().toString();
        if (open.run.isOver()) {
            if (open.place > 0 && marked(open.place).equals(journal)) {
                Files.deleteIfExists(marker(open.place));
            }
            claims.give(open.place);
        } else if (!open.marked) {
            open.place = claimed(open.place);
            if (open.place > 0) {
                try (Turn turn = kitchen.turn(scripts)) {
                    SafeFile.replace(turn, marker(open.place), journal.getBytes(StandardCharsets.UTF_8));
                }
            }
            open.marked = true;
        }
    }

    /** The user leaves the run that goes on, and can come back to it. Where that cannot be written, a start goes straight on with it. */
    public void leave(Open open) {
        if (open.place == 0 || !open.marked || open.run.isOver()) {
            return;
        }
        try (Turn turn = kitchen.turn(scripts)) {
            String words = open.journal.file().getFileName() + LEFT;
            SafeFile.replace(turn, marker(open.place), words.getBytes(StandardCharsets.UTF_8));
            // The next thing that happens in it writes the marker anew, without this.
            open.marked = false;
        } catch (IOException | RuntimeException unwritten) {
            open.marked = true;
        }
    }

    private Path marker(int place) {
        return scripts.resolve(place == 1 ? LIVE : LIVE + "-" + place);
    }

    /** The place of a run that is gone on with, else the first that no other copy of the program has; 0 when all are taken. */
    private int claimed(int wanted) {
        if (wanted > 0 && claims.take(wanted)) {
            return wanted;
        }
        for (int place = 1; place <= MOST_LIVE; place++) {
            if (claims.take(place)) {
                return place;
            }
        }
        return 0;
    }

    /**
     * Puts the journal of the run that goes on away, so that it is not measured or compared any more: its file gets another name, and
     * nothing of it is lost. Returns why it could not be done.
     */
    public Optional<String> putAway(Open open) {
        if (open.journal == null) {
            return Optional.empty();
        }
        Path file = open.journal.file();
        try {
            Files.move(file, file.resolveSibling(file.getFileName() + AWAY), StandardCopyOption.ATOMIC_MOVE);
            return Optional.empty();
        } catch (IOException | RuntimeException fault) {
            return Optional.of("The run could not be put away: " + SafeFile.why(fault, file) + ".");
        }
    }

    /** The name of the journal in a marker. */
    private String marked(int place) {
        String words = words(place);
        return words.endsWith(LEFT) ? words.substring(0, words.length() - LEFT.length()) : words;
    }

    private String words(int place) {
        Optional<RawFile> marker = kitchen.read(marker(place)).value();
        return marker.isEmpty() ? "" : new String(marker.get().bytes(), StandardCharsets.UTF_8).strip();
    }

    /** The live run that was broken off or left last, if it began less than twelve hours before this time (milliseconds since 1970, UTC). */
    public Optional<Unfinished> unfinished(long now) {
        for (int place = 1; place <= MOST_LIVE; place++) {
            Optional<Unfinished> found = Files.exists(marker(place), LinkOption.NOFOLLOW_LINKS) ? unheld(place, now) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** A run that another copy of the program has going was not broken off. */
    private Optional<Unfinished> unheld(int place, long now) {
        boolean ours = claims.holds(place);
        if (!claims.take(place)) {
            return Optional.empty();
        }
        String name = marked(place);
        Optional<Unfinished> found = isRun(name) ? unfinished(scripts.resolve(name), now, words(place).endsWith(LEFT)) : Optional.empty();
        if (found.isPresent()) {
            found.get().open().place = place;
        }
        if (!ours) {
            claims.give(place);
        }
        return found;
    }

    private Optional<Unfinished> unfinished(Path file, long now, boolean left) {
        Optional<RawFile> raw = kitchen.read(file).value();
        if (raw.isEmpty()) {
            return Optional.empty();
        }
        RunReader.Journaled read = RunReader.read(raw.get());
        boolean open = read.run().isPresent() && read.run().get().head().isLive() && !read.run().get().isOver()
                && now - read.run().get().head().begunAt() < TOO_OLD;
        return open ? Optional.of(new Unfinished(opened(file, read.run().get(), raw.get().bytes()), read.problems(), left)) : Optional.empty();
    }

    private static Open opened(Path file, Run run, byte[] bytes) {
        String name = file.getFileName().toString();
        Open open = new Open(run, name.substring(0, name.length() - ENDING.length()), null);
        open.lines.add(RunWriter.head(run.head()));
        for (Happening happening : run.happenings()) {
            open.lines.add(RunWriter.happening(happening));
        }
        open.journal = Journal.goingOn(file, bytes, open.lines.size());
        return open;
    }

    /** A name that this class could have given: nothing in it leads out of the folder. */
    static boolean isRun(String name) {
        int at = name.indexOf(RUN);
        boolean framed = at > 0 && name.endsWith(ENDING) && name.length() <= MOST_NAME && name.length() > at + RUN.length() + ENDING.length();
        return framed && SafeName.isSafe(name.substring(0, at))
                && Ids.isId(name.substring(at + RUN.length(), name.length() - ENDING.length()));
    }

    /** All runs of a demo. Nothing is written, whatever is found. */
    public Found of(String demo) {
        String beginning = (SafeName.isSafe(demo) ? demo : SafeName.of(demo)) + RUN;
        List<Run> runs = new ArrayList<>();
        List<InputProblem> problems = new ArrayList<>();
        for (Path path : kitchen.list(scripts, ENDING, problems)) {
            String name = path.getFileName().toString();
            if (isRun(name) && name.startsWith(beginning)) {
                Read<RawFile> file = kitchen.read(path);
                problems.addAll(file.problems());
                file.value().ifPresent(raw -> add(RunReader.read(raw), runs, problems));
            }
        }
        runs.sort(Comparator.comparingLong(run -> run.head().begunAt()));
        return new Found(runs, problems);
    }

    private static void add(RunReader.Journaled read, List<Run> runs, List<InputProblem> problems) {
        read.run().ifPresent(runs::add);
        problems.addAll(read.problems());
    }
}
