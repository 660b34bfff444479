package hobside.advice;

import hobside.dish.Item;
import hobside.dish.Pot;
import hobside.dish.Portion;
import hobside.dish.Skim;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import java.util.List;

/** What of a plan adds up over its ingredients: figures of the whole pot, those of its free fat, and those of the wishes. */
final class Tally {

    static final int FASAT = 0;
    static final int ENERGY = 1;
    static final int GRAMS = 2;
    static final int COST = 3;
    static final int MEAT = 4;
    static final int FREE_FASAT = 5;
    static final int FREE_ENERGY = 6;
    static final int FREE_GRAMS = 7;
    static final int LIQUID = 8;
    static final int CHANGES = 9;
    static final int MINUTES = 10;
    static final int WATER = 11;
    static final int DEPARTURE = 12;
    static final int UNPRICED = 13;
    static final int SIZE = 14;

    private Tally() {}

    static double[] of(Pot pot, PriceList prices) {
        double[] sum = new double[SIZE];
        for (Item item : pot.items()) {
            sum[FASAT] += item.inDish().contents().known(Nutrient.FASAT);
            sum[ENERGY] += item.inDish().contents().known(Nutrient.ENERC);
            sum[COST] += item.bought() * prices.minorPerGram(item.food()).orElse(0);
            sum[MEAT] += item.food().handling().melts().isPresent() ? item.bought() * item.food().handling().edible() : 0;
            Portion free = item.food().isPureFat() ? item.inDish() : item.loose();
            sum[FREE_FASAT] += free.contents().known(Nutrient.FASAT);
            sum[FREE_ENERGY] += free.contents().known(Nutrient.ENERC);
            sum[FREE_GRAMS] += free.grams();
        }
        sum[GRAMS] = pot.cookedGrams();
        sum[LIQUID] = Skim.liquid(pot);
        return sum;
    }

    /** Counts a wish in. */
    static void count(double[] sum, Wish wish) {
        sum[CHANGES] += 1;
        sum[MINUTES] += wish.minutes();
        sum[WATER] += wish.water();
        sum[DEPARTURE] += wish.departure();
        sum[UNPRICED] += wish.priced() ? 0 : 1;
    }

    static void count(double[] sum, List<Wish> wishes) {
        wishes.forEach(wish -> count(sum, wish));
    }

    static double[] minus(double[] one, double[] other) {
        double[] out = one.clone();
        for (int i = 0; i < SIZE; i++) {
            out[i] -= other[i];
        }
        return out;
    }

    static double[] plus(double[] one, double[] other) {
        double[] out = one.clone();
        for (int i = 0; i < SIZE; i++) {
            out[i] += other[i];
        }
        return out;
    }

    /** A weighing with one weight. */
    static double[] weight(int of, double weight) {
        double[] weights = new double[SIZE];
        weights[of] = weight;
        return weights;
    }

    static double weigh(double[] weights, double[] sum) {
        double all = 0;
        for (int i = 0; i < SIZE; i++) {
            all += weights[i] * sum[i];
        }
        return all;
    }
}
