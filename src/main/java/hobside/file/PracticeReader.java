package hobside.file;

import hobside.measure.Worded;
import hobside.practice.Attempt;
import hobside.practice.Entry;
import hobside.practice.Erased;
import hobside.practice.Kind;
import hobside.practice.Label;
import hobside.practice.Ruling;
import hobside.practice.WorkshopSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Reads logs of practice line by line. A line that cannot be read is left out and told by its number, and so is a last line that was
 * cut short when the program was stopped; the file itself is left as it is.
 */
final class PracticeReader {

    static final String SET = "workshop-set/1";

    static final int WORDS = 2_000;
    private static final int MOST_LINES = 50_000;
    private static final int MOST_POINTS = 20;
    private static final int MOST_LISTED = 100;

    private static final Keys LINE = Keys.of("id", "trainee", "at", "exercise", "score", "mistake", "points", "words", "ruled", "point", "mark", "by", "erased");
    private static final Keys PREPARED = Keys.of("hobside", "title", "kinds", "topics", "dishes", "level", "minutes", "language");

    private static final Bounds AT = Bounds.of(0, 4e12, "milliseconds since 1970", "delete the line");
    private static final Bounds SCORE = Bounds.of(0, 1, "", "delete the line");
    private static final Bounds LEVEL = Bounds.of(0, Label.HARDEST, "0 to follow each trainee", "correct it");
    private static final Bounds MINUTES = Bounds.of(0, Limits.MINUTES, "minutes", "correct it");

    private static final Wanted WHOLE = Wanted.of("a whole line", "nothing needs to be done: the program was stopped while it wrote it, and all before it is there");

    private final RawFile file;
    private final Problems problems;
    private final List<Entry> entries = new ArrayList<>();

    /** What could be read, and the faults. */
    record Logged(List<Entry> entries, List<InputProblem> problems) {}

    private PracticeReader(RawFile file) {
        this.file = file;
        this.problems = new Problems(file.name());
    }

    static Logged read(RawFile file) {
        PracticeReader reader = new PracticeReader(file);
        reader.lines();
        return new Logged(reader.entries, reader.problems.all());
    }

    private void lines() {
        if (file.bytes().length > RawFile.MOST_BYTES) {
            problems.add(0, "a file of more than 8 MiB", Wanted.of("at most 8 MiB", "check that this is the right file"));
            return;
        }
        int number = 1;
        for (int start = 0; start < file.bytes().length; start = end(start) + 1) {
            if (number > MOST_LINES) {
                problems.add(number, "more lines", Wanted.of("at most " + MOST_LINES, "the rest is not read"));
                return;
            }
            line(start, number++);
        }
    }

    private int end(int start) {
        int end = start;
        while (end < file.bytes().length && file.bytes()[end] != '\n') {
            end++;
        }
        return end;
    }

    private void line(int start, int number) {
        int end = end(start);
        byte[] bytes = Arrays.copyOfRange(file.bytes(), start, end);
        if (isBlank(bytes)) {
            return;
        }
        Problems faults = new Problems(file.name());
        Optional<Entry> entry = JsonTree.read(new RawFile(file.name(), bytes), faults).flatMap(tree -> Fields.of(tree, Where.TOP, LINE, faults))
                .flatMap(PracticeReader::entry);
        if (faults.isEmpty()) {
            entry.ifPresent(entries::add);
        } else if (end == file.bytes().length) {
            problems.add(number, "a last line that was cut short", WHOLE);
        } else {
            faults.all().forEach(fault -> tell(fault, number));
        }
    }

    private static boolean isBlank(byte[] line) {
        for (byte each : line) {
            if (each != ' ' && each != '\r' && each != '\t') {
                return false;
            }
        }
        return true;
    }

    /** Each line was read as a file of its own; here its faults get the number that it has in the log. */
    private void tell(InputProblem fault, int number) {
        Wanted wanted = Wanted.of(fault.expected(), fault.remedy());
        if (fault.field().isEmpty()) {
            problems.add(number, fault.found(), wanted);
        } else {
            problems.add(number, fault.field(), fault.found(), wanted);
        }
    }

