package hobside.practice;

import hobside.advice.Pantry;
import hobside.ledger.Books;
import hobside.talk.Stand;
import hobside.words.Words;

/** What every exercise is worked out with: prices and cookery, the swap book and the shelf, and the language it is told in. */
public record Teaching(Books books, Pantry pantry, Stand.Beside beside) {

    public Words words() {
        return beside.tongue().words();
    }
}
