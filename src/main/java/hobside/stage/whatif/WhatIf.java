package hobside.stage.whatif;

import hobside.dish.Change;
import hobside.dish.Kit;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Reason;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.guide.Allergens;
import hobside.guide.Cautions;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Ledger;
import hobside.ledger.Totals;
import hobside.measure.Range;
import hobside.talk.Demo;
import hobside.talk.Supposing;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Tries out what a plan would come to with something else, beside the plan as it stands and the dish as it is cooked here.
 *
 * <p>The figures are those of the ledger of the plan as it would be: there is no other way of reckoning here. What does not change
 * while one asks is worked out once.
 */
public final class WhatIf {

    private final Demo plan;
    private final Ground ground;
    private final Kit kit;
    private final Totals usual;
    private final Totals planned;
    private final Set<Change> blocked;
    private final Set<String> cautions;
    private final Breaks breaks;

    private WhatIf(Demo plan, Ground ground) {
        this.plan = plan;
        this.ground = ground;
        this.kit = Kit.typical(ground.books().cookery()).remembering();
        this.usual = Ledger.totals(plan.dish(), List.of(), ground.books(), kit);
        this.planned = totals(plan.plan());
        this.blocked = blocked(plan.plan()).keySet();
        this.cautions = due(plan).stream().map(Cautions.Due::said).collect(Collectors.toSet());
        this.breaks = new Breaks(plan, ground, usual, planned);
    }

    /** About the plan of this demo as it stands. */
    public static WhatIf of(Demo plan, Ground ground) {
        return new WhatIf(plan, ground);
    }

    public Demo plan() {
        return plan;
    }

    public Ground ground() {
        return ground;
    }

    private Map<Change, String> blocked(Plan other) {
        return Working.of(plan.dish(), other.told(), kit).blocked();
    }

    private List<Cautions.Due> due(Demo demo) {
        return ground.beside().cautions().of(demo.dish(), demo.plan());
    }

    /** The plan as it stands, with nothing laid over it. */
    public Trial asPlanned() {
        return new Trial(plan, List.of(), new Trial.Reckoned(usual, planned, planned), new Trial.Told("", ""), Trial.Brings.NOTHING);
    }

    /** What it comes to with these, each laid over those before it. */
    public Trial trial(List<Notion> laid) {
        if (laid.isEmpty()) {
            return asPlanned();
        }
        Notion last = laid.get(laid.size() - 1);
        Trial.Reckoned reckoned = new Trial.Reckoned(usual, planned, totals(last));
        Comparison told = new Comparison(planned, reckoned.tried());
        String aloud = Supposing.in(ground.beside().tongue()).said(laid.stream().map(Notion::did).toList(), told);
        return new Trial(last.demo(), laid, reckoned, new Trial.Told(aloud, not(last, told)), brings(last.demo(), reckoned));
    }

    /** The totals with one "what if", as when many are set side by side. */
    Totals totals(Notion notion) {
        return totals(notion.demo().plan());
    }

    /** As the ledger has it: what cannot be made counts nowhere, not even where an uncertain factor would leave room for it. */
    private Totals totals(Plan other) {
        Set<Change> not = blocked(other).keySet();
        List<Change> made = other.told().stream().filter(change -> !not.contains(change)).toList();
        return Ledger.totals(plan.dish(), made, ground.books(), kit);
    }

    /** Why it cannot be made, if what it plans cannot. */
    public Optional<String> blocked(Notion notion) {
        Map<Change, String> all = blocked(notion.demo().plan());
        return notion.change().flatMap(change -> Optional.ofNullable(all.get(change)));
    }

    /** Allergens that the planned dish does not hold and this one does. */
    List<String> allergens(Demo other) {
        List<String> known = Allergens.of(plan.dish(), plan.plan()).after();
        return Allergens.of(other.dish(), other.plan()).after().stream().filter(key -> !known.contains(key)).toList();
    }

    private Trial.Brings brings(Demo other, Trial.Reckoned reckoned) {
        List<String> fresh = due(other).stream().map(Cautions.Due::said).filter(said -> !cautions.contains(said)).toList();
        return new Trial.Brings(allergens(other), fresh, breaks.of(other, reckoned.tried()), undone(other));
    }

    private List<String> undone(Demo other) {
        List<String> undone = new ArrayList<>();
        blocked(other.plan()).forEach((change, why) -> {
            if (!blocked.contains(change)) {
                undone.add("cannot " + Names.title(change, other.dish(), other.plan()) + ": " + why);
            }
        });
        return undone;
    }

    /** "It does not change the energy or the cost." and, for a change, what that kind of change does not do. */
    private String not(Notion last, Comparison told) {
        List<String> same = new ArrayList<>();
        sameFigure(told, Nutrient.FASAT, "the saturated fat", same);
        sameFigure(told, Nutrient.ENERC, "the energy", same);
        if (Written.moved(told.savedCost(Basis.SERVE), ground.beside().currency()).equals("same")) {
            same.add("the cost");
        }
        String figures = same.isEmpty() ? "" : "It does not change " + String.join(" or ", same) + ". ";
        return (figures + last.change().map(change -> reason(change).not()).orElse("")).strip();
    }

    private static void sameFigure(Comparison told, Nutrient nutrient, String name, List<String> same) {
        Range saved = told.saved(nutrient, Basis.SERVE).range();
        if (!told.saved(nutrient, Basis.SERVE).atLeast() && Written.moved(nutrient, saved).equals("same")) {
            same.add(name);
        }
    }

    private Reason reason(Change change) {
        return Reason.of(change, plan.dish(), ground.beside().substitutes(), ground.english());
    }
}
