package hobside.practice.rubric;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a sentence of the books is said nearly in its own words: three in five of its longer words stand in one sentence of the
 * answer, and both say no or neither does.
 */
final class Echo {

    private static final int LONG = 4;
    private static final double ENOUGH = 0.6;

    private Echo() {}

    /** First and last word of the sentence of the answer. */
    static Optional<int[]> of(String book, Spotter spotter, Heard heard) {
        Heard written = spotter.book(book);
        for (int[] span : sentences(written)) {
            Optional<int[]> found = of(written, span, heard);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<int[]> of(Heard written, int[] span, Heard heard) {
        Set<String> wanted = longer(written, span);
        int need = wanted.size() < 2 ? Integer.MAX_VALUE : Math.max(Math.min(3, wanted.size()), (int) Math.ceil(wanted.size() * ENOUGH));
        for (int[] other : sentences(heard)) {
            Set<String> said = longer(heard, other);
            said.retainAll(wanted);
            if (said.size() >= need && saysNo(written, span) == saysNo(heard, other)) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    private static Set<String> longer(Heard heard, int[] span) {
        Set<String> words = new HashSet<>();
        for (int i = span[0]; i <= span[1]; i++) {
            String word = heard.tokens().get(i).word();
            if (word.length() >= LONG) {
                words.add(word);
            }
        }
        return words;
    }

    private static boolean saysNo(Heard heard, int[] span) {
        for (int i = span[0]; i <= span[1]; i++) {
            if (heard.isNo(i)) {
                return true;
            }
        }
        return false;
    }

    private static List<int[]> sentences(Heard heard) {
        List<int[]> spans = new java.util.ArrayList<>();
        for (int i = 0; i < heard.tokens().size(); i++) {
            if (i == 0 || !heard.isOneSentence(i, i - 1)) {
                spans.add(new int[] {i, i});
            } else {
                spans.get(spans.size() - 1)[1] = i;
            }
        }
        return spans;
    }
}
