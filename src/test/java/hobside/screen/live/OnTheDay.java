package hobside.screen.live;

import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Runs;
import hobside.file.Study;
import hobside.screen.Effect;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.Wake;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.DiskWork;
import hobside.screen.desk.Work;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;

/** A presenter with a real kitchen folder and a clock that the test moves: keys, seconds, and the end of the program at any moment. */
public final class OnTheDay {

    private static final String DEMO = "scripts/lighter-rib-pot.demo.json";

    private final Kitchen kitchen;
    private final Study study;
    private long now = Instant.parse("2026-11-02T18:00:00Z").toEpochMilli();
    private VirtualStage stage;
    private static final long NEVER = Long.MAX_VALUE;

    private int seen;
    private long due = NEVER;
    private int wakes;

    private final class Clock implements InstantSource {
        @Override
        public Instant instant() {
            return Instant.ofEpochMilli(now);
        }
    }

    public OnTheDay(Path folder) {
        this.kitchen = Kitchen.at(folder);
        this.study = Study.of(Library.load(kitchen));
    }

    /** On the Bench with a finished demo, in a program that has just been started; what was left before is on the disk only. */
    public OnTheDay start(Size size) {
        DiskWork disk = new DiskWork(kitchen, study, new Clock());
        return on(Next.to(bench(disk)), size, disk);
    }

    /** The program is started while a talk is not over. */
    public OnTheDay startIntoTheTalk() {
        DiskWork disk = new DiskWork(kitchen, study, new Clock());
        return on(Starting.resuming(bench(disk), disk.carryOut(new Work.Resume())), Size.HOME, disk);
    }

    /** The talk that a start would find not over. */
    public Optional<Runs.Unfinished> unfinished() {
        return kitchen.runs().unfinished(now);
    }

    /** The Bench as a start shows it that does not go straight on with the talk. */
    public OnTheDay startBesideTheTalk() {
        DiskWork disk = new DiskWork(kitchen, study, new Clock());
        return on(Next.to(Starting.reminding(bench(disk), unfinished().orElseThrow())), Size.HOME, disk);
    }

    private Bench bench(DiskWork disk) {
        Demo demo = kitchen.last().map(name -> kitchen.open(name, study.shelf()).value().orElseThrow().demo())
                .orElseGet(() -> kitchen.demo(DEMO, study.shelf()).value().orElseThrow());
        Desk.Kept kept = kitchen.last().map(name -> new Desk.Kept(name, "kept")).orElse(Desk.Kept.NOT_YET);
        kitchen.last().ifPresent(name -> disk.opened(new Answer.Choice(Answer.Kind.DEMO, name, name)));
        return Bench.of(Desk.of(study, demo, kept), "");
    }

    private OnTheDay on(Next first, Size size, DiskWork disk) {
        stage = VirtualStage.with(first, size, disk);
        seen = 0;
        due = NEVER;
        return heard();
    }

    public OnTheDay start() {
        return start(Size.HOME);
    }

    public OnTheDay play(String keys) {
        stage.play(keys);
        return heard();
    }

    public OnTheDay type(String text) {
        stage.type(text);
        return heard();
    }

    /** So many seconds go by, with the wakes that were asked for. */
    public OnTheDay later(double seconds) {
        long end = now + Math.round(seconds * 1_000);
        while (due <= end) {
            now = due;
            due = NEVER;
            wakes++;
            stage.tell(new Message.Woken(Instant.ofEpochMilli(now)));
            heard();
        }
        now = end;
        return this;
    }

    /** A later wake takes the place of an earlier one. */
    private OnTheDay heard() {
        List<Effect> all = stage.carriedOut();
        for (Effect effect : all.subList(seen, all.size())) {
            if (effect instanceof Wake wake) {
                due = now + wake.after().toMillis();
            }
        }
        seen = all.size();
        return this;
    }

    /** How often the screen was woken up so far. */
    public int wakes() {
        return wakes;
    }

    public VirtualStage stage() {
        return stage;
    }

    public String text() {
        return stage.frame().text();
    }

    /** All runs as they stand in the journals on the disk, the oldest first. */
    public List<Run> runs() {
        return kitchen.runs().of(kitchen.last().orElseThrow()).runs();
    }

    /** How many files of the kitchen's scripts end like this. */
    public int filesEnding(String ending) {
        String[] names = kitchen.folder().resolve("scripts").toFile().list((folder, name) -> name.endsWith(ending));
        return names == null ? 0 : names.length;
    }

    /** The run that was begun last, as it stands on the disk. */
    public Run run() {
        return runs().get(runs().size() - 1);
    }

    /** The state of the talk on the screen one is on. */
    public Playing playing() {
        return ((Onstage) stage.screen()).playing();
    }

    public boolean shows(String words) {
        return text().contains(words);
    }
}
