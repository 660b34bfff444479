package hobside.talk.check;

import hobside.guide.Cautions;
import hobside.guide.Claim;
import hobside.guide.ClaimKind;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import hobside.guide.Sample;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.talk.Rounded;
import hobside.talk.Speech;
import hobside.talk.Stand;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * All that the words of a talk can be held against: the figures of the ledger with their ranges, the daily guides, one country's
 * claims, and the cautions that are due.
 */
public final class Facts {

    /** Whose claims are used when the demo's guide is of a body that has none. */
    public static final String DEFAULT_COUNTRY = "European Union";

    private final Stand stand;
    private final GuideBook book;
    private final String country;
    private final List<Known> known = new ArrayList<>();

    private Facts(Stand stand, GuideBook book, String country) {
        this.stand = stand;
        this.book = book;
        this.country = country;
        for (Topic topic : Topic.values()) {
            for (Basis basis : Basis.values()) {
                gather(topic, basis);
            }
        }
    }

    /** With the claims of the country or body of the demo's guide, else those of the European Union. */
    public static Facts of(Stand stand, GuideBook book) {
        String place = stand.beside().guide().map(guide -> guide.published().place()).orElse(DEFAULT_COUNTRY);
        return of(stand, book, place);
    }

    /** With the claims of this country or body, named as in the book; else those of the European Union. */
    public static Facts of(Stand stand, GuideBook book, String country) {
        boolean has = book.claims().stream().anyMatch(claim -> claim.published().place().equals(country));
        return new Facts(stand, book, has ? country : DEFAULT_COUNTRY);
    }

    private void gather(Topic topic, Basis basis) {
        Ledger ledger = stand.ledger();
        add(topic, basis, Known.Sense.START, -1, ledger.start());
        for (int i = 0; i < ledger.steps().size(); i++) {
            if (ledger.steps().get(i).counts()) {
                Comparison told = ledger.steps().get(i).told();
                add(topic, basis, Known.Sense.AFTER, i, told.after());
                add(topic, basis, Known.Sense.SAVED, i, told);
                add(topic, basis, Known.Sense.SINCE, i, new Comparison(ledger.start(), told.after()));
            }
        }
    }

    private void add(Topic topic, Basis basis, Known.Sense sense, int step, Totals totals) {
        Range range = totals.range(topic.of(basis, coin()));
        known.add(new Known(topic, basis, sense, step, range, Range.exactly(0), topic.finest() / 2, !topic.isComplete(totals.typical())));
    }

    private void add(Topic topic, Basis basis, Known.Sense sense, int step, Comparison pair) {
        ToDoubleFunction<Outcome> figure = topic.of(basis, coin());
        Range saved = pair.saved(figure);
        boolean open = !topic.isComplete(pair.before().typical()) || !topic.isComplete(pair.after().typical());
        known.add(new Known(topic, basis, sense, step, saved, share(topic, basis, pair, saved),
                Math.max(saidTo(topic, pair.before().range(figure)), saidTo(topic, pair.after().range(figure))), open));
    }

    /** Fat before and after is told to one step, whole grams or coarser; of all else the difference itself is rounded. */
    private static double saidTo(Topic topic, Range range) {
        return topic == Topic.SATURATED || topic == Topic.FAT ? Rounded.step(range, 1) : topic.finest();
    }

    private Range share(Topic topic, Basis basis, Comparison pair, Range saved) {
        if (!topic.isCost()) {
            return pair.savedShare(topic.nutrient(), basis).range();
        }
        double before = pair.before().typical().used(basis) * coin();
        return before == 0 ? Range.exactly(0) : saved.times(1 / before);
    }

    private double coin() {
        return 1 / currency().minorPerMajor();
    }

    List<Known> known() {
        return known;
    }

    Speech speech() {
        return Speech.in(stand.words());
    }

    /** Sentences are read in English alone; cautions are looked for in any language. */
    boolean isEnglish() {
        return stand.isEnglish();
    }

    Currency currency() {
        return stand.beside().currency();
    }

    List<Guide> guides() {
        return book.guides();
    }

    String country() {
        return country;
    }

    /** The chosen country's rows of a claim that fit the dish. */
    List<Claim> claims(ClaimKind kind) {
        return book.claims(kind, Sample.of(stand.ledger().start())).stream()
                .filter(claim -> claim.published().place().equals(country)).toList();
    }

    List<Cautions.Due> due() {
        return stand.beside().cautions().of(stand.demo().dish(), stand.demo().plan());
    }

    /** The index of the last step that counts; -1 when nothing is changed. */
    int last() {
        int last = -1;
        for (int i = 0; i < stand.ledger().steps().size(); i++) {
            last = stand.ledger().steps().get(i).counts() ? i : last;
        }
        return last;
    }

    /** The last step that counts before this one; -1 for the start. */
    int before(int step) {
        int before = -1;
        for (int i = 0; i < step && i < stand.ledger().steps().size(); i++) {
            before = stand.ledger().steps().get(i).counts() ? i : before;
        }
        return before;
    }

    Totals start() {
        return stand.ledger().start();
    }

    /** The totals that hold at a place: the start in the welcome, after the step at a step, else the end. */
    Totals at(Place place) {
        return switch (place.kind()) {
            case WELCOME -> stand.ledger().start();
            case STEP -> place.step() < stand.ledger().steps().size() ? stand.ledger().steps().get(place.step()).after() : stand.ledger().end();
            case WHOLE, RECAP -> stand.ledger().end();
        };
    }
}
