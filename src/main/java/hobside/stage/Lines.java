package hobside.stage;

import hobside.talk.Cue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The cues on stage one after another with their seconds. A wait counts to the cue before it, so that the sum is the whole time on
 * stage. What the helper does beside the presenter takes none of the presenter's time.
 */
final class Lines {

    private final List<RunningOrder.Line> lines = new ArrayList<>();
    private final Map<String, Blocks.Block> asked = new HashMap<>();
    private final Fillers fillers;
    private int until;

    private Lines(Fillers fillers) {
        this.fillers = fillers;
        fillers.blocks().forEach(block -> asked.put(block.key(), block));
    }

    static List<RunningOrder.Line> of(Fillers fillers, List<Slotted> slots, List<Silence> silences) {
        Lines lines = new Lines(fillers);
        int next = 0;
        int end = 0;
        for (Slotted slot : slots) {
            end = Math.max(end, slot.end());
            for (; slot.task().isSeen() && next < silences.size() && silences.get(next).from() < slot.start(); next++) {
                silences.get(next).filled().forEach(lines::ask);
            }
            lines.add(slot);
        }
        silences.subList(next, silences.size()).forEach(silence -> silence.filled().forEach(lines::ask));
        lines.waitUntil(end);
        return lines.lines;
    }

    private void ask(String filler) {
        for (Cue cue : asked.get(filler).cues()) {
            lines.add(new RunningOrder.Line(cue.key(), fillers.seconds(cue)));
            until += fillers.seconds(cue);
        }
    }

    private void add(Slotted slot) {
        List<String> cues = slot.task().ties().cues();
        if (!slot.task().isSeen()) {
            cues.forEach(key -> lines.add(new RunningOrder.Line(key, 0)));
            return;
        }
        waitUntil(slot.start());
        if (slot.task().kind() == Task.Kind.HANDS) {
            cues.forEach(key -> lines.add(new RunningOrder.Line(key, slot.task().seconds())));
        } else {
            cues.forEach(key -> lines.add(new RunningOrder.Line(key, fillers.seconds(key))));
        }
        until = Math.max(until, slot.end());
    }

    private void waitUntil(int moment) {
        if (moment > until && !lines.isEmpty()) {
            RunningOrder.Line last = lines.get(lines.size() - 1);
            lines.set(lines.size() - 1, new RunningOrder.Line(last.cue(), last.seconds() + moment - until));
        }
        until = Math.max(until, moment);
    }
}
