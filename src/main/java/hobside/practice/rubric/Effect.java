package hobside.practice.rubric;

import hobside.dish.Change;
import hobside.dish.CutDown;
import hobside.dish.Ingredient;
import hobside.dish.Item;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Totals;
import hobside.measure.Range;
import hobside.talk.Rounded;
import hobside.talk.Stand;
import java.util.ArrayList;
import java.util.List;

/** The true figures of a change, each with its range and with what rounding for the ear allows. */
final class Effect {

    /** When a figure holds. */
    enum Sense { SAVED, BEFORE, AFTER, START }

    /**
     * One figure.
     *
     * @param size without its sign
     * @param room what rounding allows to either side
     */
    record Truth(Topic topic, Basis basis, Sense sense, Range size, double room) {

        boolean fits(Number said) {
            double slack = Math.max(room, said.fine());
            return said.fits(size, slack);
        }
    }

    private final List<Truth> truths = new ArrayList<>();
    private final List<Double> shares = new ArrayList<>();
    private final List<Double> weights = new ArrayList<>();
    private final List<Double> amounts = new ArrayList<>();
    private final Comparison told;
    private final double coin;

    private Effect(Stand stand, Subject.Told change) {
        this.told = change.step().told();
        this.coin = 1 / stand.beside().currency().minorPerMajor();
        for (Topic topic : Topic.values()) {
            for (Basis basis : List.of(Basis.SERVE, Basis.POT)) {
                gather(topic, basis, stand.ledger().start());
            }
        }
        shares(stand, change.change());
        weights(stand, change.change());
    }

    static Effect of(Stand stand, Subject.Told change) {
        return new Effect(stand, change);
    }

    private void gather(Topic topic, Basis basis, Totals start) {
        Range before = range(topic, basis, told.before());
        Range after = range(topic, basis, told.after());
        boolean fat = topic == Topic.SATURATED || topic == Topic.FAT;
        double step = fat ? Math.max(Rounded.step(before, 1), Rounded.step(after, 1)) : topic.finest();
        add(topic, basis, Sense.SAVED, size(saved(topic, basis)), step);
        add(topic, basis, Sense.BEFORE, before, step);
        add(topic, basis, Sense.AFTER, after, step);
        add(topic, basis, Sense.START, range(topic, basis, start), step);
    }

    private void add(Topic topic, Basis basis, Sense sense, Range size, double step) {
        truths.add(new Truth(topic, basis, sense, size, step));
    }

    private static Range size(Range range) {
        return range.typical() < 0 ? range.times(-1) : range;
    }

    private Range range(Topic topic, Basis basis, Totals totals) {
        return topic == Topic.COST ? totals.used(basis).range().times(coin) : totals.of(topic.nutrient(), basis).range().times(topic.factor());
    }

    /** How much less there is through the change; negative where there is more. */
    Range saved(Topic topic, Basis basis) {
        return topic == Topic.COST ? told.savedCost(basis).range().times(coin) : told.saved(topic.nutrient(), basis).range().times(topic.factor());
    }

    /** Whether the change leaves a serve as it was, as far as it is worth a word. */
    boolean isSame(Topic topic) {
        double saved = Math.abs(saved(topic, Basis.SERVE).typical());
        double worth = switch (topic) {
            case SATURATED, FAT -> 0.5;
            case SALT -> 0.05;
            case KILOCALORIES, KILOJOULES -> 0.03 * range(topic, Basis.SERVE, told.before()).typical();
            case COST -> 0.05;
        };
        return saved <= worth;
    }

    private void shares(Stand stand, Change change) {
        for (Basis basis : List.of(Basis.SERVE, Basis.POT)) {
            for (Nutrient nutrient : List.of(Nutrient.FASAT, Nutrient.FAT, Nutrient.ENERC_KCAL, Nutrient.NA)) {
                shares.add(Math.abs(told.savedShare(nutrient, basis).range().typical()));
            }
            double paid = told.before().used(basis).typical();
            shares.add(paid == 0 ? 0 : Math.abs(told.savedCost(basis).typical()) / paid);
        }
        double all = stand.pots().before().contents().known(Nutrient.FASAT);
        stand.pots().before().item(change.of()).ifPresent(item -> shares.add(all == 0 ? 0 : item.inDish().contents().known(Nutrient.FASAT) / all));
        if (change instanceof CutDown less) {
            shares.add(1 - less.keep());
        }
        if (change instanceof SmallerServe smaller) {
            shares.add(1 - smaller.share());
        }
    }

    /** Grams that are cut off or poured away, and grams of food that go in. */
    private void weights(Stand stand, Change change) {
        stand.pots().after().item(change.of()).ifPresent(item -> {
            weights.add(Math.max(0, item.thrown().grams() - item.ran().grams() + item.loose().grams()));
            weights.add(Math.max(0, item.ran().grams() - item.loose().grams()));
        });
        stand.pots().before().item(change.of()).map(Item::origin).map(Ingredient::quantity).ifPresent(quantity -> {
            amounts.add(quantity.asBought().value());
            if (change instanceof CutDown less) {
                amounts.add(quantity.asBought().value() * less.keep());
                amounts.add(quantity.asBought().value() * (1 - less.keep()));
            }
        });
        if (change instanceof Swap swap) {
            amounts.add(swap.quantity().asBought().value());
        }
    }

    /** The figure that a number is, of one of these topics; null when it is none. */
    Truth match(Number said, Topic topic, List<Basis> bases) {
        for (Truth truth : truths) {
            if (truth.topic() == topic && bases.contains(truth.basis()) && truth.fits(said)) {
                return truth;
            }
        }
        return null;
    }

    /** Whether it is the weight of what is cut off or poured away: to a tenth, as scales in kitchens are read. */
    boolean isWeight(Number said) {
        return weights.stream().anyMatch(weight -> weight >= 1 && Math.abs(weight - said.value()) <= Math.max(said.fine(), weight / 10));
    }

    boolean isAmount(Number said) {
        return amounts.stream().anyMatch(amount -> Math.abs(amount - said.value()) <= Math.max(1, amount / 20));
    }

    /** Whether a share is one that is gone, or what is left of it. */
    boolean isShare(Number said, double room) {
        return shares.stream().filter(share -> share >= 0.02).anyMatch(share -> said.fits(Range.exactly(share), room) || said.fits(Range.exactly(1 - share), room));
    }
}