    private static Optional<Entry> entry(Fields row) {
        Optional<String> id = Ids.of(row, "id");
        Optional<String> trainee = Ids.of(row, "trainee");
        OptionalDouble at = row.needed("at", AT);
        if (id.isEmpty() || trainee.isEmpty() || at.isEmpty()) {
            return Optional.empty();
        }
        Attempt.Head head = new Attempt.Head(id.get(), trainee.get(), (long) at.getAsDouble());
        if (row.has("erased")) {
            return row.yes("erased") ? Optional.of(new Erased(head)) : Optional.empty();
        }
        return row.has("ruled") ? ruling(head, row) : attempt(head, row);
    }

    private static Optional<Entry> ruling(Attempt.Head head, Fields row) {
        Optional<String> attempt = Ids.of(row, "ruled");
        Optional<String> point = Ids.of(row, "point");
        Optional<String> mark = Ids.of(row, "mark");
        Optional<Ruling.By> by = row.word("by", Ruling.By.values());
        return attempt.isEmpty() || point.isEmpty() || mark.isEmpty() || by.isEmpty() ? Optional.empty()
                : Optional.of(new Ruling(head, attempt.get(), new Ruling.Marked(point.get(), mark.get(), by.get())));
    }

    private static Optional<Entry> attempt(Attempt.Head head, Fields row) {
        Optional<String> key = row.text("exercise", Limits.WORDS);
        Optional<Label> label = key.flatMap(Label::parse);
        if (key.isPresent() && label.isEmpty()) {
            row.fault("exercise", row.value("exercise").shown(), Wanted.of("kind/topic/level/dish/number", "delete the line"));
        }
        OptionalDouble score = row.needed("score", SCORE);
        String mistake = row.has("mistake") ? Ids.of(row, "mistake").orElse("") : "";
        Map<String, String> points = points(row);
        String words = row.textOr("words", WORDS, "");
        return label.isEmpty() || score.isEmpty() || !row.problems().isEmpty() ? Optional.empty()
                : Optional.of(new Attempt(head, label.get(), new Attempt.Result(score.getAsDouble(), mistake, points, words)));
    }

    private static Map<String, String> points(Fields row) {
        Map<String, String> points = new TreeMap<>();
        if (!(row.value("points") instanceof Json.Obj object)) {
            return points;
        }
        for (Json.Entry each : object.entries()) {
            boolean sound = each.value() instanceof Json.Text text && Ids.isId(text.value()) && Ids.isId(each.key()) && object.size() <= MOST_POINTS;
            if (sound) {
                points.put(each.key(), ((Json.Text) each.value()).value());
            } else {
                row.fault("points", each.value().shown(), Wanted.of("a word such as yes, part or no", "delete the line"));
            }
        }
        return points;
    }

    /** A set that a trainer has prepared. */
    static Read<WorkshopSet> set(RawFile file) {
        Problems problems = new Problems(file.name());
        Optional<WorkshopSet> set = hobside.file.Kind.of(file, List.of(SET), problems).flatMap(tree -> Fields.of(tree, Where.TOP, PREPARED, problems))
                .flatMap(PracticeReader::set);
        return set.isPresent() && problems.isEmpty() ? new Loaded<>(set.get()) : new Rejected<>(problems.all());
    }

    private static Optional<WorkshopSet> set(Fields row) {
        Optional<String> title = row.text("title", Limits.NAME);
        List<Kind> kinds = new ArrayList<>();
        for (String word : row.texts("kinds", MOST_LISTED, Limits.ID)) {
            Optional<Kind> kind = Worded.parse(Kind.values(), word);
            kind.ifPresentOrElse(kinds::add, () -> row.fault("kinds", Shown.quoted(word),
                    Wanted.of("one of " + Nearest.listed(Worded.words(Kind.values())), "correct it")));
        }
        WorkshopSet.Wanted wanted = new WorkshopSet.Wanted(kinds, row.texts("topics", MOST_LISTED, Limits.WORDS), row.texts("dishes", MOST_LISTED, Limits.ID),
                row.whole("level", LEVEL, 0));
        int minutes = row.whole("minutes", MINUTES, 0);
        String language = row.textOr("language", 2, "en");
        return title.map(name -> new WorkshopSet(name, wanted, minutes, language));
    }
}
