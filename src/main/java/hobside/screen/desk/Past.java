package hobside.screen.desk;

import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The states a demo has been in and can go back to, and those it came back from. Each holds the whole demo. */
public record Past(List<Demo> before, List<Demo> after) {

    public static final Past NONE = new Past(List.of(), List.of());

    /** So many steps can be undone. */
    private static final int DEPTH = 500;

    public Past {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /** A new state has come; what was undone cannot be redone any more. */
    Past leaving(Demo now) {
        List<Demo> more = new ArrayList<>(before.size() < DEPTH ? before : before.subList(1, before.size()));
        more.add(now);
        return new Past(more, List.of());
    }

    Optional<Demo> previous() {
        return before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
    }

    Optional<Demo> next() {
        return after.isEmpty() ? Optional.empty() : Optional.of(after.get(after.size() - 1));
    }

    Past goingBack(Demo now) {
        List<Demo> redo = new ArrayList<>(after);
        redo.add(now);
        return new Past(before.subList(0, before.size() - 1), redo);
    }

    Past goingOn(Demo now) {
        List<Demo> undo = new ArrayList<>(before);
        undo.add(now);
        return new Past(undo, after.subList(0, after.size() - 1));
    }
}
