package hobside.practice;

/**
 * One answer to choose.
 *
 * @param mistake the name of the misunderstanding behind it, such as {@code whole-pot}; empty for the right one
 * @param feedback what is said to whoever chose it, with the true figure
 */
public record Choice(String words, String mistake, String feedback) {

    public boolean isRight() {
        return mistake.isEmpty();
    }
}
