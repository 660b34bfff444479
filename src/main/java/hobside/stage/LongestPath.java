package hobside.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What no timetable can beat: the longest chain of tasks that wait for each other, and the presenter's own work. */
final class LongestPath {

    private final Map<String, Task> tasks = new HashMap<>();
    private final Map<String, Integer> ends = new HashMap<>();
    private final List<Task> all;

    LongestPath(List<Task> all) {
        this.all = all;
        all.forEach(task -> tasks.put(task.key(), task));
    }

    /** The chain that ends last, in its order. */
    List<Task> chain() {
        Task last = null;
        for (Task task : all) {
            last = last == null || end(task) > end(last) ? task : last;
        }
        List<Task> chain = new ArrayList<>();
        for (Task task = last; task != null; task = before(task)) {
            chain.add(0, task);
        }
        return chain;
    }

    /** Seconds that no timetable of these tasks can beat. */
    int bound() {
        int longest = 0;
        for (Task task : all) {
            longest = Math.max(longest, end(task));
        }
        return Math.max(longest, Math.max(spoken(), worked()));
    }

    int spoken() {
        return all.stream().filter(task -> task.load().body().speaks()).mapToInt(Task::seconds).sum();
    }

    int worked() {
        return all.stream().filter(task -> task.load().body().works()).mapToInt(Task::seconds).sum();
    }

    /** All that the presenter speaks or does, as if nothing of it went on at the same time. */
    int seen() {
        return all.stream().filter(Task::isSeen).mapToInt(Task::seconds).sum();
    }

    private Task before(Task task) {
        Task latest = null;
        for (String key : task.ties().after()) {
            Task each = tasks.get(key);
            latest = each != null && (latest == null || end(each) > end(latest)) ? each : latest;
        }
        return latest;
    }

    private int end(Task task) {
        Integer known = ends.get(task.key());
        if (known != null) {
            return known;
        }
        Task before = before(task);
        int end = Math.max(before == null ? 0 : end(before), task.ties().window().earliest()) + task.seconds();
        ends.put(task.key(), end);
        return end;
    }
}
