package hobside.stage.whatif;

import hobside.ledger.Comparison;
import hobside.ledger.Totals;
import hobside.talk.Demo;
import java.util.List;

/**
 * What a plan would come to.
 *
 * @param demo the demo as it would be
 * @param laid the "what ifs" laid over the plan, in the order asked; none for the plan as it stands
 * @param reckoned the totals
 * @param words what is said and told of it
 * @param brings what it brings along that the plan does not have
 */
public record Trial(Demo demo, List<Notion> laid, Reckoned reckoned, Told words, Brings brings) {

    /** The totals of the usual dish, of the plan as it stands, and of the plan with all that is supposed. */
    public record Reckoned(Totals usual, Totals planned, Totals tried) {}

    /**
     * In words.
     *
     * @param aloud what can be said to the audience, in the language of the talk
     * @param not what it does not change
     */
    public record Told(String aloud, String not) {}

    /**
     * What comes with it.
     *
     * @param allergens keys of allergens that the planned dish does not hold
     * @param cautions what has to be said now and was not called for before
     * @param breaks claims that the plan meets and this does not, and limits of the demo that it goes beyond
     * @param undone changes of the plan that can no longer be made, with the reason
     */
    public record Brings(List<String> allergens, List<String> cautions, List<String> breaks, List<String> undone) {

        static final Brings NOTHING = new Brings(List.of(), List.of(), List.of(), List.of());

        public Brings {
            allergens = List.copyOf(allergens);
            cautions = List.copyOf(cautions);
            breaks = List.copyOf(breaks);
            undone = List.copyOf(undone);
        }
    }

    public Trial {
        laid = List.copyOf(laid);
    }

    /** From the plan as it stands to what is supposed. */
    public Comparison thanPlanned() {
        return new Comparison(reckoned.planned(), reckoned.tried());
    }

    /** From the dish as it is cooked here to what is supposed. */
    public Comparison thanUsual() {
        return new Comparison(reckoned.usual(), reckoned.tried());
    }

    /** All that is supposed, in a few words. */
    public String title() {
        return String.join("; ", laid.stream().map(Notion::title).toList());
    }

    /** Without the last "what if" laid over it, as a list to be tried again. */
    public List<Notion> withoutLast() {
        return laid.subList(0, Math.max(0, laid.size() - 1));
    }
}
