package hobside.screen;

import hobside.talk.Demo;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Study;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import hobside.screen.desk.DiskWork;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;

/** A visit that works on a real kitchen folder, with the clock standing at noon of a made-up day. */
public final class Evening {

    private final Kitchen kitchen;

    public Evening(Path folder) {
        this.kitchen = Kitchen.at(folder);
    }

    /** On the Bench with a bundled dish. */
    public VirtualStage at(String dish, Size size) {
        Study study = Study.of(Library.load(kitchen));
        Bench bench = Bench.of(Desk.of(study, Kitchen.bundled(dish, study.shelf()), Desk.Kept.NOT_YET), "");
        DiskWork disk = new DiskWork(kitchen, study, InstantSource.fixed(Instant.parse("2026-11-02T12:00:00Z")));
        return VirtualStage.with(Next.to(bench), size, disk);
    }

    /** What a new start would find. */
    public Library library() {
        return Library.load(kitchen);
    }

    public Demo saved(String name) {
        return kitchen.open(name, library().shelf()).value().orElseThrow().demo();
    }
}
