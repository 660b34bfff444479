package hobside.stage;

import hobside.stage.order.Effort;
import hobside.stage.order.Outcome;
import hobside.talk.Setting;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Chooses what is done ahead: the fewest steps with which the demonstration fits the slot and no wait is silent. All sets of one
 * step fewer are ruled out first, by what no timetable can beat or by the scheduler itself.
 */
final class Fitting {

    /** So many timetables are tried; after that the best so far is taken, and it says that it is not proven. */
    private static final int TRIES = 600;

    /** So many sets of one size are looked at. */
    private static final int MOST = 4_000;

    private final Scene scene;
    private final Effort effort;
    private final Fillers fillers;
    private int tries;
    private boolean sure = true;

    /** A set of ways with its timetable, if there is one. */
    private record Tried(List<Way> ways, List<Task> tasks, Outcome outcome, List<Slotted> slots, List<Silence> silences) {

        boolean isFound() {
            return outcome instanceof Outcome.Found;
        }

        int seconds() {
            return outcome instanceof Outcome.Found found ? found.makespan() : Integer.MAX_VALUE;
        }

        int silent() {
            return silences.stream().filter(Silence::isLong).mapToInt(Silence::left).sum();
        }
    }

    /** Work of the presenter that is too long without a word, and that nobody wished to be shown whole. */
    private int quiet(Tried tried) {
        return Quiet.of(tried.slots()).stream().filter(slot -> scene.wanted(slot.task().key()).shown() == Setting.Shown.OPEN).mapToInt(slot -> slot.task().seconds()).sum();
    }

    Fitting(Scene scene, Effort effort) {
        this.scene = scene;
        this.effort = effort;
        this.fillers = Fillers.of(scene);
    }

    RunningOrder best() {
        List<Integer> open = open();
        Optional<Tried> best = Optional.empty();
        for (int size = 0; size <= open.size() && tries < TRIES; size++) {
            for (List<Way> ways : ordered(open, size)) {
                Optional<Tried> tried = tries < TRIES ? tried(ways) : Optional.empty();
                if (tried.isPresent() && isAccepted(tried.get())) {
                    return made(tried.get());
                }
                best = better(best, tried);
            }
        }
        return made(best.orElseGet(() -> solved(all(open), Tasks.of(scene, all(open)))));
    }

