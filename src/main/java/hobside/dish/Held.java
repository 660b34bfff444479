package hobside.dish;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * What one ingredient amounts to in the pot at this moment.
 *
 * @param lean grams of what stays when all parts are off
 * @param parts grams left of each part, in the order of the food's parts
 * @param wet what water has done to it: sodium rinsed away, water it was thinned with
 * @param melt the fat that has run out of it, and what of that still lies loose in the pan
 */
record Held(double lean, List<Double> parts, Wet wet, Melt melt) {

    /** Share of its sodium that has not been rinsed away, and grams of water it was thinned with. */
    record Wet(double sodium, double water) {
        static final Wet NOT = new Wet(1, 0);
    }

    /** All fat that ran out, and the part of it that has not been poured off. */
    record Melt(Portion ran, Portion loose) {
        static final Melt NONE = new Melt(Portion.NONE, Portion.NONE);

        Melt times(double factor) {
            return new Melt(ran.times(factor), loose.times(factor));
        }
    }

    Held {
        parts = List.copyOf(parts);
    }

    static Held of(Food food, double edible, Kit kit, String id) {
        List<Double> parts = new ArrayList<>();
        double lean = edible;
        for (Part part : food.parts()) {
            double grams = edible * kit.pick(id + "/share of " + part.kind().word(), part.share());
            parts.add(grams);
            lean -= grams;
        }
        return new Held(lean, parts, Wet.NOT, Melt.NONE);
    }

    /** The ingredient before any fat has run out of it. */
    Portion raw(Food food) {
        Portion whole = Portion.of(food.lean().composition(), lean);
        for (int i = 0; i < parts.size(); i++) {
            whole = whole.plus(Portion.of(food.parts().get(i).food().composition(), parts.get(i)));
        }
        return wet.sodium == 1 ? whole : new Portion(whole.grams(), whole.contents().withShareOf(Nutrient.NA, wet.sodium));
    }

    /** The piece itself, without what lies loose around it. */
    Portion piece(Food food) {
        return raw(food).minus(melt.ran);
    }

    Portion inDish(Food food) {
        return piece(food).plus(melt.loose).plus(Portion.of(Water.COMPOSITION, wet.water));
    }

    Held times(double factor) {
        List<Double> fewer = parts.stream().map(part -> part * factor).toList();
        return new Held(lean * factor, fewer, new Wet(wet.sodium, wet.water * factor), melt.times(factor));
    }

    Held withPart(int index, double grams) {
        List<Double> others = new ArrayList<>(parts);
        others.set(index, grams);
        return new Held(lean, others, wet, melt);
    }

    Held rinsed(double sodiumLeft) {
        return new Held(lean, parts, new Wet(wet.sodium * sodiumLeft, wet.water), melt);
    }

    Held thinned(double grams) {
        return new Held(lean, parts, new Wet(wet.sodium, wet.water + grams), melt);
    }

    /** Fat melts out of the piece and lies loose beside it. */
    Held melted(Portion fat) {
        return new Held(lean, parts, wet, new Melt(melt.ran.plus(fat), melt.loose.plus(fat)));
    }

    Held poured(Portion gone) {
        return new Held(lean, parts, wet, new Melt(melt.ran, melt.loose.minus(gone)));
    }
}
