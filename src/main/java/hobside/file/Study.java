package hobside.file;

import hobside.advice.Offers;
import hobside.advice.Pantry;
import hobside.food.Shelf;
import hobside.food.Substitutes;
import hobside.guide.Component;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import hobside.ledger.Books;
import hobside.talk.Stand;
import java.util.List;
import java.util.Optional;

/** What the program knows and does not change while it runs: foods, prices, cookery, substitutes, guides and cautions. */
public record Study(Shelf shelf, Books books, Substitutes substitutes, GuideBook published) {

    /** The guide that is used until another is chosen. */
    private static final String FIRST_GUIDE = "eu-ri";

    /** Everything at once, for work without a screen. Sentences about files of the kitchen that could not be read are in the library. */
    public static Study of(Library library) {
        return new Study(library.shelf(), new Books(library.cookery(), library.prices()), Library.bundledSubstitutes(library.shelf()),
                Library.bundledGuides());
    }

    public Offers offers() {
        return new Offers(new Pantry(shelf::food, substitutes), books);
    }

    /** The guides that say something of saturated fat. */
    public List<Guide> guides() {
        return published.guides().stream().filter(guide -> guide.line(Component.SATURATED).isPresent()).toList();
    }

    /** The guide of this key, else the one to begin with. */
    public Optional<Guide> guide(String key) {
        return published.guide(key).or(() -> published.guide(FIRST_GUIDE));
    }

    /** What a talk about a demo is written with. */
    public Stand.Beside beside(String guideKey) {
        return new Stand.Beside(books.prices().currency(), guide(guideKey), published.cautions(), substitutes);
    }
}