    /** The steps about which nothing was said by hand. What is served is shown, but for its waiting; a night in the cold never is, unless it is wished. */
    private List<Integer> open() {
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < scene.steps().size(); i++) {
            Cooking.Stepped step = scene.steps().get(i);
            boolean begins = !step.serves() || step.cooksSeconds() > 0;
            if (shown(i) == Setting.Shown.OPEN && begins && !step.key().equals(Cooking.CHILL)) {
                open.add(i);
            }
        }
        return open;
    }

    private Setting.Shown shown(int index) {
        return scene.wanted(scene.steps().get(index).key()).shown();
    }

    private Way usual(int index) {
        return switch (shown(index)) {
            case OPEN -> scene.steps().get(index).key().equals(Cooking.CHILL) ? Way.AHEAD : Way.WHOLE;
            case WHOLE -> Way.WHOLE;
            case BEGUN -> Way.BEGUN;
            case AHEAD -> Way.AHEAD;
        };
    }

    /**
     * All sets of this many steps, each step begun on stage where it can be or not shown: the fewest pots brought in first, then what
     * shows most, then the least work ahead. A step that is too long without a word is in every set.
     */
    private List<List<Way>> ordered(List<Integer> open, int size) {
        List<Integer> quiet = open.stream().filter(this::isQuiet).toList();
        List<Integer> free = open.stream().filter(index -> !quiet.contains(index)).toList();
        List<List<Way>> all = new ArrayList<>();
        if (size >= quiet.size()) {
            choose(free, size, 0, new ArrayList<>(quiet), all);
        }
        List<Ranked> ranked = new ArrayList<>();
        all.forEach(ways -> ranked.add(new Ranked(ways, Ahead.swaps(scene.steps(), ways).size(), seen(ways), Ahead.minutes(scene.steps(), ways))));
        ranked.sort(Comparator.comparingInt(Ranked::swaps).thenComparing(Comparator.comparingInt(Ranked::seen).reversed()).thenComparingInt(Ranked::minutes));
        return ranked.stream().map(Ranked::ways).toList();
    }

    private record Ranked(List<Way> ways, int swaps, int seen, int minutes) {}

    /** Whether the presenter would work on it too long without a word, whatever the order. */
    private boolean isQuiet(int index) {
        Cooking.Stepped step = scene.steps().get(index);
        return !scene.isHelped(step) && !scene.wanted(step.key()).talkedOver() && scene.handsOf(step) > Quiet.LONGEST;
    }

    /** Seconds of the cook's work that people see. */
    private int seen(List<Way> ways) {
        int seen = 0;
        for (int i = 0; i < ways.size(); i++) {
            seen += ways.get(i) == Way.AHEAD ? 0 : scene.handsOf(scene.steps().get(i));
        }
        return seen;
    }

    private void choose(List<Integer> open, int size, int from, List<Integer> chosen, List<List<Way>> all) {
        if (chosen.size() == size) {
            waysOf(chosen, new ArrayList<>(), all);
            return;
        }
        for (int i = from; i < open.size() && all.size() < MOST; i++) {
            chosen.add(open.get(i));
            choose(open, size, i + 1, chosen, all);
            chosen.remove(chosen.size() - 1);
        }
    }

    /** All ways with these steps not whole: each step in turn, begun on stage where a pot that is made there has come to it. */
    private void waysOf(List<Integer> off, List<Way> ways, List<List<Way>> all) {
        int index = ways.size();
        if (index == scene.steps().size()) {
            all.add(List.copyOf(ways));
            return;
        }
        for (Way way : off.contains(index) ? offWays(index, ways) : List.of(usual(index))) {
            ways.add(way);
            waysOf(off, ways, all);
            ways.remove(index);
        }
    }

    private List<Way> offWays(int index, List<Way> ways) {
        Cooking.Stepped step = scene.steps().get(index);
        boolean live = !step.prepares() && step.after().stream().allMatch(before -> ways.get(before) == Way.WHOLE || scene.steps().get(before).prepares());
        if (step.serves()) {
            return List.of(Way.BEGUN);
        }
        return live && step.cooksSeconds() > 0 && !isQuiet(index) ? List.of(Way.BEGUN, Way.AHEAD) : List.of(Way.AHEAD);
    }

    /** Every step that may be is done ahead. */
    private List<Way> all(List<Integer> open) {
        List<Way> ways = new ArrayList<>();
        for (int i = 0; i < scene.steps().size(); i++) {
            ways.add(!open.contains(i) ? usual(i) : scene.steps().get(i).serves() ? Way.BEGUN : Way.AHEAD);
        }
        return ways;
    }

    private Optional<Tried> tried(List<Way> ways) {
        List<Task> tasks = Tasks.of(scene, ways);
        LongestPath path = new LongestPath(tasks);
        boolean late = scene.slotSeconds() > 0 && path.bound() > scene.slotSeconds();
        return late || isSilent(tasks, path) || isQuiet(tasks) ? Optional.empty() : Optional.of(solved(ways, tasks));
    }

    /** Every silence ends when something is over that the presenter does not do, so there cannot be more of them than such tasks. */
    private boolean isSilent(List<Task> tasks, LongestPath path) {
        long unseen = tasks.stream().filter(task -> !task.isSeen() || task.ties().window().earliest() > 0).count();
        return path.bound() - path.seen() - fillers.seconds() > (long) Silence.OPEN * unseen;
    }

    private boolean isQuiet(List<Task> tasks) {
        return tasks.stream().anyMatch(task -> Quiet.isUnderAnyOrder(task) && scene.wanted(task.key()).shown() == Setting.Shown.OPEN);
    }

    private Tried solved(List<Way> ways, List<Task> tasks) {
        tries++;
        Timetable table = new Timetable(tasks, scene.hall());
        if (!table.homeless().isEmpty()) {
            return new Tried(ways, tasks, new Outcome.Unknown(0, 0), List.of(), List.of());
        }
        Outcome outcome = table.shortest(effort);
        if (outcome instanceof Outcome.Found found) {
            sure &= found.isProven();
            List<Slotted> slots = table.slotted(found.starts());
            return new Tried(ways, tasks, outcome, slots, fillers.fill(Silence.of(slots)));
        }
        return new Tried(ways, tasks, outcome, List.of(), List.of());
    }

    private boolean isAccepted(Tried tried) {
        return tried.isFound() && tried.silent() + quiet(tried) == 0 && (scene.slotSeconds() == 0 || tried.seconds() <= scene.slotSeconds());
    }

    /** What fits at all comes first, then what is less silent. */
    private Optional<Tried> better(Optional<Tried> best, Optional<Tried> tried) {
        if (tried.isEmpty() || !tried.get().isFound()) {
            return best;
        }
        boolean better = best.isEmpty() || over(tried.get()) < over(best.get())
                || over(tried.get()) == over(best.get()) && silent(tried.get()) < silent(best.get());
        return better ? tried : best;
    }

    private int silent(Tried tried) {
        return tried.silent() + quiet(tried);
    }

    private int over(Tried tried) {
        return scene.slotSeconds() == 0 ? 0 : Math.max(0, tried.seconds() - scene.slotSeconds());
    }

    private RunningOrder made(Tried tried) {
        int bound = tried.outcome() instanceof Outcome.Found found ? found.bound() : 0;
        RunningOrder.Proof proof = new RunningOrder.Proof(tried.isFound() ? tried.seconds() : 0, bound, sure && tries < TRIES);
        List<Hindrance> hindrances = new Hindrances(scene, tried.tasks()).of(tried.outcome(), tried.slots(), tried.silences());
        List<RunningOrder.Line> lines = Lines.of(fillers, tried.slots(), tried.silences());
        Talk told = Told.arranged(scene.talk(), fillers.blocks(), lines.stream().map(RunningOrder.Line::cue).toList());
        return new RunningOrder(tried.slots(), proof, Ahead.of(scene, tried.ways()), tried.silences(),
                new RunningOrder.Outlook(scene.slotSeconds(), hindrances, tried.ways()), new RunningOrder.Telling(told, lines, Pot.of(tried.slots())));
    }
}
