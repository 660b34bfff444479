package hobside.screen.live;

import hobside.screen.Lines;
import hobside.screen.TextWidth;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Planning;
import hobside.stage.run.Standing;
import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What is read of one run when it is over: how long each part took against the plan, what was left out, and what was marked. */
public final class RunPage {

    private static final int COLUMN = 9;

    private final Playing playing;
    private final Standing standing;
    private final int width;
    private final List<String> lines = new ArrayList<>();
    private int start;

    private RunPage(Playing playing, int width) {
        this.playing = playing;
        this.standing = playing.standing();
        this.width = width;
    }

    /** The lines for a page of this width; {@code first} are told before all else. */
    public static List<String> lines(Playing playing, int width, List<String> first) {
        RunPage page = new RunPage(playing, width);
        page.all();
        page.lines.addAll(page.start, first);
        return page.lines;
    }

    private void all() {
        lines.add(playing.bench().demo().dish().name());
        lines.addAll(Lines.wrap(time() + " " + standing.said().size() + " of " + playing.size() + " cues were told.", width));
        lines.add("");
        start = lines.size();
        parts();
        marks("STUMBLED", What.STUMBLED);
        marks("TOO LONG", What.TOO_LONG);
        told("NOTES", happening -> happening.what() == What.NOTE || happening.what() == What.KEPT);
        told("QUESTIONS FROM THE AUDIENCE", happening -> happening.what() == What.ASKED);
        untold();
        cues("LEFT OUT", standing.skipped());
        cues("DROPPED TO END ON TIME", standing.dropped());
        cues("DONE ALREADY", standing.already());
        cares();
    }

    private String time() {
        long taken = standing.elapsed(playing.now());
        return standing.toCome().isEmpty() ? "It took " + clock(taken) + " of " + clock(playing.allowed()) + over(taken - playing.allowed())
                : "Ended early, after " + clock(taken) + " of " + clock(playing.allowed()) + ".";
    }

    /** Cautions that nobody heard stand by name, a line each, the rest that was not reached as a number. */
    private void untold() {
        List<String> open = standing.toCome();
        List<String> unheard = standing.keys().stream().filter(Cue::isCaution).filter(key -> open.contains(key) || standing.skipped().contains(key)).toList();
        if (!unheard.isEmpty()) {
            lines.add("CAUTIONS THAT WERE NOT TOLD");
            unheard.forEach(key -> lines.add("   " + Lines.fit(words(key), width - 3)));
            lines.add("");
        }
        if (!open.isEmpty()) {
            lines.add("NOT REACHED");
            hanging("", open.size() == 1 ? "One cue:" : open.size() + " cues, from:");
            hanging("", words(open.get(0)));
            lines.add("");
        }
    }

    private static String clock(long milliseconds) {
        return Minutes.of(Math.round(milliseconds / 1_000.0) * 1_000);
    }

    private static String over(long by) {
        return Math.abs(by) < 1_000 ? "." : by > 0 ? ", " + clock(by) + " over." : ", " + clock(-by) + " to spare.";
    }

    private void parts() {
        row("PART", "PLANNED", "TAKEN", "");
        Map<String, List<Cue>> parts = new LinkedHashMap<>();
        for (Talk.Section section : playing.sections()) {
            parts.computeIfAbsent(section.heading(), heading -> new ArrayList<>()).addAll(Planning.cues(section));
        }
        parts.forEach(this::part);
        lines.add("");
    }

    /** All pieces of a part that the running order has taken apart. What was not reached has saved no time, so that it says so. */
    private void part(String heading, List<Cue> cues) {
        String planned = clock(cues.stream().mapToLong(cue -> playing.planned(cue.key())).sum());
        if (cues.stream().noneMatch(cue -> standing.spent().containsKey(cue.key()))) {
            String why = cues.stream().allMatch(cue -> standing.toCome().contains(cue.key())) ? "not reached" : "left out";
            lines.add(label(heading) + right(planned) + " ".repeat(2 * COLUMN - why.length()) + why);
            return;
        }
        long reached = cues.stream().filter(cue -> !standing.toCome().contains(cue.key())).mapToLong(cue -> playing.planned(cue.key())).sum();
        long taken = cues.stream().mapToLong(cue -> standing.spent().getOrDefault(cue.key(), 0L)).sum();
        row(heading, planned, clock(taken), difference(taken - reached));
    }

    /** "+0:40" is longer than planned. */
    private static String difference(long by) {
        return Math.abs(by) < 1_000 ? "" : (by > 0 ? "+" : "-") + clock(Math.abs(by));
    }

    private void row(String label, String planned, String taken, String difference) {
        lines.add(label(label) + right(planned) + right(taken) + right(difference));
    }

    private String label(String text) {
        int room = width - 3 * COLUMN;
        return TextWidth.pad(Lines.fit(text, room), room);
    }

    private static String right(String text) {
        return " ".repeat(Math.max(0, COLUMN - text.length())) + text;
    }

    private void cues(String heading, Collection<String> keys) {
        List<String> known = keys.stream().filter(key -> playing.cue(key) != null).toList();
        if (!known.isEmpty()) {
            lines.add(heading);
            known.forEach(key -> hanging("", words(key)));
            lines.add("");
        }
    }

    private String words(String key) {
        Cue cue = playing.cue(key);
        return cue == null ? "a cue that is no longer in the talk" : cue.words();
    }

    /** The cues that bear a mark, the most marked first. */
    private void marks(String heading, What what) {
        List<String> cues = playing.run().happenings().stream().filter(each -> each.what() == what).map(Happening::cue).toList();
        List<String> sorted = cues.stream().distinct().sorted((a, b) -> times(cues, b) - times(cues, a)).toList();
        if (!sorted.isEmpty()) {
            lines.add(heading);
            sorted.forEach(key -> hanging(times(cues, key) == 1 ? "" : times(cues, key) + " times", words(key)));
            lines.add("");
        }
    }

    private static int times(List<String> cues, String key) {
        return (int) cues.stream().filter(key::equals).count();
    }

    private void told(String heading, Predicate<Happening> which) {
        List<Happening> found = playing.run().happenings().stream().filter(which).toList();
        if (!found.isEmpty()) {
            lines.add(heading);
            found.forEach(each -> hanging(clock(each.at()), each.text()));
            lines.add("");
        }
    }

    private void cares() {
        List<Happening> found = playing.run().happenings().stream().filter(each -> each.what() == What.CARE_DONE || each.what() == What.OUT).toList();
        if (!found.isEmpty()) {
            lines.add("CAUTIONS SEEN TO");
            found.forEach(each -> hanging(clock(each.at()), each.what() == What.OUT ? "samples out" : each.text().isEmpty() ? each.cue() : each.text()));
            lines.add("");
        }
    }

    private void hanging(String before, String words) {
        String indent = "   ";
        String first = before.isEmpty() ? indent : indent + before + "  ";
        for (String line : Lines.wrap(words, width - first.length())) {
            lines.add(first + line);
            first = " ".repeat(first.length());
        }
    }
}
