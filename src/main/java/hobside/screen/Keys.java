package hobside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys of a screen: each action with the keys that bring it about, its word on the last line, and its sentence on the help
 * page. One table of these feeds the update, the last line and the help.
 */
public final class Keys {

    private Keys() {}

    /** One action: its keys in words, the short word of the last line (empty to leave it out there), and what it does. */
    public record Binding(String keys, String brief, String help) {

        public boolean isFor(Key key) {
            for (String word : keys.split(" ")) {
                if (word.equals(key.word())) {
                    return true;
                }
            }
            return false;
        }

        /** The first key as it is printed: "Enter", "Tab", "s". */
        public String firstKey() {
            return printed(keys.split(" ")[0]);
        }

        /** All its keys as they are printed: "Tab, Right, Left". */
        public String allKeys() {
            StringBuilder all = new StringBuilder();
            for (String word : keys.split(" ")) {
                all.append(all.length() == 0 ? "" : ", ").append(printed(word));
            }
            return all.toString();
        }

        private static String printed(String word) {
            return word.length() == 1 ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
        }
    }

    /** An action that says which keys it hangs on. */
    public interface Bound {
        Binding binding();
    }

    /** The action that a key brings about. */
    public static <A extends Bound> Optional<A> action(A[] actions, Key key) {
        for (A action : actions) {
            if (action.binding().isFor(key)) {
                return Optional.of(action);
            }
        }
        return Optional.empty();
    }

    /**
     * Writes the last line: as many actions as fit, the key standing out, in the order of the table. The last two of the table,
     * help and the way out, are always there.
     */
    public static void line(Frame frame, List<? extends Bound> actions) {
        List<Binding> shown = new ArrayList<>();
        for (Bound action : actions) {
            if (!action.binding().brief().isEmpty()) {
                shown.add(action.binding());
            }
        }
        int firstKept = Math.max(0, shown.size() - 2);
        int room = frame.width() - 1;
        for (int i = firstKept; i < shown.size(); i++) {
            room -= width(shown.get(i));
        }
        int at = 1;
        for (int i = 0; i < shown.size(); i++) {
            if (i >= firstKept || at + width(shown.get(i)) <= room + 1) {
                at = put(frame, at, shown.get(i));
            }
        }
    }

    private static int width(Binding binding) {
        return TextWidth.of(binding.firstKey()) + TextWidth.of(binding.brief()) + 3;
    }

    private static int put(Frame frame, int at, Binding binding) {
        int after = frame.put(frame.height() - 1, at, binding.firstKey(), Style.KEY);
        return frame.put(frame.height() - 1, after + 1, binding.brief(), Style.QUIET) + 2;
    }
}
