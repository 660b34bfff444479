package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Kit;
import hobside.dish.Pot;
import hobside.dish.Working;
import hobside.food.Substitutes;
import hobside.guide.Cautions;
import hobside.guide.Guide;
import hobside.ledger.Books;
import hobside.ledger.Ledger;
import hobside.measure.Currency;
import hobside.words.Words;
import java.util.List;
import java.util.Optional;

/** What a talk is written from: the demo, its ledger, the pot before and after, and what has to be said beside it. */
public record Stand(Demo demo, Ledger ledger, Pots pots, Beside beside) {

    /** The pot as it is cooked here, and when all changes are made. */
    public record Pots(Pot before, Pot after) {}

    /** The guide that is quoted, the cautions, the book of substitutes, and in which words and coins it is told. */
    public record Beside(Optional<Guide> guide, Cautions cautions, Substitutes substitutes, Tongue tongue) {

        public Currency currency() {
            return tongue.currency();
        }
    }

    /** The words of the language, and the money. */
    public record Tongue(Words words, Currency currency) {}

    public static Stand of(Demo demo, Books books, Beside beside) {
        Pots pots = new Pots(pot(demo, List.of(), books), pot(demo, demo.plan().told(), books));
        return new Stand(demo, Ledger.of(demo.dish(), demo.plan(), books), pots, beside);
    }

    private static Pot pot(Demo demo, List<Change> changes, Books books) {
        return Working.of(demo.dish(), changes, Kit.typical(books.cookery())).pot();
    }

    public Words words() {
        return beside.tongue().words();
    }

    /** Whether it is told in the language of the records. */
    public boolean isEnglish() {
        return words().language().code().equals(Script.FIRST_LANGUAGE);
    }
}
