package hobside.practice.rubric;

/**
 * One word or number of an answer, in small letters without accents.
 *
 * @param from where it begins in the answer
 * @param sentence the number of its sentence, from 0
 * @param clause the number of its clause, from 0, counted through the whole answer
 */
record Token(String word, int from, int to, int sentence, int clause) {

    boolean isNumeral() {
        return Character.isDigit(word.charAt(0));
    }

    /** Whether it says no by its ending: don't, isn't. */
    boolean endsInNot() {
        return word.endsWith("n't");
    }
}
