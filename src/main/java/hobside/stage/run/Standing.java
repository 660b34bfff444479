package hobside.stage.run;

import hobside.talk.Cue;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Where one stands in a run: the cue one is on, the time taken, and what has become of the cues so far. Times are milliseconds.
 *
 * <p>It is worked out by replaying what happened. What does not fit – a cue that the talk no longer has, a cue done twice, a
 * word without sense – is left aside and counted, so that every journal can be replayed. A time earlier than the one before
 * it counts as the one before it.
 */
public final class Standing {

    /** More than a day is no time for a talk. */
    private static final long LONGEST = 24L * 60 * 60 * 1_000;

    private final Ground ground;
    private final int place;
    private final Marks marks;
    private final Clocks clocks;
    private final boolean over;
    private final int ignored;

    /** The clock of the whole run, the one of the cue one is on, and the time of what happened last. */
    private record Clocks(RunClock whole, RunClock cue, long last) {

        Clocks pausing(long at, boolean yes) {
            return new Clocks(whole.pausing(at, yes), cue.pausing(at, yes), last);
        }

        Clocks set(long at, long to) {
            return new Clocks(whole.set(at, to), cue, last);
        }

        Clocks onNewCue(long at) {
            return new Clocks(whole, cue.set(at, 0), last);
        }

        Clocks seen(long at) {
            return new Clocks(whole, cue, at);
        }
    }

    private Standing(Ground ground, int place, Marks marks, Clocks clocks, boolean over, int ignored) {
        this.ground = ground;
        this.place = place;
        this.marks = marks;
        this.clocks = clocks;
        this.over = over;
        this.ignored = ignored;
    }

    /** At the first cue, before anything has happened. */
    public static Standing at(Run.Head head, List<String> keys) {
        RunClock clock = RunClock.started(!head.isLive(), 0);
        return new Standing(new Ground(head, keys), 0, Marks.NONE, new Clocks(clock, clock, 0), false, 0);
    }

    private Standing with(Marks other) {
        return new Standing(ground, place, other, clocks, over, ignored);
    }

    private Standing with(Clocks other) {
        return new Standing(ground, place, marks, other, over, ignored);
    }

    /** The standing after one more thing has happened. */
    public Standing after(Happening happening) {
        Happening ordered = happening.at(Math.max(happening.at(), clocks.last()));
        boolean late = over && !ordered.what().isRemark();
        Optional<Standing> next = late ? Optional.empty() : replayed(ordered);
        return next.isPresent() ? next.get().with(next.get().clocks.seen(ordered.at()))
                : new Standing(ground, place, marks, clocks.seen(ordered.at()), over, ignored + 1);
    }

    /** Empty when it does not fit. */
    private Optional<Standing> replayed(Happening now) {
        return switch (now.what()) {
            case ON -> done(now, Marks.Fate.SAID);
            case SKIP -> done(now, Marks.Fate.SKIPPED);
            case ALREADY -> already(now);
            case BACK -> back(now);
            case JUMP -> ground.place(now.cue()) < 0 ? Optional.empty() : Optional.of(returned(ground.place(now.cue()), now.at()));
            case PAUSE -> isPaused() ? Optional.empty() : Optional.of(with(clocks.pausing(now.at(), true)));
            case GO_ON -> isPaused() ? Optional.of(with(clocks.pausing(now.at(), false))) : Optional.empty();
            case DROPPED -> dropped(now);
            case TAKEN_BACK -> takenBack(now);
            case CLOCK -> milliseconds(now.text()).isEmpty() ? Optional.empty()
                    : Optional.of(with(clocks.set(now.at(), milliseconds(now.text()).getAsLong())));
            case OVER -> Optional.of(over(now.at()));
            case RESUMED, STUMBLED, TOO_LONG, NOTE, KEPT, ASKED, CARE_ASKED, CARE_DONE, OUT -> Optional.of(this);
        };
    }

