package hobside.practice.rubric;

/** How far an answer meets a point. */
public enum Mark {
    YES("yes"),
    PART("part"),
    NO("no"),
    /** The point does not apply. */
    NONE("none"),
    /** The rubric cannot tell, and a person has to. */
    UNSURE("unsure");

    private final String word;

    Mark(String word) {
        this.word = word;
    }

    /** The word that files and keys of sentences know it by. */
    public String word() {
        return word;
    }
}
