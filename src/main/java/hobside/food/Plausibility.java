package hobside.food;

import hobside.measure.Density;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Holds the figures of a packet against each other and says what is hard to believe.
 *
 * <p>Figures are compared as printed, because that is where they were rounded; only what 100 g can hold is looked at per 100 g.
 * The room left for rounding is ours: for energy 10 %, or what half a gram each of fat, carbohydrate, protein and fibre comes to
 * by the EU factors (0.5 × (37 + 17 + 17 + 8) = 39.5, so 40 kJ; 0.5 × (9 + 4 + 4 + 2) = 9.5, so 10 kcal), whichever is more.
 * A kilocalorie has from 4.0 kJ (fibre, 8/2) to 4.34 kJ (organic acids, 13/3): Regulation (EU) 1169/2011, Annex XIV.
 */
public final class Plausibility {

    static final double ENERGY_SHARE = 0.10;
    static final double ENERGY_KILOJOULES = 40;
    static final double ENERGY_KILOCALORIES = 10;
    private static final double LEAST_RATIO = 8 / 2.0;
    private static final double MOST_RATIO = 13 / 3.0;

    /** Fibre that may be there when none is printed, g per 100 g: hardly any packet that has more keeps quiet about it. Ours. */
    private static final double QUIET_FIBRE = 15;

    /** Each of the five sums was rounded by up to half a gram. Ours. */
    private static final double SUM_SLACK = 2.5;

    /** g. Water is known from a table, whose components were analysed one by one; as in the files. Ours. */
    private static final double TABLE_SLACK = 5;

    /** As in the files: 0.5 g or 4 % for fatty acids that were rounded one by one. Ours. */
    private static final double ACIDS_SLACK = 0.5;
    private static final double ACIDS_SHARE = 0.04;

    /** g. Tables give fat in hundredths and fatty acids in thousandths. */
    private static final double LAST_DIGIT = 0.01;

    /** g. Carbohydrate with fibre is what is left when all else is taken off, so it may be that much too small; as in the files. Ours. */
    private static final double BY_DIFFERENCE = 1;

    /** mg per 100 g. Soy sauce has 5,493, fish sauce 7,851 (USDA SR28 no. 16123, 06179); above stand salt and stock cubes. The line is ours. */
    private static final double SALTY = 8000;

    /** mg; the EU prints less than 5 mg as 0 (guidance of 2012), so a smaller figure was meant in grams. */
    private static final double SODIUM_IN_GRAMS = 1;

    private final PacketLabel label;
    private final OptionalDouble grams;
    private final List<Doubt> doubts = new ArrayList<>();

    private Plausibility(PacketLabel label, OptionalDouble grams) {
        this.label = label;
        this.grams = grams;
    }

    /** All doubts, those that cannot be overruled first. */
    public static List<Doubt> of(PacketLabel label, Optional<Density> density, EnergyRule rule) {
        Plausibility checks = new Plausibility(label, label.grams(density));
        checks.withoutEnergy();
        checks.energy(rule);
        return List.copyOf(checks.doubts);
    }

    /** The same without the energy, which is reckoned by published factors. */
    public static List<Doubt> withoutEnergy(PacketLabel label, Optional<Density> density) {
        Plausibility checks = new Plausibility(label, label.grams(density));
        checks.withoutEnergy();
        return List.copyOf(checks.doubts);
    }

    private void withoutEnergy() {
        amounts();
        sum();
        units();
        fattyAcids();
        carbohydrate();
        sodium();
    }

    private void doubt(Doubt.Check check, Printed about, String words) {
        doubts.add(new Doubt(check, about, words));
    }

    private void amounts() {
        if (grams.isEmpty()) {
            return;
        }
        for (Printed each : Printed.values()) {
            double per100 = label.orZero(each) * 100 / grams.getAsDouble();
            if (per100 > each.most() * (1 + 1e-9)) {
                doubt(Doubt.Check.AMOUNT, each, "That is " + written(per100) + " " + each.unit() + " in 100 g, and 100 g of no food hold more than "
                        + written(each.most()) + ". Look at the figure, its unit, and what the figures are for.");
            }
        }
    }

