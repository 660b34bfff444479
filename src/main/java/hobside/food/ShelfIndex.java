package hobside.food;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The search behind the shelf: every word of every name with the foods that carry it. A typed word is held against each word
 * once, however many foods share it; only words that share enough letters are looked at for slips.
 */
final class ShelfIndex {

    /** What a way of fitting costs; the smallest sum stands first. A word of another name costs a little more than of the name. */
    private static final int WHOLE = 0;
    private static final int BEGINNING = 2;
    private static final int SLIP = 12;
    private static final int JOINED = 6;
    private static final int LATER_WORD = 1;
    private static final int OTHER_NAME = 3;
    /** A piece that only comes with a cut – its fat, its skin, the brine of a tin – stands last; its lean just behind it. */
    private static final int LOOSE_PART = 40;
    private static final int LEAN = 1;
    private static final int NO_FIT = Integer.MAX_VALUE / 4;

    private final List<Food> foods;
    private final List<Entry> entries;
    private final int[] handicap;

    /** One word, which foods carry it, and what it costs in each. */
    private static final class Entry {
        private final String word;
        private final int letters;
        private int[] carriers = new int[4];
        private int[] costs = new int[4];
        private int size;

        private Entry(String word) {
            this.word = word;
            this.letters = lettersOf(word);
        }

        private void add(int food, int cost) {
            if (size > 0 && carriers[size - 1] == food) {
                costs[size - 1] = Math.min(costs[size - 1], cost);
                return;
            }
            if (size == carriers.length) {
                carriers = Arrays.copyOf(carriers, size * 2);
                costs = Arrays.copyOf(costs, size * 2);
            }
            carriers[size] = food;
            costs[size++] = cost;
        }
    }

    private ShelfIndex(List<Food> foods, List<Entry> entries, int[] handicap) {
        this.foods = foods;
        this.entries = entries;
        this.handicap = handicap;
    }

    static ShelfIndex of(List<Food> foods) {
        Map<String, Entry> entries = new HashMap<>();
        for (int i = 0; i < foods.size(); i++) {
            enter(foods.get(i).name(), i, 0, entries);
            for (String other : foods.get(i).label().also()) {
                enter(other, i, OTHER_NAME, entries);
            }
        }
        return new ShelfIndex(foods, new ArrayList<>(entries.values()), handicaps(foods));
    }

    private static void enter(String name, int food, int cost, Map<String, Entry> entries) {
        int place = 0;
        for (String word : Words.of(name)) {
            entries.computeIfAbsent(word, Entry::new).add(food, cost + LATER_WORD * Math.min(place++, 2));
        }
    }

    private static int[] handicaps(List<Food> foods) {
        Set<String> parts = new HashSet<>();
        Set<String> leans = new HashSet<>();
        for (Food food : foods) {
            food.parts().forEach(part -> parts.add(part.food().id()));
            leans.add(food.parts().isEmpty() ? "" : food.lean().id());
        }
        int[] handicap = new int[foods.size()];
        for (int i = 0; i < handicap.length; i++) {
            Food food = foods.get(i);
            boolean loose = parts.contains(food.id()) && food.handling().measures().isEmpty() && food.handling().density().isEmpty();
            handicap[i] = loose ? LOOSE_PART : leans.contains(food.id()) ? LEAN : 0;
        }
        return handicap;
    }

    List<Food> find(String typed, int most) {
        List<String> words = Words.of(typed);
        if (words.isEmpty()) {
            return foods.subList(0, Math.min(Math.max(0, most), foods.size()));
        }
        int[] total = totalOf(words);
        for (int i = 0; i + 1 < words.size(); i++) {
            int[] joined = totalOf(joined(words, i));
            for (int food = 0; food < total.length; food++) {
                total[food] = Math.min(total[food], joined[food] + JOINED);
            }
        }
        return best(total, most);
    }

    private int[] totalOf(List<String> words) {
        int[] total = handicap.clone();
        for (String word : words) {
            int[] costs = costsOf(word);
            for (int i = 0; i < total.length; i++) {
                total[i] = Math.min(NO_FIT, total[i] + costs[i]);
            }
        }
        return total;
    }

    /** "chick peas" as "chickpeas": two typed words may be one of the name. */
    private static List<String> joined(List<String> words, int at) {
        List<String> others = new ArrayList<>(words);
        others.set(at, words.get(at) + others.remove(at + 1));
        return others;
    }

    /** What the word costs in each food. */
    private int[] costsOf(String typed) {
        int[] costs = new int[foods.size()];
        Arrays.fill(costs, NO_FIT);
        int letters = lettersOf(typed);
        int allowed = typed.length() < 4 ? 0 : typed.length() < 6 ? 1 : 2;
        Slips slips = new Slips();
        for (Entry entry : entries) {
            int cost = cost(entry, typed, letters, allowed, slips);
            for (int i = 0; cost < NO_FIT && i < entry.size; i++) {
                int food = entry.carriers[i];
                costs[food] = Math.min(costs[food], cost + entry.costs[i]);
            }
        }
        return costs;
    }

    private static int cost(Entry entry, String typed, int letters, int allowed, Slips slips) {
        if (entry.word.startsWith(typed)) {
            return entry.word.length() == typed.length() ? WHOLE : BEGINNING;
        }
        if (allowed == 0 || Integer.bitCount(letters & ~entry.letters) > allowed) {
            return NO_FIT;
        }
        int count = slips.toBeginningOf(entry.word, typed, allowed);
        return count > allowed ? NO_FIT : SLIP * count + Math.min(SLIP / 2, Math.abs(entry.word.length() - typed.length()));
    }

    /** A bit for each letter and digit of the word: a word that lacks three typed letters cannot be two slips away. */
    private static int lettersOf(String word) {
        int bits = 0;
        for (int i = 0; i < word.length(); i++) {
            bits |= 1 << (word.charAt(i) & 31);
        }
        return bits;
    }

    private List<Food> best(int[] total, int most) {
        List<Integer> fitting = new ArrayList<>();
        for (int i = 0; i < total.length; i++) {
            if (total[i] < NO_FIT) {
                fitting.add(i);
            }
        }
        fitting.sort((one, other) -> total[one] != total[other] ? Integer.compare(total[one], total[other]) : shorter(one, other));
        List<Food> found = new ArrayList<>();
        for (int i = 0; i < fitting.size() && i < most; i++) {
            found.add(foods.get(fitting.get(i)));
        }
        return found;
    }

    private int shorter(int one, int other) {
        String name = foods.get(one).name();
        String rival = foods.get(other).name();
        return name.length() != rival.length() ? Integer.compare(name.length(), rival.length()) : name.compareTo(rival);
    }
}
