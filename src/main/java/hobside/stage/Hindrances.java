package hobside.stage;

import hobside.dish.Station;
import hobside.stage.order.Outcome;
import hobside.stage.order.Why;
import java.util.ArrayList;
import java.util.List;

/** Says what stands in the way, once everything that may be has been done ahead. */
final class Hindrances {

    private final Scene scene;
    private final List<Task> tasks;

    Hindrances(Scene scene, List<Task> tasks) {
        this.scene = scene;
        this.tasks = tasks;
    }

    List<Hindrance> of(Outcome outcome, List<Slotted> slots, List<Silence> silences) {
        List<Hindrance> all = new ArrayList<>();
        homeless(Station.HOB, Hindrance.Kind.NO_HOB, scene.hall().hobs(), all);
        homeless(Station.OVEN, Hindrance.Kind.NO_OVEN, scene.hall().ovens(), all);
        if (all.isEmpty() && outcome instanceof Outcome.Found found) {
            slot(found, all);
            silences.stream().filter(Silence::isLong).forEach(silence -> all.add(
                    new Hindrance(Hindrance.Kind.SILENT, List.of(), silence.left(), silence.until() - silence.left())));
            Quiet.of(slots).forEach(slot -> all.add(
                    new Hindrance(Hindrance.Kind.QUIET, List.of(slot.task().label()), slot.task().seconds(), slot.start())));
        } else if (all.isEmpty()) {
            all.add(outcome instanceof Outcome.Impossible impossible ? hours(impossible.why())
                    : new Hindrance(Hindrance.Kind.HOURS, List.of(), 0, 0));
        }
        return all;
    }

    private void homeless(Station station, Hindrance.Kind kind, int there, List<Hindrance> all) {
        List<String> without = tasks.stream().filter(task -> task.load().on() == station).map(Task::label).distinct().toList();
        if (there == 0 && !without.isEmpty()) {
            all.add(new Hindrance(kind, without, 0, 0));
        }
    }

    /** The presenter's own work where that alone is too long; else the chain of tasks; else that they crowd each other. */
    private void slot(Outcome.Found found, List<Hindrance> all) {
        int slot = scene.slotSeconds();
        if (slot == 0 || found.makespan() <= slot) {
            return;
        }
        LongestPath path = new LongestPath(tasks);
        List<Task> chain = path.chain();
        int busy = Math.max(path.spoken(), path.worked());
        int waited = chain.stream().mapToInt(Task::seconds).sum();
        if (busy > slot) {
            all.add(new Hindrance(Hindrance.Kind.PRESENTER, longest(), busy, slot));
        } else {
            all.add(new Hindrance(waited > slot ? Hindrance.Kind.CHAIN : Hindrance.Kind.CROWD,
                    chain.stream().map(Task::label).toList(), found.makespan(), slot));
        }
    }

    /** The three longest things the presenter does. */
    private List<String> longest() {
        return tasks.stream().filter(Task::isSeen).sorted((a, b) -> b.seconds() - a.seconds()).limit(3).map(Task::label).toList();
    }

    private Hindrance hours(Why why) {
        if (why instanceof Why.Chain chain) {
            return new Hindrance(Hindrance.Kind.HOUR, labels(chain.jobs()), chain.end(), chain.latest());
        }
        if (why instanceof Why.Crowd crowd) {
            return new Hindrance(Hindrance.Kind.CROWD, labels(crowd.jobs()), (int) crowd.demand(), (int) crowd.room());
        }
        return new Hindrance(Hindrance.Kind.HOURS, List.of(), 0, 0);
    }

    private List<String> labels(List<Integer> jobs) {
        return jobs.stream().map(job -> tasks.get(job).label()).toList();
    }
}