    /**
     * A cue is done with. One further on takes the place along: what stands between has come into the talk later. One that
     * lies behind is noted and leaves the place alone.
     */
    private Optional<Standing> done(Happening now, Marks.Fate fate) {
        int done = now.cue().isEmpty() ? place : ground.place(now.cue());
        if (done < 0 || done >= ground.size()) {
            return Optional.empty();
        }
        String key = ground.key(done);
        if (done < place) {
            return isOpen(key) ? Optional.of(with(marks.with(key, fate))) : Optional.empty();
        }
        Standing left = left(now.at());
        return Optional.of(left.with(left.marks.with(key, fate)).onward(done + 1));
    }

    private boolean isOpen(String key) {
        return !marks.said().contains(key) && !marks.skipped().contains(key) && !marks.isPassedBy(key);
    }

    private Optional<Standing> already(Happening now) {
        int done = now.cue().isEmpty() ? place : ground.place(now.cue());
        if (done < 0 || done >= ground.size()) {
            return Optional.empty();
        }
        return Optional.of(passingBy(Set.of(ground.key(done)), Marks.Fate.ALREADY, now.at()));
    }

    /** Cues are passed by from now on; when the one we are on is among them, we go on. */
    private Standing passingBy(Collection<String> keys, Marks.Fate fate, long at) {
        boolean here = place < ground.size() && keys.contains(ground.key(place));
        Standing from = here ? left(at) : this;
        Marks more = from.marks;
        for (String key : keys) {
            more = more.with(key, fate);
        }
        return here ? from.with(more).onward(place + 1) : from.with(more);
    }

    private Optional<Standing> back(Happening now) {
        int named = ground.place(now.cue());
        boolean target = named >= 0 && named < place;
        int to = target ? named : before(place);
        return to < 0 ? Optional.empty() : Optional.of(returned(to, now.at()));
    }

    /** The nearest place before this one that was not passed by; -1 when there is none. */
    private int before(int from) {
        int to = Math.min(from, ground.size()) - 1;
        while (to >= 0 && marks.isPassedBy(ground.key(to))) {
            to--;
        }
        return to;
    }

    /** At another place, whose cue is open again. */
    private Standing returned(int to, long at) {
        Standing left = left(at);
        return new Standing(ground, to, left.marks.with(ground.key(to), Marks.Fate.OPEN), left.clocks, over, ignored);
    }

    private Optional<Standing> dropped(Happening now) {
        List<String> keys = now.keys().stream().filter(key -> ground.place(key) >= 0 && !Cue.isCaution(key)).toList();
        return keys.isEmpty() ? Optional.empty() : Optional.of(passingBy(keys, Marks.Fate.DROPPED, now.at()));
    }

    private Optional<Standing> takenBack(Happening now) {
        List<String> named = now.keys().isEmpty() ? List.copyOf(marks.dropped()) : now.keys();
        Marks fewer = marks;
        for (String key : named) {
            fewer = marks.dropped().contains(key) ? fewer.with(key, Marks.Fate.OPEN) : fewer;
        }
        return fewer == marks ? Optional.empty() : Optional.of(with(fewer));
    }

    private Standing over(long at) {
        Standing left = left(at);
        Clocks stopped = new Clocks(new RunClock(true, clocks.whole().read(at), at, true), new RunClock(true, 0, at, true), at);
        return new Standing(ground, place, left.marks, stopped, true, ignored);
    }

    /** The time on this cue is written down, and the clock of the next begins. */
    private Standing left(long at) {
        return new Standing(ground, place, spentHere(marks, at), clocks.onNewCue(at), over, ignored);
    }

    private Marks spentHere(Marks to, long at) {
        return place < ground.size() ? to.spending(ground.key(place), clocks.cue().read(at)) : to;
    }

    /** At the first place from here on that is not passed by. */
    private Standing onward(int from) {
        int to = from;
        while (to < ground.size() && marks.isPassedBy(ground.key(to))) {
            to++;
        }
        return new Standing(ground, to, marks, clocks, over, ignored);
    }

