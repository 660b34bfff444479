package hobside.file;

import hobside.advice.Offers;
import hobside.advice.Pantry;
import hobside.food.Shelf;
import hobside.food.Substitutes;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import hobside.ledger.Books;
import hobside.talk.Stand;
import java.util.List;
import java.util.Optional;

/**
 * What the program knows and does not change while it runs: foods, prices, cookery, substitutes, guides and cautions. What the
 * first picture does not need is fetched when it is first asked for.
 */
public final class Study {

    /** The guide that is used until another is chosen. */
    private static final String FIRST_GUIDE = "eu-ri";

    private final Shelf shelf;
    private final Books books;
    private List<Guide> guides;
    private Substitutes substitutes;
    private GuideBook published;

    private Study(Shelf shelf, Books books) {
        this.shelf = shelf;
        this.books = books;
    }

    /** Sentences about files of the kitchen that could not be read are in the library. */
    public static Study of(Library library) {
        return new Study(library.shelf(), new Books(library.cookery(), library.prices()));
    }

    public Shelf shelf() {
        return shelf;
    }

    public Books books() {
        return books;
    }

    public synchronized Substitutes substitutes() {
        if (substitutes == null) {
            substitutes = Library.bundledSubstitutes(shelf);
        }
        return substitutes;
    }

    /** All yardsticks: guides, claims, bands, energy factors and cautions. */
    public synchronized GuideBook published() {
        if (published == null) {
            published = Library.bundledGuides();
        }
        return published;
    }

    public Offers offers() {
        return new Offers(new Pantry(shelf::food, substitutes()), books);
    }

    public synchronized List<Guide> guides() {
        if (guides == null) {
            guides = Library.bundledDailyGuides();
        }
        return guides;
    }

    /** The guide of this key, else the one to begin with. */
    public Optional<Guide> guide(String key) {
        Guide chosen = guideOrNull(key);
        return Optional.ofNullable(chosen == null ? guideOrNull(FIRST_GUIDE) : chosen);
    }

    private Guide guideOrNull(String key) {
        for (Guide guide : guides()) {
            if (guide.published().key().equals(key)) {
                return guide;
            }
        }
        return null;
    }

    /** What a talk about a demo is written with. */
    public Stand.Beside beside(String guideKey) {
        return new Stand.Beside(books.prices().currency(), guide(guideKey), published().cautions(), substitutes());
    }
}
