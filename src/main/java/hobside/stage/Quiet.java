package hobside.stage;

import java.util.List;

/** The presenter's hands at work for so long without a word that people begin to talk to each other. */
final class Quiet {

    /** Five minutes of watching: common practice, no source. */
    static final int LONGEST = 300;

    private Quiet() {}

    /** The work that is too long even with what is said over it. */
    static List<Slotted> of(List<Slotted> slots) {
        return slots.stream().filter(slot -> isWork(slot.task()) && slot.task().seconds() - spokenOver(slot, slots) > LONGEST).toList();
    }

    /** Whether it is too long whatever the order: one cannot speak meanwhile. */
    static boolean isUnderAnyOrder(Task task) {
        return isWork(task) && task.load().body() == Task.Body.BOTH && task.seconds() > LONGEST;
    }

    private static boolean isWork(Task task) {
        return task.kind() == Task.Kind.HANDS && task.isSeen();
    }

    private static int spokenOver(Slotted work, List<Slotted> slots) {
        return slots.stream().filter(slot -> slot.task().kind() == Task.Kind.TALK)
                .mapToInt(slot -> Math.max(0, Math.min(slot.end(), work.end()) - Math.max(slot.start(), work.start()))).sum();
    }
}
