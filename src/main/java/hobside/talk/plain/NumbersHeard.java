package hobside.talk.plain;

import java.util.Optional;
import java.util.Set;

/**
 * How many numbers a listener meets. Words of one number count once: "two fifths", "9 and a half", "1 1/2". In a language whose
 * number words are not known, numerals alone count.
 */
final class NumbersHeard {

    private static final Set<String> PARTS = Set.of("half", "quarter", "third", "medio", "media", "cuarto");

    /** What stands just before a word: "2", "2 and", "2 and a" (or "2 y"). */
    private enum Before { NOTHING, NUMBER, AND, AND_A }

    private NumbersHeard() {}

    static int in(Sentence sentence, Optional<Language> language) {
        int numbers = 0;
        Before before = Before.NOTHING;
        for (Word word : sentence.words()) {
            boolean number = language.map(known -> known.isNumber(word)).orElse(word.isNumeral());
            numbers += number && !goesOn(word, before) ? 1 : 0;
            before = number ? Before.NUMBER : joined(before, word.plain());
        }
        return numbers;
    }

    private static boolean goesOn(Word word, Before before) {
        return switch (before) {
            case NOTHING, AND -> false;
            case NUMBER -> !word.isNumeral() || word.text().indexOf('/') > 0;
            case AND_A -> PARTS.contains(word.plain());
        };
    }

    private static Before joined(Before before, String word) {
        return switch (before) {
            case NOTHING, AND_A -> Before.NOTHING;
            case NUMBER -> word.equals("and") ? Before.AND : word.equals("y") ? Before.AND_A : Before.NOTHING;
            case AND -> word.equals("a") ? Before.AND_A : Before.NOTHING;
        };
    }
}
