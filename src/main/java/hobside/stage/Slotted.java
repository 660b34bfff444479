package hobside.stage;

/**
 * A task with its time and its lane.
 *
 * @param start seconds from the beginning
 * @param lane which hob or oven it stands on, counted from 1; 0 where it stands on none
 */
public record Slotted(Task task, int start, int lane) {

    public int end() {
        return start + task.seconds();
    }
}
