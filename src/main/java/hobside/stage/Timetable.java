package hobside.stage;

import hobside.dish.Station;
import hobside.stage.order.Effort;
import hobside.stage.order.Job;
import hobside.stage.order.Outcome;
import hobside.stage.order.Problem;
import hobside.stage.order.Scheduler;
import hobside.talk.Setting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts tasks on voice, hands, helper, hobs and ovens by the scheduler, and reads its answer back. */
final class Timetable {

    private final List<Task> tasks;
    private final Setting.Hall hall;

    Timetable(List<Task> tasks, Setting.Hall hall) {
        this.tasks = List.copyOf(tasks);
        this.hall = hall;
    }

    /** The shortest time on stage, or why there is none. Nothing may ask for a hob or an oven that the hall does not have. */
    Outcome shortest(Effort effort) {
        return Scheduler.shortest(new Problem(jobs(), capacities()), effort);
    }

    private List<Integer> capacities() {
        return List.of(1, 1, hall.helper() ? 1 : 0, hall.hobs(), hall.ovens());
    }

    private List<Job> jobs() {
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < tasks.size(); i++) {
            places.put(tasks.get(i).key(), i);
        }
        List<Job> jobs = new ArrayList<>();
        for (Task task : tasks) {
            List<Integer> after = task.ties().after().stream().filter(places::containsKey).map(places::get).sorted().toList();
            jobs.add(new Job(task.seconds(), takes(task.load()), after, task.ties().window()));
        }
        return jobs;
    }

    private static List<Integer> takes(Task.Load load) {
        return List.of(one(load.body().speaks()), one(load.body().works()), one(load.helper()), one(load.on() == Station.HOB), one(load.on() == Station.OVEN));
    }

    private static int one(boolean yes) {
        return yes ? 1 : 0;
    }

    /** Whatever is asked for more often at once than the hall has it. */
    List<Task> homeless() {
        return tasks.stream().filter(task -> task.load().on() == Station.HOB && hall.hobs() == 0
                || task.load().on() == Station.OVEN && hall.ovens() == 0).toList();
    }

    /** The tasks in the order in which they begin, each pot on one hob or oven as long as it can stay there. */
    List<Slotted> slotted(List<Integer> starts) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer>comparingInt(starts::get).thenComparingInt(i -> starts.get(i) + tasks.get(i).seconds()).thenComparingInt(i -> i));
        Map<Station, int[]> free = Map.of(Station.HOB, new int[hall.hobs()], Station.OVEN, new int[hall.ovens()]);
        Map<String, Integer> lanes = new HashMap<>();
        List<Slotted> slotted = new ArrayList<>();
        for (int i : order) {
            Task task = tasks.get(i);
            int lane = free.containsKey(task.load().on()) ? lane(task, starts.get(i), free.get(task.load().on()), lanes) : 0;
            lanes.put(task.key(), lane);
            slotted.add(new Slotted(task, starts.get(i), lane));
        }
        return slotted;
    }

    /** The lane of the step before where that is free, else the first free one. */
    private static int lane(Task task, int start, int[] free, Map<String, Integer> lanes) {
        int chosen = 0;
        for (int lane = 1; lane <= free.length; lane++) {
            int each = lane;
            boolean before = task.ties().after().stream().anyMatch(key -> lanes.getOrDefault(key, 0) == each);
            if (free[lane - 1] <= start && (chosen == 0 || before)) {
                chosen = lane;
            }
        }
        if (chosen > 0) {
            free[chosen - 1] = start + task.seconds();
        }
        return chosen;
    }
}