    private static OptionalLong milliseconds(String text) {
        try {
            long value = Long.parseLong(text);
            return value >= 0 && value <= LONGEST ? OptionalLong.of(value) : OptionalLong.empty();
        } catch (NumberFormatException noNumber) {
            return OptionalLong.empty();
        }
    }

    /**
     * The same standing in a talk that was written anew. The place is kept by the key of its cue; if that is gone, it is the
     * next by the old order that is still there, else the end. The time on the cue runs on when the cue is the same.
     */
    public Standing withTalk(List<String> keys) {
        return with(new Ground(ground.head(), keys));
    }

    /** The same with new figures for the plan too, as after a what-if was kept. */
    public Standing withTalk(List<String> keys, List<Run.Planned> plan) {
        Run.Head head = ground.head();
        return with(new Ground(new Run.Head(head.kind(), head.demo(), head.begunAt(), head.slot(), plan), keys));
    }

    private Standing with(Ground other) {
        int old = place;
        while (old < ground.size() && other.place(ground.key(old)) < 0) {
            old++;
        }
        int to = old < ground.size() ? other.place(ground.key(old)) : other.size();
        Standing there = new Standing(other, to, marks, old == place ? clocks : clocks.onNewCue(clocks.last()), over, ignored);
        return there.onward(to);
    }

    /** The cue one is on; empty after the last. */
    public Optional<String> cue() {
        return place < ground.size() ? Optional.of(ground.key(place)) : Optional.empty();
    }

    /** The cue that comes next, dropped ones and those done already passed by. */
    public Optional<String> next() {
        return onward(Math.min(place + 1, ground.size())).cue();
    }

    /** The cue that BACK leads to. */
    public Optional<String> previous() {
        int to = before(place);
        return to < 0 ? Optional.empty() : Optional.of(ground.key(to));
    }

    /** Time taken at this moment: in a rehearsal without pauses, live by the clock of the hall; as set by hand if it was. */
    public long elapsed(long at) {
        return clocks.whole().read(at);
    }

    /** Time on this cue in this visit, pauses as in {@link #elapsed}. */
    public long onCue(long at) {
        return clocks.cue().read(at);
    }

    public boolean isPaused() {
        return clocks.whole().paused() && !over;
    }

    public boolean isOver() {
        return over;
    }

    /** Time spent on each cue in the visits that have ended, all visits added up. */
    public Map<String, Long> spent() {
        return marks.spent();
    }

    public Set<String> said() {
        return marks.said();
    }

    public Set<String> skipped() {
        return marks.skipped();
    }

    public Set<String> dropped() {
        return marks.dropped();
    }

    public Set<String> already() {
        return marks.already();
    }

    /** The keys of the talk in their order. */
    public List<String> keys() {
        return ground.keys();
    }

    /** The cues that are still to come, this one first. */
    public List<String> toCome() {
        return ground.keys().subList(Math.min(place, ground.size()), ground.size()).stream().filter(key -> !marks.isPassedBy(key)).toList();
    }

    /** What was planned for this cue and for those to come that are neither dropped nor done already. */
    public long remaining() {
        return toCome().stream().mapToLong(ground::planned).sum();
    }

    /** What the plan's clock shows at this place: the whole plan without what remains; so what is dropped counts as gained at once. */
    public long plannedSoFar() {
        return ground.keys().stream().mapToLong(ground::planned).sum() - remaining();
    }

    /** How far one is behind the plan; less than 0 when ahead. Time on this cue only counts once it is over its own plan. */
    public long behind(long at) {
        long here = cue().isPresent() ? Math.min(onCue(at), ground.planned(cue().get())) : 0;
        return elapsed(at) - plannedSoFar() - here;
    }

    /** What is left of the slot; less than 0 when it is over, empty when no slot was given. */
    public OptionalLong slotLeft(long at) {
        int slot = ground.head().slot();
        return slot == 0 ? OptionalLong.empty() : OptionalLong.of(slot * 60_000L - elapsed(at));
    }

    public long ahead(long at) {
        return -behind(at);
    }

    /** How many of the things that happened did not fit. */
    public int ignored() {
        return ignored;
    }
}
