package hobside.stage.run;

import hobside.stage.run.Happening.What;
import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Several runs of one talk side by side, the oldest first, and what to shorten first. */
public record Compared(List<Run.Head> runs, List<Row> rows, List<Shorten> shortenFirst) {

    /** Below these many seconds over its plan, or between its shortest and longest time, a cue is let alone. Ours, no source. */
    private static final int WORTH_SAYING = 5;
    private static final int UNEVEN = 10;

    /** What a mark counts for against seconds over the plan. Ours, no source. */
    private static final int TOO_LONG_WORTH = 10;
    private static final int STUMBLE_WORTH = 5;

    /**
     * A section in all runs, in seconds.
     *
     * @param planned as the newest run had it planned
     * @param taken for each run; empty where the section was not reached
     */
    public record Row(String section, String heading, int planned, List<OptionalInt> taken) {

        public Row {
            taken = List.copyOf(taken);
        }

        /** From the shortest to the longest time. */
        public int spread() {
            int[] known = taken.stream().filter(OptionalInt::isPresent).mapToInt(OptionalInt::getAsInt).sorted().toArray();
            return known.length == 0 ? 0 : known[known.length - 1] - known[0];
        }
    }

    /** A cue worth shortening, and why. */
    public record Shorten(String cue, boolean must, Reasons reasons) {}

    /**
     * What there is against a cue as it is.
     *
     * @param over seconds that it takes longer than planned
     * @param tooLong how often it was marked as too long
     * @param stumbled how often one stumbled there
     * @param spread seconds from its shortest to its longest time
     */
    public record Reasons(int over, int tooLong, int stumbled, int spread) {

        private int weight() {
            return Math.max(0, over) + tooLong * TOO_LONG_WORTH + stumbled * STUMBLE_WORTH + (spread >= UNEVEN ? spread / 2 : 0);
        }

        private boolean areAny() {
            return over >= WORTH_SAYING || tooLong > 0 || stumbled > 0 || spread >= UNEVEN;
        }

        /** "12 s over plan, marked too long twice". */
        public String said() {
            List<String> all = new ArrayList<>();
            if (over >= WORTH_SAYING) {
                all.add(over + " s over plan");
            }
            if (tooLong > 0) {
                all.add("marked too long " + times(tooLong));
            }
            if (stumbled > 0) {
                all.add("stumbled " + times(stumbled));
            }
            if (spread >= UNEVEN) {
                all.add(spread + " s between its shortest and longest");
            }
            return String.join(", ", all);
        }

        private static String times(int count) {
            return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
        }
    }

    public Compared {
        runs = List.copyOf(runs);
        rows = List.copyOf(rows);
        shortenFirst = List.copyOf(shortenFirst);
    }

    public static Compared of(List<Run> runs, Talk talk) {
        List<Run> ordered = new ArrayList<>(runs);
        ordered.sort(Comparator.comparingLong(run -> run.head().begunAt()));
        Map<String, Integer> planned = new HashMap<>();
        ordered.forEach(run -> run.head().plan().forEach(each -> planned.put(each.cue(), each.seconds())));
        return new Compared(ordered.stream().map(Run::head).toList(), rows(ordered, talk, planned), shortenFirst(ordered, talk, planned));
    }

    private static List<Row> rows(List<Run> runs, Talk talk, Map<String, Integer> planned) {
        List<Standing> ends = runs.stream().map(Run::standing).toList();
        List<Row> rows = new ArrayList<>();
        for (Talk.Section section : talk.sections()) {
            List<String> keys = Planning.cues(section).stream().map(Cue::key).toList();
            if (!keys.isEmpty()) {
                int plan = keys.stream().mapToInt(key -> planned.getOrDefault(key, 0)).sum();
                rows.add(new Row(section.key(), section.heading(), plan, ends.stream().map(end -> taken(keys, end)).toList()));
            }
        }
        return rows;
    }

    private static OptionalInt taken(List<String> keys, Standing end) {
        List<Long> spent = keys.stream().filter(end.spent()::containsKey).map(end.spent()::get).toList();
        return spent.isEmpty() ? OptionalInt.empty() : OptionalInt.of(RunReport.seconds(spent.stream().mapToLong(Long::longValue).sum()));
    }

    /** Cues that may be dropped before those that must be said; within each the weightiest reasons first. Cautions are never among them. */
    private static List<Shorten> shortenFirst(List<Run> runs, Talk talk, Map<String, Integer> planned) {
        Measured measured = Measured.of(runs);
        return talk.sections().stream().flatMap(section -> Planning.cues(section).stream()).filter(cue -> !cue.isCaution())
                .map(cue -> new Shorten(cue.key(), cue.details().must(), reasons(cue, runs, measured, planned)))
                .filter(each -> each.reasons().areAny())
                .sorted(Comparator.comparing(Shorten::must).thenComparing(each -> -each.reasons().weight())).toList();
    }

    private static Reasons reasons(Cue cue, List<Run> runs, Measured measured, Map<String, Integer> planned) {
        Optional<Measured.Taken> taken = measured.of(cue.key(), Wording.of(cue));
        int over = taken.map(each -> each.median() - planned.getOrDefault(cue.key(), 0)).orElse(0);
        int spread = taken.map(each -> each.high() - each.low()).orElse(0);
        return new Reasons(over, count(runs, What.TOO_LONG, cue), count(runs, What.STUMBLED, cue), spread);
    }

    private static int count(List<Run> runs, What what, Cue cue) {
        return (int) runs.stream().flatMap(run -> run.happenings().stream()).filter(each -> each.what() == what && each.cue().equals(cue.key())).count();
    }
}
