package hobside.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a workshop shows: who can do and explain what, which misunderstanding is the commonest, and what to teach next. A trainee is
 * seen by the last five answers of each kind, so that what was learned counts more than how one began.
 */
public final class Report {

    /** So many of the last answers count. */
    private static final int LAST = 5;

    /** Fewer answers than this of a kind say nothing about what to teach. */
    private static final int ENOUGH = 3;

    private final Results results;
    private final Map<String, List<Attempt>> byTrainee = new TreeMap<>();

    private Report(Results results) {
        this.results = results;
        results.attempts().forEach(attempt -> byTrainee.computeIfAbsent(attempt.trainee(), name -> new ArrayList<>()).add(attempt));
    }

    public static Report of(Results results) {
        return new Report(results);
    }

    public List<String> trainees() {
        return List.copyOf(byTrainee.keySet());
    }

    public int answers() {
        return byTrainee.values().stream().mapToInt(List::size).sum();
    }

    public int answers(String trainee) {
        return byTrainee.getOrDefault(trainee, List.of()).size();
    }

    public List<String> clashes() {
        return results.clashes();
    }

    /** The kinds that anybody has met, in their order. */
    public List<Kind> kinds() {
        Set<Kind> met = new TreeSet<>();
        byTrainee.values().forEach(all -> all.forEach(attempt -> met.add(attempt.label().kind())));
        return List.copyOf(met);
    }

    /** The mean score of the last answers of this kind, 0 to 1; empty when there was none. */
    public Optional<Double> share(String trainee, Kind kind) {
        List<Attempt> all = last(byTrainee.getOrDefault(trainee, List.of()).stream().filter(attempt -> attempt.label().kind() == kind).toList());
        return all.isEmpty() ? Optional.empty() : Optional.of(all.stream().mapToDouble(attempt -> attempt.result().score()).sum() / all.size());
    }

    private static List<Attempt> last(List<Attempt> all) {
        return all.subList(Math.max(0, all.size() - LAST), all.size());
    }

    /** The points that anybody was marked by, in the order in which a change is told. */
    public List<String> points() {
        Set<String> met = new LinkedHashSet<>();
        byTrainee.values().forEach(all -> all.forEach(attempt -> met.addAll(attempt.result().points().keySet())));
        List<String> sorted = new ArrayList<>(Points.all().stream().filter(met::contains).toList());
        met.stream().filter(point -> !Points.all().contains(point)).sorted().forEach(sorted::add);
        return List.copyOf(sorted);
    }

    /** In how many of the last marked answers the point was there, half ones counted half; empty when it was never marked. */
    public Optional<Double> share(String trainee, String point) {
        List<Attempt> all = last(byTrainee.getOrDefault(trainee, List.of()).stream()
                .filter(attempt -> Points.score(List.of(point), attempt.result().points()) > 0 || Points.NO.equals(attempt.result().points().get(point))).toList());
        return all.isEmpty() ? Optional.empty()
                : Optional.of(all.stream().mapToDouble(attempt -> Points.score(List.of(point), attempt.result().points())).sum() / all.size());
    }

    /** A misunderstanding, how many trainees met it, and how often. */
    public record Common(String mistake, int trainees, int times) {}

    /** The misunderstandings: what most trainees share first, then what happened most often. */
    public List<Common> common() {
        Map<String, Map<String, Integer>> met = new TreeMap<>();
        byTrainee.forEach((name, all) -> all.stream().filter(attempt -> !attempt.result().mistake().isEmpty())
                .forEach(attempt -> met.computeIfAbsent(attempt.result().mistake(), mistake -> new LinkedHashMap<>()).merge(name, 1, Integer::sum)));
        List<Common> all = new ArrayList<>();
        met.forEach((mistake, names) -> all.add(new Common(mistake, names.size(), names.values().stream().mapToInt(Integer::intValue).sum())));
        all.sort(Comparator.comparingInt((Common each) -> -each.trainees()).thenComparingInt(each -> -each.times()).thenComparing(Common::mistake));
        return List.copyOf(all);
    }

    /** A kind of exercise about a topic, and how much of it was right. */
    public record Weak(Card card, double share, int answers) {}

    /** What the group has had least luck with, of all that was tried often enough; empty when nothing was, or all is well. */
    public Optional<Weak> weakest() {
        Map<Card, List<Attempt>> byCard = new LinkedHashMap<>();
        byTrainee.values().forEach(all -> all.forEach(attempt -> byCard.computeIfAbsent(attempt.label().card(), card -> new ArrayList<>()).add(attempt)));
        return byCard.entrySet().stream().filter(each -> each.getValue().size() >= ENOUGH).map(each -> weak(each.getKey(), each.getValue()))
                .filter(weak -> weak.share() < Outcome.KNOWN)
                .min(Comparator.comparingDouble(Weak::share).thenComparing(weak -> weak.card().key()));
    }

    private static Weak weak(Card card, List<Attempt> all) {
        return new Weak(card, all.stream().mapToDouble(attempt -> attempt.result().score()).sum() / all.size(), all.size());
    }

    /** On how many machines a nickname has practised. */
    public int machines(String trainee) {
        Set<String> machines = new TreeSet<>();
        byTrainee.getOrDefault(trainee, List.of()).forEach(attempt -> machines.add(attempt.id().substring(0, Math.max(0, attempt.id().lastIndexOf('-')))));
        return machines.size();
    }
}
