package hobside.practice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The lines of any number of logs put together. Nothing is lost: the result is the union of all lines, whichever log comes first and
 * however often. Two lines with one id and another content are both kept and told. A tombstone takes away what was logged of its
 * trainee up to its time, also what comes to light only after it.
 */
public final class Results {

    public static final Results NONE = new Results(new TreeSet<>(Entry.ORDER));

    private final SortedSet<Entry> entries;

    /** Put together when they are first asked for: a list of fifty trainees asks for each of them in every picture. */
    private Map<String, List<Attempt>> byTrainee;

    private Results(SortedSet<Entry> entries) {
        this.entries = entries;
    }

    public static Results of(Collection<? extends Entry> lines) {
        Map<String, Erased> stones = new TreeMap<>();
        for (Entry line : lines) {
            if (line instanceof Erased stone) {
                stones.merge(stone.trainee(), stone, (one, other) -> Entry.ORDER.compare(one, other) >= 0 ? one : other);
            }
        }
        TreeSet<Entry> kept = new TreeSet<>(Entry.ORDER);
        for (Entry line : lines) {
            Erased stone = stones.get(line.trainee());
            if (stone == null || line.equals(stone) || !stone.covers(line)) {
                kept.add(line);
            }
        }
        return new Results(kept);
    }

    public Results merged(Results other) {
        List<Entry> all = new ArrayList<>(entries);
        all.addAll(other.entries);
        return of(all);
    }

    /** Every line that is left, in the one order that any heap of them has. */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** All attempts, with the marks that persons set. */
    public List<Attempt> attempts() {
        Map<String, Map<String, String>> set = new TreeMap<>();
        for (Entry entry : entries) {
            if (entry instanceof Ruling ruling) {
                set.computeIfAbsent(ruling.attempt(), id -> new TreeMap<>()).put(ruling.marked().point(), ruling.marked().mark());
            }
        }
        List<Attempt> all = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry instanceof Attempt attempt) {
                all.add(ruled(attempt, set.getOrDefault(attempt.id(), Map.of())));
            }
        }
        return List.copyOf(all);
    }

    private static Attempt ruled(Attempt attempt, Map<String, String> set) {
        if (set.isEmpty()) {
            return attempt;
        }
        Map<String, String> marks = new TreeMap<>(attempt.result().points());
        marks.putAll(set);
        return attempt.with(Points.result(Points.asked(attempt.label()), marks, attempt.result().words()));
    }

    /** The attempts of one trainee. */
    public List<Attempt> of(String trainee) {
        return byTrainee().getOrDefault(trainee, List.of());
    }

    private Map<String, List<Attempt>> byTrainee() {
        if (byTrainee == null) {
            Map<String, List<Attempt>> all = new TreeMap<>();
            attempts().forEach(attempt -> all.computeIfAbsent(attempt.trainee(), name -> new ArrayList<>()).add(attempt));
            all.replaceAll((name, attempts) -> List.copyOf(attempts));
            byTrainee = all;
        }
        return byTrainee;
    }

    /** All nicknames of which something is left, sorted. */
    public List<String> trainees() {
        return List.copyOf(byTrainee().keySet());
    }

    /** The ids under which more than one line stands. */
    public List<String> clashes() {
        Map<String, Integer> count = new LinkedHashMap<>();
        for (Entry entry : entries) {
            count.merge(entry.id(), 1, Integer::sum);
        }
        return count.entrySet().stream().filter(each -> each.getValue() > 1).map(Map.Entry::getKey).sorted().toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Results results && entries.equals(results.entries);
    }

    @Override
    public int hashCode() {
        return entries.hashCode();
    }
}
