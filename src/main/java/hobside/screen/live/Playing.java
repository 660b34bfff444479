package hobside.screen.live;

import hobside.file.Scripts;
import hobside.ledger.Ledger;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.screen.Wake;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.stage.run.CareClock;
import hobside.stage.run.CatchUp;
import hobside.stage.run.Happening;
import hobside.stage.run.Planning;
import hobside.stage.run.Remainder;
import hobside.stage.run.Run;
import hobside.stage.run.Standing;
import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.talk.Timing;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A talk while it is being run: the bench it was written from, what has happened, and where one stands. The time is always worked out
 * from when the run began, in milliseconds, and never counted up, so that it cannot drift.
 */
public final class Playing {

    /** The cue that tells what a change has brought: from it on the board shows the change. */
    private static final String EFFECT = "/effect";

    private static final long SECOND = 1_000;
    private static final long A_MINUTE = 60_000;
    private static final long AFTER = 5;

    private final Bench bench;
    private final Script script;
    private final Moment moment;
    private final Standing standing;

    /**
     * What has happened, and when it is: milliseconds since the zero of the run.
     *
     * @param zero milliseconds since 1970; differs from the beginning when the clock of the machine was set meanwhile
     */
    private record Moment(Run run, long zero, long now) {}

    /** The talk with its cues and their sections by key; worked out once. */
    private record Script(Talk talk, List<String> keys, Map<String, Cue> cues, Map<String, Talk.Section> sections, CareClock care) {

        static Script of(Bench bench, Run.Head head) {
            Talk talk = Scripts.arranged(bench.demo(), bench.desk().study(), head.plan().stream().map(Run.Planned::cue).toList());
            List<String> keys = new ArrayList<>();
            Map<String, Cue> cues = new HashMap<>();
            Map<String, Talk.Section> sections = new HashMap<>();
            for (Talk.Section section : talk.sections()) {
                for (Cue cue : Planning.cues(section)) {
                    keys.add(cue.key());
                    cues.putIfAbsent(cue.key(), cue);
                    sections.putIfAbsent(cue.key(), section);
                }
            }
            return new Script(talk, List.copyOf(keys), cues, sections, CareClock.of(bench.desk().study().published().cautions(), talk));
        }
    }

    private Playing(Bench bench, Script script, Moment moment, Standing standing) {
        this.bench = bench;
        this.script = script;
        this.moment = moment;
        this.standing = standing;
    }

    /** A run of the bench's talk that goes on from here. */
    static Playing of(Bench bench, Answer.Begun begun) {
        Run run = begun.run();
        Script script = Script.of(bench, run.head());
        long now = run.happenings().stream().mapToLong(Happening::at).max().orElse(0);
        return new Playing(bench, script, new Moment(run, begun.zero(), now), run.standing(script.keys()));
    }

    /** The same after one more thing has happened. */
    public Playing after(Happening happening) {
        long now = Math.max(moment.now(), happening.at());
        return new Playing(bench, script, new Moment(moment.run().with(happening), moment.zero(), now), standing.after(happening));
    }

    /** The same at another moment; a run never goes backwards. */
    public Playing at(Instant instant) {
        long now = Math.max(moment.now(), instant.toEpochMilli() - moment.zero());
        return new Playing(bench, script, new Moment(moment.run(), moment.zero(), now), standing);
    }

    /** The same over a bench that has changed; its talk is written anew, the place kept by the key of its cue. */
    public Playing over(Bench changed) {
        if (changed.demo().equals(bench.demo())) {
            return new Playing(changed, script, moment, standing);
        }
        Script fresh = Script.of(changed, run().head());
        return new Playing(changed, fresh, moment, standing.withTalk(fresh.keys()));
    }

    public Bench bench() {
        return bench;
    }

    public Talk talk() {
        return script.talk();
    }

    /** The parts of the talk of which anything is told. */
    public List<Talk.Section> sections() {
        return script.talk().sections().stream().filter(section -> !Planning.cues(section).isEmpty()).toList();
    }

