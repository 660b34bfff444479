package hobside.practice.rubric;

import hobside.food.Slips;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All words that are looked for, each with a number. A word that is listed nowhere may be a slip of one that is: one wrong, missing,
 * extra or swapped letter in words of four to seven letters, two in longer ones, none in shorter ones.
 */
final class Lexicon {

    private static final int SHORT = 4;

    private static final int MOST_MET = 5_000;

    private final Map<String, int[]> met = new HashMap<>();
    private final List<String> items = new ArrayList<>();
    private final Map<Character, List<Integer>> bySound = new HashMap<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    /** Number of an item: a word, or a beginning with a star. */
    int number(String item) {
        return numbers.computeIfAbsent(item, fresh -> {
            items.add(fresh);
            bySound.computeIfAbsent(sound(fresh.charAt(0)), sound -> new ArrayList<>()).add(items.size() - 1);
            return items.size() - 1;
        });
    }

    /** The numbers of all items that a word of an answer can be. The words of earlier answers are remembered, up to a bound. */
    synchronized int[] of(String word, Slips slips) {
        int[] known = met.get(word);
        if (known == null) {
            known = looked(word, slips);
            if (met.size() < MOST_MET) {
                met.put(word, known);
            }
        }
        return known;
    }

    private int[] looked(String word, Slips slips) {
        List<Integer> found = new ArrayList<>();
        Integer whole = numbers.get(word);
        if (whole != null) {
            found.add(whole);
        }
        int longest = 0;
        for (int length = 2; length <= word.length(); length++) {
            Integer stem = numbers.get(word.substring(0, length) + "*");
            if (stem != null) {
                found.add(stem);
                longest = length;
            }
        }
        // A short beginning says little: "cost*" fits "costiyas" as well.
        if (whole == null && longest <= SHORT && word.length() >= 4 && Character.isLetter(word.charAt(0))) {
            slipped(word, found, slips);
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    private void slipped(String word, List<Integer> found, Slips slips) {
        for (int number : bySound.getOrDefault(sound(word.charAt(0)), List.of())) {
            if (isSlip(items.get(number), word, slips)) {
                found.add(number);
            }
        }
    }

    private static boolean isSlip(String item, String word, Slips slips) {
        boolean stem = item.endsWith("*");
        int length = item.length() - (stem ? 1 : 0);
        if (stem) {
            int most = length < 5 ? 0 : length < 8 ? 1 : 2;
            return most > 0 && word.length() >= length - 1 && slips.toBeginningOf(word, item.substring(0, length), most) <= most;
        }
        int most = length < 4 ? 0 : length < 8 ? 1 : 2;
        boolean shortened = length >= 8 && item.startsWith(word);
        return shortened || most > 0 && slips.to(item, word, most) <= most;
    }

    /** Letters that are heard alike at the beginning of a word, and written for each other. */
    private static char sound(char letter) {
        return switch (letter) {
            case 'k', 'q' -> 'c';
            case 'v' -> 'b';
            case 'z' -> 's';
            default -> letter;
        };
    }
}