    private void sum() {
        double salt = label.has(Printed.SALT) ? label.orZero(Printed.SALT) : label.orZero(Printed.SODIUM) * PacketLabel.SALT_PER_SODIUM / 1000;
        double carbohydrate = label.has(Printed.TOTAL_CARBOHYDRATE) ? label.orZero(Printed.TOTAL_CARBOHYDRATE)
                : label.orZero(Printed.CARBOHYDRATE) + label.orZero(Printed.FIBRE);
        double sum = label.orZero(Printed.FAT) + carbohydrate + label.orZero(Printed.PROTEIN) + salt + label.orZero(Printed.ALCOHOL)
                + label.orZero(Printed.WATER);
        double slack = label.has(Printed.WATER) ? TABLE_SLACK : SUM_SLACK;
        if (grams.isPresent() && sum > grams.getAsDouble() + slack) {
            doubt(Doubt.Check.SUM, Printed.FAT, "Fat, carbohydrate, fibre, protein and salt add up to " + written(sum) + " g in "
                    + written(grams.getAsDouble()) + " g of food. There is room for " + written(slack) + " g of rounding, not for more.");
        }
    }

    private void units() {
        double kilojoules = label.orZero(Printed.KILOJOULES);
        double kilocalories = label.orZero(Printed.KILOCALORIES);
        boolean low = kilojoules + 0.5 < LEAST_RATIO * (kilocalories - 0.5);
        boolean high = kilojoules - 0.5 > MOST_RATIO * (kilocalories + 0.5);
        if (label.has(Printed.KILOJOULES, Printed.KILOCALORIES) && (low || high)) {
            doubt(Doubt.Check.UNITS, Printed.KILOCALORIES, written(kilocalories) + " kcal are from " + written(Math.floor(LEAST_RATIO * kilocalories)) + " to "
                    + written(Math.ceil(MOST_RATIO * kilocalories)) + " kJ, whatever they come from (EU factors); here stand " + written(kilojoules)
                    + " kJ." + (kilocalories > kilojoules ? " Have the two changed places?" : ""));
        }
    }

    private void fattyAcids() {
        double fat = label.orZero(Printed.FAT);
        double saturates = label.orZero(Printed.SATURATES);
        double acids = saturates + label.orZero(Printed.MONOUNSATURATES) + label.orZero(Printed.POLYUNSATURATES);
        // Up to half a gram of fat may be printed as 0 while its saturates are still printed in tenths (EU guidance of 2012).
        if (label.has(Printed.FAT) && saturates > (fat == 0 ? ACIDS_SLACK : fat + LAST_DIGIT)) {
            doubt(Doubt.Check.FATTY_ACIDS, Printed.SATURATES, "Saturates of " + written(saturates) + " g are more than the fat of " + written(fat)
                    + " g, of which they are a part.");
        } else if (label.has(Printed.FAT) && acids > fat + Math.max(ACIDS_SLACK, ACIDS_SHARE * fat)) {
            doubt(Doubt.Check.FATTY_ACIDS, Printed.FAT, "Saturates, mono- and polyunsaturates add up to " + written(acids) + " g, more than the fat of "
                    + written(fat) + " g.");
        }
    }

    private void carbohydrate() {
        boolean total = label.has(Printed.TOTAL_CARBOHYDRATE);
        Printed whole = total ? Printed.TOTAL_CARBOHYDRATE : Printed.CARBOHYDRATE;
        double slack = total ? BY_DIFFERENCE : 0;
        if (label.has(whole, Printed.SUGARS) && label.orZero(Printed.SUGARS) > label.orZero(whole) + slack) {
            doubt(Doubt.Check.CARBOHYDRATE, Printed.SUGARS, "Sugars of " + written(label.orZero(Printed.SUGARS)) + " g are more than the carbohydrate of "
                    + written(label.orZero(whole)) + " g, of which they are a part.");
        }
        for (Printed part : List.of(Printed.CARBOHYDRATE, Printed.FIBRE)) {
            if (total && label.orZero(part) > label.orZero(Printed.TOTAL_CARBOHYDRATE) + slack) {
                doubt(Doubt.Check.CARBOHYDRATE, part, "The " + part.label() + " of " + written(label.orZero(part))
                        + " g is more than the carbohydrate with its fibre, " + written(label.orZero(Printed.TOTAL_CARBOHYDRATE)) + " g.");
            }
        }
    }