    public Run run() {
        return moment.run();
    }

    /** What watches over the cautions. */
    public CareClock care() {
        return script.care();
    }

    public Standing standing() {
        return standing;
    }

    /** Milliseconds since the run began. */
    public long now() {
        return moment.now();
    }

    /** The cue one is on; empty after the last. */
    public Optional<Cue> cue() {
        return standing.cue().map(script.cues()::get);
    }

    public Cue cue(String key) {
        return script.cues().get(key);
    }

    public Talk.Section section(Cue cue) {
        return script.sections().get(cue.key());
    }

    /** The cues still to come, this one first. */
    public List<Cue> toCome() {
        return standing.toCome().stream().map(script.cues()::get).toList();
    }

    /** How many cues there are, and the number of the one we are on, from 1. */
    public int size() {
        return script.keys().size();
    }

    public int number() {
        return place() + 1;
    }

    private int place() {
        return standing.cue().map(script.keys()::indexOf).orElse(script.keys().size());
    }

    /** Milliseconds planned for a cue; 0 when it was not in the plan. */
    public long planned(String key) {
        return run().head().plan().stream().filter(planned -> planned.cue().equals(key)).mapToLong(planned -> planned.seconds() * 1_000L).findFirst().orElse(0);
    }

    /** Milliseconds planned for the whole talk. */
    public long planned() {
        return run().head().plan().stream().mapToLong(planned -> planned.seconds() * 1_000L).sum();
    }

    /** Milliseconds that the talk may take: the slot; without one, what was planned. */
    public long allowed() {
        return run().head().slot() > 0 ? run().head().slot() * 60_000L : planned();
    }

    /** Milliseconds left of what the talk may take; less than 0 when it is over. */
    public long left() {
        return allowed() - standing.elapsed(now());
    }

    /** Milliseconds by which the talk will be too long if the rest takes what was planned; less than 0 when it will end in time. */
    public long over() {
        return standing.elapsed(now()) + standing.remaining() - allowed();
    }

    /** Whether it has a slot that it will not keep by a minute and more. */
    public boolean isTooLong() {
        return run().head().slot() > 0 && over() >= A_MINUTE;
    }

    /** What remains of the talk, with the planned times of this run and the pots that must be ready. */
    public List<CatchUp.Remaining> remainder() {
        return Pots.waitedFor(this, Remainder.of(script.talk(), Timing.at(bench.demo().script().pacing()).knowing(Pots.ownSeconds(this)), standing, now()));
    }

    /** A wake at the next full second of the clock, and a little after it, so that it has come for certain. */
    public Wake tick() {
        return new Wake(Duration.ofMillis(SECOND - Math.floorMod(standing.elapsed(now()), SECOND) + AFTER));
    }

    /** How many changes have been told so far: up to the last whose effect has been said, or is being said. */
    public int told() {
        int here = place();
        int told = 0;
        int change = 0;
        for (Talk.Section section : script.talk().sections()) {
            if (section.part() == Talk.Part.CHANGE) {
                change++;
                int effect = script.keys().indexOf(effect(section));
                told = effect >= 0 && effect <= here ? change : told;
            }
        }
        return Math.min(told, steps().size());
    }

    /** The key of the cue that tells its effect, or of its last one where that was left out; empty when it has none. */
    private static String effect(Talk.Section section) {
        for (Cue cue : section.cues()) {
            if (cue.key().endsWith(EFFECT)) {
                return cue.key();
            }
        }
        return section.cues().isEmpty() ? "" : section.cues().get(section.cues().size() - 1).key();
    }

    private List<Step> steps() {
        return ledger().steps().stream().filter(Step::counts).toList();
    }

    public Ledger ledger() {
        return bench.desk().ledger();
    }

    /** The totals after the changes told so far. */
    public Totals board() {
        return told() == 0 ? ledger().start() : steps().get(told() - 1).after();
    }
}
