package hobside.stage.whatif;

/** How much one word looks like another: the same, its beginning, or a slip of the finger away. */
final class Alike {

    static final double SAME = 1;
    private static final double BEGINNING = 0.75;
    private static final double SLIP = 0.7;
    private static final double TRIGRAMS = 0.45;

    private static final int SHORTEST_BEGINNING = 3;
    private static final int SHORTEST_WITH_A_SLIP = 5;
    private static final int SHORTEST_WITH_TWO = 8;

    /** Words share this much of their groups of three letters (Dice) when they are taken for relatives. */
    private static final double RELATED = 0.6;

    private Alike() {}

    /** From 0, nothing in common, to 1, the same. */
    static double of(String typed, String word) {
        if (typed.equals(word)) {
            return SAME;
        }
        if (typed.length() >= SHORTEST_BEGINNING && word.startsWith(typed) || word.length() > SHORTEST_BEGINNING && typed.startsWith(word)) {
            return BEGINNING;
        }
        int allowed = typed.length() >= SHORTEST_WITH_TWO ? 2 : typed.length() >= SHORTEST_WITH_A_SLIP ? 1 : 0;
        if (allowed > 0 && Math.abs(typed.length() - word.length()) <= allowed && word.length() >= SHORTEST_WITH_A_SLIP && slips(typed, word) <= allowed) {
            return SLIP;
        }
        return trigrams(typed, word) >= RELATED ? TRIGRAMS : 0;
    }

    /** The fewest wrong, missing, extra or swapped letters (Damerau-Levenshtein, adjacent swaps). */
    static int slips(String one, String other) {
        int[][] rows = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                rows[i][j] = i == 0 ? j : j == 0 ? i : least(rows, i, j, one, other);
            }
        }
        return rows[one.length()][other.length()];
    }

    private static int least(int[][] rows, int i, int j, String one, String other) {
        char a = one.charAt(i - 1);
        char b = other.charAt(j - 1);
        int least = Math.min(rows[i - 1][j - 1] + (a == b ? 0 : 1), Math.min(rows[i - 1][j], rows[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a == other.charAt(j - 2) && one.charAt(i - 2) == b;
        return swapped ? Math.min(least, rows[i - 2][j - 2] + 1) : least;
    }

    private static double trigrams(String one, String other) {
        int both = 0;
        for (int i = 0; i + 3 <= one.length(); i++) {
            both += other.contains(one.substring(i, i + 3)) ? 1 : 0;
        }
        int all = Math.max(0, one.length() - 2) + Math.max(0, other.length() - 2);
        return all == 0 ? 0 : 2.0 * both / all;
    }
}
