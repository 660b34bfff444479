package hobside.practice.rubric;

/** What an explanation is judged on, in the order in which it is told. */
public enum Point {
    /** What is done, and to which food. In an answer to a question: whether it answers. */
    WHAT("what"),
    /** Why it works. */
    WHY("why"),
    /** By how much. */
    HOW_MUCH("how-much"),
    /** What it does not do. */
    NOT("not"),
    /** The care it needs. */
    SAFETY("safety"),
    /** Whether what an answer to a question says is true; in an explanation the truth belongs to the other points. */
    TRUE("true"),
    /** Whether neighbours understand it. */
    PLAIN("plain"),
    /** Whether it is kind to people and their food. */
    RESPECT("respect"),
    /** Whether it is neither too short nor too long. */
    LENGTH("length");

    private final String word;

    Point(String word) {
        this.word = word;
    }

    /** The word that files and keys of sentences know it by. */
    public String word() {
        return word;
    }
}
