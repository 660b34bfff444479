package hobside.guide;

import hobside.food.EnergyRule;
import java.util.Optional;

/**
 * One published way to reckon the energy of food: so much for each gram of protein, fat, carbohydrate, fibre and alcohol.
 *
 * <p>Kilojoules and kilocalories are each summed by their own factors, never converted, unless the rule itself says what a
 * kilocalorie is to be: butter with 0.85 g protein, 81.11 g fat and 0.06 g carbohydrate has 3,016.54 kJ and 733.63 kcal by the
 * EU's two columns, not 3,016.54 ÷ 4.184 = 721. Different correct methods give different energies: show the method beside the number.
 */
public record EnergyFactors(Published published, PerGram kilojoules, Kilocalories kilocalories) {

    /** Energy of one gram of each. */
    public record PerGram(double protein, double fat, double carbohydrate, double fibre, double alcohol) {

        double of(Fuel fuel) {
            return protein * fuel.protein() + fat * fuel.fat() + carbohydrate * fuel.carbohydrate() + fibre * fuel.fibre()
                    + alcohol * fuel.alcohol();
        }
    }

    /** How kilocalories are found: by a column of their own, or by dividing the kilojoules. */
    public record Kilocalories(Optional<PerGram> column, double kilojoulesEach) {

        public static Kilocalories of(PerGram column) {
            return new Kilocalories(Optional.of(column), Double.NaN);
        }

        /** FSANZ: 4.18 kJ to the kilocalorie. */
        public static Kilocalories dividing(double kilojoulesEach) {
            if (!(kilojoulesEach > 4 && kilojoulesEach < 4.3)) {
                throw new IllegalArgumentException("no kilocalorie has " + kilojoulesEach + " kJ");
            }
            return new Kilocalories(Optional.empty(), kilojoulesEach);
        }
    }

    /** Energy by one method, not rounded. Shown in whole kJ and whole kcal. */
    public record Energy(double kilojoules, double kilocalories) {

        /** "700 kJ (167 kcal)". */
        public String written() {
            return Math.round(kilojoules) + " kJ (" + Math.round(kilocalories) + " kcal)";
        }
    }

    /** The same as a rule to hold a food packet against. */
    public EnergyRule rule() {
        return grams -> {
            Energy energy = of(new Fuel(grams.protein(), grams.fat(), grams.carbohydrate(), grams.fibre(), grams.alcohol()));
            return new EnergyRule.Sum(energy.kilojoules(), energy.kilocalories());
        };
    }

    public Energy of(Fuel fuel) {
        double energy = kilojoules.of(fuel);
        return new Energy(energy, kilocalories.column().map(column -> column.of(fuel)).orElse(energy / kilocalories.kilojoulesEach()));
    }
}
