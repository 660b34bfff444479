package hobside.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One of a closed list that has a word of its own in files, such as {@code pan-fried}.
 *
 * <p>Looked up by plain loops: every start reads a dish, and reads it before anything has been compiled.
 */
public interface Worded {

    /** Its word in files. */
    String word();

    /** The one with exactly this word; empty when there is none. */
    static <T extends Worded> Optional<T> parse(T[] all, String word) {
        for (T each : all) {
            if (each.word().equals(word)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** All words in the order of the list. */
    static List<String> words(Worded[] all) {
        List<String> words = new ArrayList<>(all.length);
        for (Worded each : all) {
            words.add(each.word());
        }
        return words;
    }
}
