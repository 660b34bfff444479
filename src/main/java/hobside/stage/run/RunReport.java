package hobside.stage.run;

import hobside.stage.run.Happening.What;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

/** What came of a run: what was said and what was not, how long it took, what was marked and asked, which cautions were seen to. */
public record RunReport(Run.Head head, boolean finished, Fates fates, Times times, Remarks remarks) {

    /** The cues by what became of them; {@code open} are those that nothing has happened to. */
    public record Fates(Set<String> said, Set<String> skipped, Set<String> dropped, Set<String> already, Set<String> open) {}

    /** Planned against taken, in seconds, for one section or for all. */
    public record Row(String section, int planned, int taken) {

        /** How much longer it took; less than 0 when it was shorter. */
        public int over() {
            return taken - planned;
        }
    }

    /** The sections in the order of the plan, and the whole run, whose clock may have been set by hand. */
    public record Times(List<Row> sections, Row all) {

        public Times {
            sections = List.copyOf(sections);
        }
    }

    /** What was marked (stumbled, too long), noted and asked, as it happened, each with its time; and the cautions. */
    public record Remarks(List<Happening> marks, List<Happening> notes, List<Happening> asked, List<Care> cautions) {

        public Remarks {
            marks = List.copyOf(marks);
            notes = List.copyOf(notes);
            asked = List.copyOf(asked);
            cautions = List.copyOf(cautions);
        }
    }

    /** A caution that was asked about or seen to, and when first; milliseconds since the run began. */
    public record Care(String caution, OptionalLong asked, OptionalLong done) {}

    /** With the sections that the keys of the cues name. */
    public static RunReport of(Run run) {
        return of(run, Sections.none());
    }

    /** With the sections of the talk, where it still has the cue. */
    public static RunReport of(Run run, Talk talk) {
        return of(run, Sections.of(talk));
    }

    private static RunReport of(Run run, Sections sections) {
        Standing end = run.standing();
        return new RunReport(run.head(), end.isOver(), fates(run, end), times(run, end, sections), remarks(run));
    }

    private static Fates fates(Run run, Standing end) {
        Set<String> open = new LinkedHashSet<>(run.head().keys());
        open.removeAll(end.said());
        open.removeAll(end.skipped());
        open.removeAll(end.dropped());
        open.removeAll(end.already());
        return new Fates(end.said(), end.skipped(), end.dropped(), end.already(), open);
    }

    private static Times times(Run run, Standing end, Sections sections) {
        Map<String, long[]> sums = new LinkedHashMap<>();
        Map<String, String> where = sections.of(run.head().plan());
        int all = 0;
        for (Run.Planned planned : run.head().plan()) {
            long[] sum = sums.computeIfAbsent(where.get(planned.cue()), key -> new long[2]);
            sum[0] += planned.seconds();
            all += planned.seconds();
        }
        end.spent().forEach((cue, time) -> sums.get(where.get(cue))[1] += time);
        List<Row> rows = new ArrayList<>();
        sums.forEach((section, sum) -> rows.add(new Row(section, (int) sum[0], seconds(sum[1]))));
        return new Times(rows, new Row("", all, seconds(end.elapsed(last(run)))));
    }

    private static long last(Run run) {
        return run.happenings().stream().mapToLong(Happening::at).max().orElse(0);
    }

    static int seconds(long milliseconds) {
        return (int) Math.round(milliseconds / 1_000.0);
    }

    private static Remarks remarks(Run run) {
        return new Remarks(of(run, What.STUMBLED, What.TOO_LONG), of(run, What.NOTE, What.KEPT), of(run, What.ASKED, What.ASKED), cares(run));
    }

    private static List<Happening> of(Run run, What one, What other) {
        return run.happenings().stream().filter(each -> each.what() == one || each.what() == other).toList();
    }

    private static List<Care> cares(Run run) {
        Map<String, Care> cares = new LinkedHashMap<>();
        for (Happening each : of(run, What.CARE_ASKED, What.CARE_DONE)) {
            Care old = cares.getOrDefault(each.cue(), new Care(each.cue(), OptionalLong.empty(), OptionalLong.empty()));
            boolean asked = each.what() == What.CARE_ASKED;
            cares.put(each.cue(), new Care(each.cue(), asked ? first(old.asked(), each) : old.asked(), asked ? old.done() : first(old.done(), each)));
        }
        return List.copyOf(cares.values());
    }

    private static OptionalLong first(OptionalLong before, Happening now) {
        return before.isPresent() ? before : OptionalLong.of(now.at());
    }
}
