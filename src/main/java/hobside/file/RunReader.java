package hobside.file;

import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the journal of a run line by line. A line that cannot be read is left out and told by its number, and so is a last line that
 * was cut short when the program was stopped; without a sound first line there is no run.
 */
final class RunReader {

    static final String KIND = "run/1";

    /** Milliseconds: a week. */
    static final long LONGEST = 7L * 24 * 60 * 60 * 1_000;

    /** Characters of the key of a cue, and of a text; a text may hold the keys of all cues that were dropped. */
    static final int KEY = 900;
    static final int TEXT = JsonTree.MOST_TEXT;

    static final int MOST_CUES = 2 * Limits.CUES;
    static final int MOST_SECONDS = 86_400;

    private static final int MOST_LINES = 20_000;

    private static final Keys HEAD = Keys.of("hobside", "run", "demo", "begun", "slot", "plan");
    private static final Keys PLANNED = Keys.of("cue", "seconds", "must", "wording");
    private static final Keys HAPPENING = Keys.of("at", "what", "cue", "text");

    private static final Bounds BEGUN = Bounds.of(0, 4e12, "milliseconds since 1970", "correct the line or delete the file");
    private static final Bounds SLOT = Bounds.of(0, Limits.MINUTES, "minutes", "correct it");
    private static final Bounds SECONDS = Bounds.of(0, MOST_SECONDS, "seconds", "correct it");
    private static final Bounds WORDING = Bounds.of(Integer.MIN_VALUE, Integer.MAX_VALUE, "", "correct it");
    private static final Bounds AT = Bounds.of(0, LONGEST, "milliseconds", "delete the line");

    private static final Wanted WHOLE = Wanted.of("a whole line", "nothing needs to be done: the program was stopped while it wrote it, and all before it is there");

    private final RawFile file;
    private final Problems problems;

    /** What could be read, and the faults. */
    record Journaled(Optional<Run> run, List<InputProblem> problems) {}

    private RunReader(RawFile file) {
        this.file = file;
        this.problems = new Problems(file.name());
    }

    static Journaled read(RawFile file) {
        RunReader reader = new RunReader(file);
        Optional<Run> run = reader.run();
        return new Journaled(run, reader.problems.all());
    }

    private Optional<Run> run() {
        if (file.bytes().length > RawFile.MOST_BYTES) {
            problems.add(0, "a file of more than 8 MiB", Wanted.of("at most 8 MiB", "check that this is the right file"));
            return Optional.empty();
        }
        int end = end(0);
        Problems faults = new Problems(file.name());
        Optional<Run.Head> head = Kind.of(line(0, end), List.of(KIND), faults).flatMap(tree -> Fields.of(tree, Where.TOP, HEAD, faults))
                .flatMap(RunReader::head);
        tell(faults, 1);
        return faults.isEmpty() ? head.map(known -> new Run(known, happenings(end + 1))) : Optional.empty();
    }

    private List<Happening> happenings(int from) {
        List<Happening> all = new ArrayList<>();
        int number = 2;
        for (int start = from; start < file.bytes().length; start = end(start) + 1) {
            if (number > MOST_LINES) {
                problems.add(number, "more lines", Wanted.of("at most " + MOST_LINES, "the rest is not read"));
                return all;
            }
            happening(start, number++).ifPresent(all::add);
        }
        return all;
    }

    /** The place of the next line break, or the end of the file. */
    private int end(int start) {
        int end = start;
        while (end < file.bytes().length && file.bytes()[end] != '\n') {
            end++;
        }
        return end;
    }

    private RawFile line(int start, int end) {
        return new RawFile(file.name(), Arrays.copyOfRange(file.bytes(), start, end));
    }

    private Optional<Happening> happening(int start, int number) {
        int end = end(start);
        RawFile line = line(start, end);
        if (isBlank(line.bytes())) {
            return Optional.empty();
        }
        Problems faults = new Problems(file.name());
        Optional<Happening> happening = JsonTree.read(line, faults).flatMap(tree -> Fields.of(tree, Where.TOP, HAPPENING, faults))
                .flatMap(RunReader::happening);
        boolean torn = end == file.bytes().length && !faults.isEmpty();
        if (torn) {
            problems.add(number, "a last line that was cut short", WHOLE);
        } else {
            tell(faults, number);
        }
        return faults.isEmpty() ? happening : Optional.empty();
    }

    private static boolean isBlank(byte[] line) {
        for (byte each : line) {
            if (each != ' ' && each != '\r' && each != '\t') {
                return false;
            }
        }
        return true;
    }

    /** Each line was read as a file of its own; here its faults get the number that it has in the journal. */
    private void tell(Problems faults, int number) {
        for (InputProblem fault : faults.all()) {
            Wanted wanted = Wanted.of(fault.expected(), fault.remedy());
            if (fault.field().isEmpty()) {
                problems.add(number, fault.found(), wanted);
            } else {
                problems.add(number, fault.field(), fault.found(), wanted);
            }
        }
    }

    private static Optional<Run.Head> head(Fields row) {
        Optional<Run.Kind> kind = row.word("run", Run.Kind.values());
        Optional<String> demo = Ids.of(row, "demo");
        OptionalDouble begun = row.needed("begun", BEGUN);
        List<Run.Planned> plan = new ArrayList<>();
        List<Json> rows = row.list("plan", MOST_CUES);
        for (int i = 0; i < rows.size(); i++) {
            Fields.of(rows.get(i), row.where().field("plan").item(i), PLANNED, row.problems()).flatMap(RunReader::planned).ifPresent(plan::add);
        }
        int slot = row.whole("slot", SLOT, 0);
        return kind.isEmpty() || demo.isEmpty() || begun.isEmpty() ? Optional.empty()
                : Optional.of(new Run.Head(kind.get(), demo.get(), (long) begun.getAsDouble(), slot, plan));
    }

    private static Optional<Run.Planned> planned(Fields row) {
        Optional<String> cue = row.text("cue", KEY);
        int seconds = row.whole("seconds", SECONDS, 0);
        boolean must = row.yes("must");
        int wording = row.whole("wording", WORDING, 0);
        return cue.map(key -> new Run.Planned(key, seconds, must, wording));
    }

    private static Optional<Happening> happening(Fields row) {
        OptionalDouble at = row.needed("at", AT);
        Optional<Happening.What> what = row.word("what", Happening.What.values());
        String cue = row.textOr("cue", KEY, "");
        String text = row.textOr("text", TEXT, "");
        return at.isEmpty() || what.isEmpty() ? Optional.empty() : Optional.of(new Happening((long) at.getAsDouble(), what.get(), cue, text));
    }
}
