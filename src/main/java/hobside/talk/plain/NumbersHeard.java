package hobside.talk.plain;

import java.util.Optional;
import java.util.Set;

/**
 * How many numbers a listener meets. Words of one number count once: "two fifths", "9 and a half", "1 1/2". In a language whose
 * number words are not known, numerals alone count.
 */
final class NumbersHeard {

    /** Between the words of one number: "2 and a half", "dos y medio". */
    private static final Set<String> JOINS = Set.of("and", "a", "y");

    private static final Set<String> PARTS = Set.of("half", "quarter", "third", "medio", "media", "cuarto");

    private enum Before { NOTHING, NUMBER, JOIN }

    private NumbersHeard() {}

    static int in(Sentence sentence, Optional<Language> language) {
        int numbers = 0;
        Before before = Before.NOTHING;
        for (Word word : sentence.words()) {
            boolean number = language.map(known -> known.isNumber(word)).orElse(word.isNumeral());
            numbers += number && !goesOn(word, before) ? 1 : 0;
            boolean join = before != Before.NOTHING && JOINS.contains(word.plain());
            before = number ? Before.NUMBER : join ? Before.JOIN : Before.NOTHING;
        }
        return numbers;
    }

    private static boolean goesOn(Word word, Before before) {
        return switch (before) {
            case NOTHING -> false;
            case NUMBER -> !word.isNumeral() || word.text().indexOf('/') > 0;
            case JOIN -> PARTS.contains(word.plain());
        };
    }
}
