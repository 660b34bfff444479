package hobside.stage.whatif;

import hobside.advice.Limits;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Names;
import hobside.guide.Claim;
import hobside.guide.GuideBook;
import hobside.guide.Sample;
import hobside.guide.Verdict;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.ledger.Totals;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;

/**
 * What a plan keeps and another would not: numbers of label claims in the country of the demo's guide, and the limits that were set
 * for the demo. Where a claim can no longer be said, because a figure is missing, that counts as well.
 */
final class Breaks {

    /** Whose claims are used when the body of the guide has none, as in the truth check. */
    private static final String DEFAULT_COUNTRY = "European Union";

    private final Demo plan;
    private final Totals usual;
    private final Totals planned;
    private final List<Claim> met;

    Breaks(Demo plan, Ground ground, Totals usual, Totals planned) {
        this.plan = plan;
        this.usual = usual;
        this.planned = planned;
        String place = country(ground);
        this.met = ground.published().claims().stream().filter(claim -> claim.published().place().equals(place))
                .filter(claim -> meets(claim, planned)).toList();
    }

    private static String country(Ground ground) {
        GuideBook book = ground.published();
        String place = ground.beside().guide().map(guide -> guide.published().place()).orElse(DEFAULT_COUNTRY);
        return book.claims().stream().anyMatch(claim -> claim.published().place().equals(place)) ? place : DEFAULT_COUNTRY;
    }

    private boolean meets(Claim claim, Totals totals) {
        return claim.check(Sample.of(usual), Sample.of(totals)).verdict() == Verdict.MEETS;
    }

    List<String> of(Demo other, Totals tried) {
        List<String> broken = new ArrayList<>();
        for (Claim claim : met) {
            if (!meets(claim, tried)) {
                broken.add("no longer " + claim.published().name() + ": " + claim.check(Sample.of(usual), Sample.of(tried)).sentence());
            }
        }
        limits(other, tried, broken);
        return broken;
    }

    private void limits(Demo other, Totals tried, List<String> broken) {
        Limits limits = plan.limits();
        for (Change change : other.plan().told()) {
            boolean fresh = !plan.plan().told().contains(change);
            boolean another = (change.kind() == ChangeKind.SWAP || change.kind() == ChangeKind.LEAVE_OUT) && limits.keep().contains(change.of());
            if (fresh && (another || limits.untouched().contains(change.of()))) {
                broken.add("the limits of this demo say that the " + Names.of(other.dish(), other.plan()).apply(change.of()) + " stays");
            }
        }
        Figure saved = new Comparison(planned, tried).savedCost(Basis.SERVE);
        if (!Double.isNaN(limits.mostExtraCost()) && (saved.atLeast() || -saved.typical() > limits.mostExtraCost())) {
            broken.add(saved.atLeast() ? "the limit for the cost cannot be checked: a price is missing" : "it costs more than the limits of this demo allow");
        }
    }
}
