package hobside.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A pot that somebody waits for: with the beginning of one cue it is set going, and another cue cannot begin before it is ready.
 *
 * @param hands seconds of work at its beginning
 * @param ready seconds from its beginning until it is ready
 */
public record Pot(String cue, int hands, int ready, String waiting) {

    /** Whatever goes on without the presenter and is waited for by something that has a cue. */
    static List<Pot> of(List<Slotted> slots) {
        Map<String, Slotted> byKey = new HashMap<>();
        slots.forEach(slot -> byKey.put(slot.task().key(), slot));
        List<Pot> pots = new ArrayList<>();
        for (Slotted slot : slots) {
            for (String key : slot.task().ties().after()) {
                Slotted before = byKey.get(key);
                if (before != null && !before.task().isSeen() && !slot.task().ties().cues().isEmpty()) {
                    pot(before, byKey, slot.task().ties().cues().get(0), pots);
                }
            }
        }
        return List.copyOf(pots);
    }

    private static void pot(Slotted before, Map<String, Slotted> byKey, String waiting, List<Pot> pots) {
        Task task = before.task();
        Slotted hands = task.kind() == Task.Kind.COOKS ? byKey.get(StepKeys.of(task.step())) : before;
        List<String> cues = hands == null ? task.ties().cues() : hands.task().ties().cues();
        if (!cues.isEmpty()) {
            int work = hands == null || task == hands.task() && task.kind() == Task.Kind.COOKS ? 0 : hands.task().seconds();
            int cooks = task.kind() == Task.Kind.COOKS ? task.seconds() : 0;
            pots.add(new Pot(cues.get(0), work, work + cooks, waiting));
        }
    }
}
