package hobside.talk.check;

import hobside.ledger.Basis;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Holds each figure against all figures of the ledger that it can mean in its place. It stands when one of them lies within
 * its range and what rounding for the ear allows; so "about 12 grams" stands for 11.6, and for 9 to 13 with a wide range.
 */
final class NumberCheck {

    /** A figure this near to that of another basis is taken for it. */
    private static final double SAME = 0.06;

    private final Facts facts;
    private final Meant meant;
    private final FigureReader reader;
    private final Telling telling;

    NumberCheck(Facts facts) {
        this.facts = facts;
        this.meant = new Meant(facts);
        this.reader = new FigureReader(facts.currency());
        this.telling = new Telling(facts);
    }

    List<Finding> check(String words, Sentence sentence, Place place) {
        List<Finding> findings = new ArrayList<>();
        List<Told> all = reader.read(sentence);
        double common = common(all);
        for (Told told : all) {
            List<Known> candidates = meant.by(told, sentence, place);
            if (!candidates.isEmpty() && candidates.stream().noneMatch(known -> stands(told, known, common)) && !isGuide(told, sentence)) {
                findings.add(finding(words, told, sentence, place, candidates));
            }
        }
        return findings;
    }

    /**
     * Figures that are told together are rounded to one step, so that a listener who reckons along finds that they agree: "that takes
     * about 10 grams off: it was about 35, now it is about 25". Half that step, where three or more are all whole fives or tens.
     */
    private static double common(List<Told> all) {
        for (int step : new int[] {10, 5}) {
            if (all.size() >= TOGETHER && all.stream().allMatch(told -> told.value() % step == 0)) {
                return step / 2.0;
            }
        }
        return 0;
    }

    private static final int TOGETHER = 3;

    private static boolean stands(Told told, Known known, double common) {
        Range size = size(known);
        boolean amount = known.isAmount();
        boolean open = known.open() && (!amount || told.value() >= size.low());
        return open || told.fits(size, Math.max(known.saidTo(), common));
    }

    /** A figure without its sign: what goes up by 2 is said as 2 as well. */
    private static Range size(Known known) {
        return known.range().typical() < 0 ? known.range().times(-1) : known.range();
    }

    /** A figure of a daily guide, where the words speak of a day or a guide. */
    private boolean isGuide(Told told, Sentence sentence) {
        boolean day = sentence.has(" day") || sentence.has("adult") || sentence.has("daily") || sentence.has("guide") || sentence.has("reference");
        return day && facts.guides().stream().flatMap(guide -> guide.lines().stream())
                .anyMatch(line -> Math.abs(line.figure() - told.value()) < 1e-9);
    }

    private Finding finding(String words, Told told, Sentence sentence, Place place, List<Known> candidates) {
        Known near = nearest(told, candidates);
        Optional<Known> other = ofAnotherBasis(told, sentence, place);
        int from = sentence.from() + told.from();
        int to = sentence.from() + told.to();
        String reason = "The ledger says " + telling.of(near) + ".";
        return other.isPresent()
                ? new Finding(Finding.Kind.BASIS, from, to, words.substring(from, to), reason + " This is the figure for "
                        + other.get().basis().words() + ".", telling.source(), telling.sentence(near))
                : new Finding(Finding.Kind.NUMBER, from, to, words.substring(from, to), reason, telling.source(), telling.sentence(near));
    }

    private Known nearest(Told told, List<Known> candidates) {
        Known best = candidates.get(0);
        for (Known known : candidates) {
            best = off(told, known) < off(told, best) ? known : best;
        }
        return best;
    }

    private static double off(Told told, Known known) {
        double likely = known.sense() == Known.Sense.SINCE ? 1.01 : 1;
        return likely * Math.abs(Math.log((Math.abs(known.range().typical()) + 0.1) / (told.value() + 0.1)));
    }

    private Optional<Known> ofAnotherBasis(Told told, Sentence sentence, Place place) {
        Set<Basis> others = Told.anyBasis();
        others.removeAll(told.bases());
        return meant.by(told.with(others), sentence, place).stream()
                .filter(known -> Math.abs(size(known).typical() - told.value()) <= SAME * told.value()).findFirst();
    }
}
