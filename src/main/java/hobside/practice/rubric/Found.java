package hobside.practice.rubric;

/**
 * The very words of an answer that counted for or against a point.
 *
 * @param from where they begin in the answer
 * @param to where they end
 * @param words the words themselves
 * @param why why they count, in a few words
 */
public record Found(int from, int to, String words, String why) {

    public Found {
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("no place: " + from + " to " + to);
        }
    }
}
