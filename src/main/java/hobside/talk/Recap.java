package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Ledger;
import hobside.ledger.Step;
import hobside.measure.Range;
import java.util.Comparator;
import java.util.Optional;

/** Sentences for the look back over the whole plan. */
final class Recap {

    private Recap() {}

    /** "that is about a third less.", "that is about as much as before." or "that is more than before." */
    static String share(Range share) {
        if (Math.abs(share.typical()) < 0.03) {
            return "about as much as before.";
        }
        if (share.typical() > 0.97) {
            return "nearly all of it is gone.";
        }
        return share.typical() < 0 ? "that is more than before." : "that is " + Spoken.share(share) + " less.";
    }

    /** The step that saved most, as told. */
    static Optional<Step> most(Ledger ledger) {
        return ledger.steps().stream().filter(Step::counts).filter(step -> saved(step) >= 0.5).max(Comparator.comparingDouble(Recap::saved));
    }

    private static double saved(Step step) {
        return step.told().saved(Nutrient.FASAT, Basis.SERVE).typical();
    }
}
