package hobside.file;

import hobside.advice.Offers;
import hobside.advice.Pantry;
import hobside.food.EnergyRule;
import hobside.food.Food;
import hobside.food.Shelf;
import hobside.food.Substitutes;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import hobside.ledger.Books;
import hobside.practice.rubric.Concepts;
import hobside.talk.Demo;
import hobside.talk.Script;
import hobside.talk.Stand;
import hobside.talk.plain.Language;
import hobside.talk.plain.Pace;
import hobside.talk.plain.PlainWords;
import hobside.talk.plain.Rules;
import hobside.words.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the program knows and does not change while it runs: foods, prices, cookery, substitutes, guides and cautions. What the
 * first picture does not need is fetched when it is first asked for.
 */
public final class Study {

    /** The guide that is used until another is chosen. */
    private static final String FIRST_GUIDE = "eu-ri";

    private final Library library;
    private final Books books;
    private List<Guide> guides;
    private Substitutes substitutes;
    private GuideBook published;
    private final Map<String, Words> words = new HashMap<>();
    private final Map<String, Rules> rules = new HashMap<>();
    private final Map<String, Concepts> concepts = new HashMap<>();

    private Study(Library library) {
        this.library = library;
        this.books = new Books(library.cookery(), library.prices());
    }

    /** Sentences about files of the kitchen that could not be read are in the library. */
    public static Study of(Library library) {
        return new Study(library);
    }

    /** The same with another stock of foods and prices, after the user has put something on the shelf or has chosen a price list. */
    public synchronized Study with(Library other) {
        Study study = new Study(other);
        study.guides = guides;
        study.substitutes = substitutes;
        study.published = published;
        study.words.putAll(words);
        study.rules.putAll(rules);
        return study;
    }

    public Shelf shelf() {
        return library.shelf();
    }

    /** Whether a food is the user's own, to be changed and deleted. */
    public boolean isOwn(Food food) {
        return library.stock().own().contains(food.id());
    }

    /** All price lists, and the one in use. */
    public Library.Prices prices() {
        return library.priced();
    }

    /** The rule that packets are held against: the factors of the European Union, Regulation 1169/2011, Annex XIV. */
    public EnergyRule packetRule() {
        return published().energy("eu-1169").orElseThrow(() -> new IllegalStateException("the factors of Annex XIV are missing")).rule();
    }

    /** The words of the screens' own language. */
    public Words english() {
        return words(Script.FIRST_LANGUAGE);
    }

    /** The words of a language; those of the first where it has none. */
    public synchronized Words words(String code) {
        Words known = words.get(code);
        if (known == null) {
            known = WordFiles.read(WordFiles.LANGUAGES.contains(code) ? code : Script.FIRST_LANGUAGE);
            words.put(code, known);
        }
        return known;
    }

    /** What a talk in this language is measured by, at this pace. */
    public synchronized Rules rules(Script script) {
        Rules known = rules.get(script.language());
        if (known == null) {
            known = Rules.of(script.language(), Language.of(script.language())
                    .map(language -> PlainWords.of(WordFiles.plainWords(script.language()), language)).orElse(PlainWords.NONE));
            rules.put(script.language(), known);
        }
        int rate = Math.max(Pace.SLOWEST, Math.min(Pace.FASTEST, script.pacing().wordsPerMinute()));
        return known.withPace(new Pace(rate));
    }

    /** What the answers of trainees are held against, in the language of this script. */
    public hobside.practice.rubric.Rules rubric(Script script) {
        return new hobside.practice.rubric.Rules(concepts(script.language()), rules(script), published());
    }

    private synchronized Concepts concepts(String code) {
        return concepts.computeIfAbsent(code, fresh -> Concepts.of(WordFiles.concepts(fresh)));
    }

    public Books books() {
        return books;
    }

    public synchronized Substitutes substitutes() {
        if (substitutes == null) {
            substitutes = Library.bundledSubstitutes(shelf());
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

    /** What advice can draw on. */
    public Pantry pantry() {
        return new Pantry(shelf()::food, substitutes(), english());
    }

    public Offers offers() {
        return new Offers(pantry(), books);
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

    /** What the talk of a demo is written with: the guide it is held against, and the words of its language. */
    public Stand.Beside beside(Demo demo) {
        return new Stand.Beside(guide(demo.guide()), published().cautions(), substitutes(),
                new Stand.Tongue(words(demo.script().language()), books.prices().currency()));
    }
}
