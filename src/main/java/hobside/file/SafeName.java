package hobside.file;

import java.text.Normalizer;
import java.util.Set;

/** Names of files: 1 to 60 small letters, digits and hyphens, so that no name leaves its folder on any system. */
public final class SafeName {

    private static final int MOST = 60;

    /** Names that one widespread system keeps for its devices. */
    private static final Set<String> KEPT = Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6",
            "com7", "com8",
            "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private SafeName() {}

    /** "Lock-keeper's potato bake" becomes {@code lock-keepers-potato-bake}; "../etc" becomes {@code etc}. */
    public static String of(String words) {
        String start = words.length() > 4 * MOST ? words.substring(0, 4 * MOST) : words;
        StringBuilder name = new StringBuilder();
        for (char each : Normalizer.normalize(start, Normalizer.Form.NFD).toCharArray()) {
            char small = Character.toLowerCase(each);
            boolean plain = small >= 'a' && small <= 'z' || small >= '0' && small <= '9';
            boolean dropped = small == '\'' || small == '’' || Character.getType(small) == Character.NON_SPACING_MARK;
            boolean gap = !plain && !dropped && name.length() > 0 && name.charAt(name.length() - 1) != '-';
            if (plain || gap) {
                name.append(plain ? small : '-');
            }
        }
        String cut = trimmed(name.length() > MOST ? name.substring(0, MOST) : name.toString());
        return cut.isEmpty() || KEPT.contains(cut) ? trimmed("dish-" + cut) : cut;
    }

    private static String trimmed(String name) {
        return name.endsWith("-") ? name.substring(0, name.length() - 1) : name;
    }

    public static boolean isSafe(String name) {
        return Ids.isId(name) && !KEPT.contains(name);
    }

    /** The name with a number behind it, still within the bounds. */
    public static String numbered(String name, int number) {
        return tailed(name, "-" + number);
    }

    /** The name with a tail of small letters, digits and hyphens behind it, still within the bounds. */
    static String tailed(String name, String tail) {
        return trimmed(name.length() + tail.length() > MOST ? name.substring(0, MOST - tail.length()) : name) + tail;
    }
}
