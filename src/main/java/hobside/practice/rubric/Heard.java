package hobside.practice.rubric;

import hobside.food.Slips;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An answer in which the words of a lexicon have been found. Places of a slot are looked up once. */
final class Heard {

    private final Text text;
    private final int[][] items;
    private final Map<Integer, List<int[]>> places = new HashMap<>();
    private final boolean[] no;

    Heard(Text text, Lexicon lexicon, Slot noes) {
        this.text = text;
        this.items = new int[text.tokens().size()][];
        Map<String, int[]> known = new HashMap<>();
        Slips slips = new Slips();
        for (int i = 0; i < items.length; i++) {
            items[i] = known.computeIfAbsent(text.tokens().get(i).word(), word -> lexicon.of(word, slips));
        }
        this.no = new boolean[items.length];
        places(noes).forEach(place -> Arrays.fill(no, place[0], place[1] + 1, true));
        for (int i = 0; i < items.length; i++) {
            no[i] |= text.tokens().get(i).endsInNot();
        }
    }

    Text text() {
        return text;
    }

    List<Token> tokens() {
        return text.tokens();
    }

    boolean isNo(int at) {
        return no[at];
    }

    boolean isOneSentence(int one, int other) {
        return tokens().get(one).sentence() == tokens().get(other).sentence();
    }

    boolean isOneClause(int one, int other) {
        return tokens().get(one).clause() == tokens().get(other).clause();
    }

    boolean has(Slot slot) {
        return !places(slot).isEmpty();
    }

    /** Whether one of the words is near a place, in the same sentence. */
    boolean hasNear(Slot slot, int at, int near) {
        return places(slot).stream().anyMatch(place -> isOneSentence(place[0], at) && Math.abs(place[0] - at) <= near);
    }

    /** First and last word of each place of a slot. */
    List<int[]> places(Slot slot) {
        return places.computeIfAbsent(slot.number(), number -> search(slot));
    }

    private List<int[]> search(Slot slot) {
        List<int[]> found = new ArrayList<>();
        for (int i = 0; i < items.length; i++) {
            int longest = 0;
            for (int[] row : slot.rows()) {
                longest = row.length > longest && isAt(row, i) ? row.length : longest;
            }
            if (longest > 0) {
                found.add(new int[] {i, i + longest - 1});
            } else if (slot.isNo() && tokens().get(i).endsInNot()) {
                found.add(new int[] {i, i});
            }
        }
        return found;
    }

    private boolean isAt(int[] row, int at) {
        if (at + row.length > items.length || row.length > 1 && !isOneSentence(at, at + row.length - 1)) {
            return false;
        }
        for (int i = 0; i < row.length; i++) {
            if (!holds(items[at + i], row[i])) {
                return false;
            }
        }
        return true;
    }

    private static boolean holds(int[] numbers, int number) {
        for (int one : numbers) {
            if (one == number) {
                return true;
            }
        }
        return false;
    }
}
