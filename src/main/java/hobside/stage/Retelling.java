package hobside.stage;

import hobside.dish.Plan;
import hobside.stage.order.Effort;
import hobside.stage.order.Outcome;
import hobside.talk.TalkWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks for an order of telling the changes that takes less time on stage. The totals at the end are the same in any order. */
public final class Retelling {

    /** Less than this many seconds is not worth another order. */
    public static final int WORTH_IT = 30;

    private Retelling() {}

    /**
     * The plan in the order in which the kitchen would have the changes, if that promises to take less time. It is a promise only:
     * the talk has to be written anew for it.
     */
    public static Optional<Plan> of(RunningOrder.Given given, RunningOrder told, Effort effort) {
        if (told.slots().isEmpty()) {
            return Optional.empty();
        }
        Scene scene = Scene.of(given).inAnyOrder();
        List<Task> tasks = Tasks.of(scene, told.outlook().ways());
        Timetable table = new Timetable(tasks, scene.hall());
        return table.shortest(effort) instanceof Outcome.Found found && found.makespan() + WORTH_IT <= told.seconds()
                ? Optional.of(reordered(given.stand().demo().plan(), table.slotted(found.starts()))) : Optional.empty();
    }

    /** The changes as their pieces begin; those that are not told stay at the end. */
    private static Plan reordered(Plan plan, List<Slotted> slots) {
        Map<String, Integer> places = new HashMap<>();
        slots.forEach(slot -> places.put(slot.task().key(), places.size()));
        List<Plan.Planned> changes = new ArrayList<>(plan.changes());
        changes.sort(Comparator.comparingInt(each -> places.getOrDefault(TalkWriter.key(each.change()), slots.size())));
        return new Plan(changes);
    }
}
