package hobside.screen.clock;

import hobside.stage.Ahead;
import hobside.stage.RunningOrder;
import hobside.stage.Silence;
import hobside.stage.Slotted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One row of the list: a step done ahead, a task on stage, or a wait.
 *
 * @param key the key of the task; empty for a wait
 */
record Entry(String key, Optional<Ahead.Item> ahead, Optional<Slotted> slot, Optional<Silence> silence) {

    /** What is done ahead, then the stage from its beginning, with the waits between. */
    static List<Entry> of(RunningOrder order) {
        List<Entry> entries = new ArrayList<>();
        order.ahead().steps().forEach(item -> entries.add(new Entry(item.key(), Optional.of(item), Optional.empty(), Optional.empty())));
        int next = 0;
        for (Slotted slot : order.slots()) {
            for (; next < order.silences().size() && order.silences().get(next).from() <= slot.start(); next++) {
                entries.add(wait(order.silences().get(next)));
            }
            entries.add(new Entry(slot.task().key(), Optional.empty(), Optional.of(slot), Optional.empty()));
        }
        order.silences().subList(next, order.silences().size()).forEach(silence -> entries.add(wait(silence)));
        return entries;
    }

    private static Entry wait(Silence silence) {
        return new Entry("", Optional.empty(), Optional.empty(), Optional.of(silence));
    }

    /** The key of the step of the method it belongs to; empty where it belongs to none. */
    Optional<String> step() {
        String step = key.endsWith("/cooks") ? key.substring(0, key.length() - "/cooks".length()) : key;
        return step.startsWith("step:") || step.equals("chill") ? Optional.of(step) : Optional.empty();
    }

    /** What a wish is written down for: the step, or the piece of the talk. */
    String wishKey() {
        return step().orElse(key);
    }

    /** Its index in the dish's method; empty for anything but a step of the method. */
    Optional<Integer> methodIndex() {
        return step().filter(step -> step.startsWith("step:")).map(step -> Integer.parseInt(step.substring("step:".length())) - 1);
    }
}
