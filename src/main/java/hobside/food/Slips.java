package hobside.food;

/** Counts slips of the finger between what was typed and a word, or its beginning. One for each who counts: it keeps its table. */
public final class Slips {

    private static final int LONGEST = 40;

    private final int[][] rows = new int[LONGEST + 1][LONGEST + 4];

    /**
     * The fewest slips that turn the typed letters into the word or into a beginning of it; a slip is a wrong, missing,
     * extra or swapped letter (Damerau-Levenshtein, adjacent swaps). More than {@code most} is given as {@code most + 1}.
     */
    public int toBeginningOf(String word, String typed, int most) {
        int length = Math.min(word.length(), typed.length() + most);
        if (typed.length() > LONGEST || length < typed.length() - most) {
            return most + 1;
        }
        for (int j = 0; j <= length; j++) {
            rows[0][j] = j;
        }
        int before = 0;
        for (int i = 1; i <= typed.length(); i++) {
            int now = fill(i, word, typed, length);
            // Two swapped letters reach back over one row, so one bad row alone does not decide.
            if (now > most && before > most) {
                return most + 1;
            }
            before = now;
        }
        int least = most + 1;
        for (int j = 0; j <= length; j++) {
            least = Math.min(least, rows[typed.length()][j]);
        }
        return least;
    }

    /** The fewest slips that turn the typed letters into the whole word; more than {@code most} is given as {@code most + 1}. */
    public int to(String word, String typed, int most) {
        if (typed.length() > LONGEST || word.length() > LONGEST || Math.abs(word.length() - typed.length()) > most) {
            return most + 1;
        }
        for (int j = 0; j <= word.length(); j++) {
            rows[0][j] = j;
        }
        for (int i = 1; i <= typed.length(); i++) {
            fill(i, word, typed, word.length());
        }
        return Math.min(most + 1, rows[typed.length()][word.length()]);
    }

    /** Fills one row of the table and returns its smallest figure. */
    private int fill(int i, String word, String typed, int length) {
        int[] row = rows[i];
        int[] above = rows[i - 1];
        char letter = typed.charAt(i - 1);
        row[0] = i;
        int least = i;
        for (int j = 1; j <= length; j++) {
            int cost = above[j - 1] + (word.charAt(j - 1) == letter ? 0 : 1);
            cost = Math.min(cost, Math.min(above[j], row[j - 1]) + 1);
            boolean swapped = i > 1 && j > 1 && letter == word.charAt(j - 2) && typed.charAt(i - 2) == word.charAt(j - 1);
            row[j] = swapped ? Math.min(cost, rows[i - 2][j - 2] + 1) : cost;
            least = Math.min(least, row[j]);
        }
        return least;
    }
}
