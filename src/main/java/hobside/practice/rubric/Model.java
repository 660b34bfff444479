package hobside.practice.rubric;

/** An answer that would do, made of the ledger's figures and the reasons of the books; empty where none is known. */
public record Model(String text) {

    /** No model answer is longer, in words. */
    static final int LONGEST = 120;
}
