package hobside.file;

import java.util.List;

/** Finds the word that was most likely meant. */
public final class Nearest {

    private Nearest() {}

    /** A sentence such as {@code did you mean "amount"?}; empty when nothing is near. */
    static String hint(String written, Iterable<String> known) {
        String best = "";
        int allowed = written.length() < 5 ? 1 : written.length() < 9 ? 2 : 3;
        int least = Integer.MAX_VALUE;
        for (String each : known) {
            boolean near = Math.abs(each.length() - written.length()) <= allowed;
            int distance = near ? distance(written, each) : allowed + 1;
            int rank = distance * Shown.MOST - sameBeginning(written, each);
            if (distance <= allowed && rank < least) {
                least = rank;
                best = each;
            }
        }
        return best.isEmpty() ? "" : "did you mean \"" + best + "\"?";
    }

    /** Of two words equally far the one that begins alike is meant: "brazed" is braised rather than baked. */
    private static int sameBeginning(String one, String other) {
        int same = 0;
        while (same < one.length() && same < other.length() && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return same;
    }

    /** The hint if there is one, else the other remedy. */
    public static String hintOr(String written, Iterable<String> known, String remedy) {
        String hint = written.length() > Shown.MOST ? "" : hint(written, known);
        return hint.isEmpty() ? remedy : hint;
    }

    /** How many letters have to be changed, put in or left out (Levenshtein), capitals counting as small letters. */
    private static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                boolean same = Character.toLowerCase(one.charAt(i - 1)) == Character.toLowerCase(other.charAt(j - 1));
                int cost = Math.min(Math.min(row[j], row[j - 1]) + 1, corner + (same ? 0 : 1));
                corner = row[j];
                row[j] = cost;
            }
        }
        return row[other.length()];
    }

    public static String listed(List<String> words) {
        return String.join(", ", words);
    }
}