    private void sodium() {
        double sodium = label.sodium().orElse(0);
        double implied = label.orZero(Printed.SALT) * 1000 / PacketLabel.SALT_PER_SODIUM;
        if (label.has(Printed.SALT, Printed.SODIUM) && Math.abs(implied - sodium) > 25 + 0.05 * sodium) {
            doubt(Doubt.Check.SODIUM, Printed.SODIUM, written(label.orZero(Printed.SALT)) + " g of salt hold " + written(implied)
                    + " mg of sodium (salt = sodium × 2.5); here stand " + written(sodium) + " mg.");
        } else if (grams.isPresent() && sodium * 100 / grams.getAsDouble() > SALTY) {
            doubt(Doubt.Check.SODIUM, Printed.SODIUM, "That is " + written(sodium * 100 / grams.getAsDouble())
                    + " mg of sodium in 100 g, saltier than fish sauce. Only salt and stock cubes are.");
        } else if (sodium > 0 && sodium < SODIUM_IN_GRAMS) {
            doubt(Doubt.Check.SODIUM, Printed.SODIUM, written(sodium) + " mg of sodium is less than any packet prints. Were grams meant? "
                    + written(sodium) + " g are " + written(sodium * 1000) + " mg.");
        }
    }

    private void energy(EnergyRule rule) {
        OptionalDouble carbohydrate = label.availableCarbohydrate();
        if (!label.has(Printed.FAT, Printed.PROTEIN)) {
            return;
        }
        boolean total = carbohydrate.isEmpty() && label.has(Printed.TOTAL_CARBOHYDRATE);
        if (carbohydrate.isEmpty() && !total) {
            return;
        }
        double starch = total ? label.orZero(Printed.TOTAL_CARBOHYDRATE) : carbohydrate.getAsDouble();
        double hidden = label.has(Printed.FIBRE) ? 0 : quietFibre(starch);
        EnergyRule.Sum least = sum(rule, total ? starch - Math.min(starch, hidden) : starch, total ? Math.min(starch, hidden) : label.orZero(Printed.FIBRE));
        EnergyRule.Sum most = sum(rule, starch, total ? 0 : label.orZero(Printed.FIBRE) + hidden);
        if (!fits(Printed.KILOJOULES, least.kilojoules(), most.kilojoules(), ENERGY_KILOJOULES)) {
            energyDoubt(Printed.KILOJOULES, least.kilojoules(), most.kilojoules());
        } else if (!fits(Printed.KILOCALORIES, least.kilocalories(), most.kilocalories(), ENERGY_KILOCALORIES)) {
            energyDoubt(Printed.KILOCALORIES, least.kilocalories(), most.kilocalories());
        }
    }

    private EnergyRule.Sum sum(EnergyRule rule, double carbohydrate, double fibre) {
        return rule.of(new EnergyRule.Sources(label.orZero(Printed.PROTEIN), label.orZero(Printed.FAT), carbohydrate, fibre, label.orZero(Printed.ALCOHOL)));
    }

    /** How much fibre may be there unsaid: no more than there is room for beside what is printed. */
    private double quietFibre(double carbohydrate) {
        double whole = grams.orElse(label.per().count());
        double room = whole - label.orZero(Printed.FAT) - label.orZero(Printed.PROTEIN) - carbohydrate;
        return Math.max(0, Math.min(QUIET_FIBRE * whole / 100, room));
    }

    private boolean fits(Printed unit, double least, double most, double slack) {
        double energy = label.orZero(unit);
        return !label.has(unit) || energy >= least - Math.max(slack, ENERGY_SHARE * least) && energy <= most + Math.max(slack, ENERGY_SHARE * most);
    }

    private void energyDoubt(Printed unit, double least, double most) {
        String sum = Math.round(least) == Math.round(most) ? written((double) Math.round(least)) : written((double) Math.round(least)) + " to " + written((double) Math.round(most));
        boolean kilojoules = unit == Printed.KILOJOULES;
        doubt(Doubt.Check.ENERGY, unit, "The packet says " + written(label.orZero(unit)) + " " + unit.unit() + "; its fat, carbohydrate, protein and fibre come to "
                + sum + " by the EU factors " + (kilojoules ? "(37, 17, 17, 8" : "(9, 4, 4, 2") + " " + unit.unit() + " a gram). They may differ by 10 % or "
                + written(kilojoules ? ENERGY_KILOJOULES : ENERGY_KILOCALORIES) + " " + unit.unit() + ". Sweeteners, acids, alcohol or other factors explain larger differences.");
    }

    /** At most two decimals, whole from 100 on, with a comma at the thousands: for sentences only. */
    private static String written(double figure) {
        if (figure >= 100) {
            return String.format(Locale.ROOT, "%,d", Math.round(figure));
        }
        String text = String.format(Locale.ROOT, "%.2f", figure);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
    }
}
