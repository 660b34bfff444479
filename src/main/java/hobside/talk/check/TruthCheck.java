package hobside.talk.check;

import hobside.talk.Cue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Checks typed words of a talk: figures against the ledger, absolutes, medical promises, words of labels against their published
 * numbers, amounts mixed up with concentrations, shaming, and cautions that got lost.
 *
 * <p>It reads English and knows patterns, not meaning: what it finds is worth a look, and what it does not find is not thereby true.
 * Where words leave open what a figure is about, it says nothing rather than something wrong.
 */
public final class TruthCheck {

    private final NumberCheck numbers;
    private final ShareCheck shares;
    private final DirectionCheck directions;
    private final ClaimCheck claims;
    private final PatternCheck patterns;
    private final CareCheck care;

    private TruthCheck(Facts facts) {
        this.numbers = new NumberCheck(facts);
        this.shares = new ShareCheck(facts);
        this.directions = new DirectionCheck(facts);
        this.claims = new ClaimCheck(facts);
        this.patterns = new PatternCheck(facts);
        this.care = new CareCheck(facts);
    }

    public static TruthCheck of(Facts facts) {
        return new TruthCheck(facts);
    }

    /** What is to be found in the words of one cue, in the order of the words. */
    public List<Finding> check(String words, Place place) {
        List<Finding> findings = new ArrayList<>();
        for (Sentence sentence : Sentence.of(words)) {
            findings.addAll(numbers.check(words, sentence, place));
            findings.addAll(shares.check(words, sentence, place));
            findings.addAll(directions.check(words, sentence, place));
            findings.addAll(claims.check(words, sentence, place));
            findings.addAll(patterns.check(words, sentence, place));
        }
        findings.sort(Comparator.comparingInt(Finding::from));
        return List.copyOf(findings);
    }

    /** The cautions that the demo needs and none of these cues says. */
    public List<Finding> missing(List<Cue> cues) {
        return care.missing(cues);
    }
}
