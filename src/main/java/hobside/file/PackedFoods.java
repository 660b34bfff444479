package hobside.file;

import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.MeltClass;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.food.Shelf;
import hobside.food.Source;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The page of foods: an index of ids, then one record each, which is read when somebody asks for that food. */
final class PackedFoods implements Shelf.Source {

    private static final Nutrient[] NUTRIENTS = Nutrient.values();
    private static final MeltClass[] MELTS = MeltClass.values();
    private static final Part.Kind[] KINDS = Part.Kind.values();

    private final PackIn in;
    private final Map<String, Integer> places;
    private final Nutrient[] order;
    private final Map<String, Food> known = new LinkedHashMap<>();

    private PackedFoods(PackIn in, Map<String, Integer> places, Nutrient[] order) {
        this.in = in;
        this.places = places;
        this.order = order;
    }

    static byte[] page(Shelf shelf) {
        PackOut index = new PackOut();
        PackOut records = new PackOut();
        index.count(shelf.foods().size());
        for (Food food : shelf.foods()) {
            int before = records.size();
            write(food, records);
            index.text(food.id());
            index.count(records.size() - before);
        }
        index.page(records);
        return index.bytes();
    }

    static PackedFoods none() {
        return new PackedFoods(new PackIn(new byte[0]), Map.of(), NUTRIENTS);
    }

    static PackedFoods read(PackIn in) {
        return read(in, NUTRIENTS);
    }

    /** A page whose figures stand in another order; null in it stands for a figure that is passed over. */
    static PackedFoods read(PackIn in, Nutrient[] order) {
        int size = in.size();
        String[] ids = new String[size];
        int[] lengths = new int[size];
        for (int i = 0; i < size; i++) {
            ids[i] = in.text();
            lengths[i] = in.count();
        }
        Map<String, Integer> places = new LinkedHashMap<>(size * 2);
        int place = in.place();
        for (int i = 0; i < size; i++) {
            places.put(ids[i], place);
            place += lengths[i];
        }
        return new PackedFoods(in, places, order);
    }

    @Override
    public synchronized Optional<Food> food(String id) {
        return places.containsKey(id) ? Optional.of(known(id)) : Optional.empty();
    }

    @Override
    public synchronized List<Food> foods() {
        List<Food> foods = new ArrayList<>(places.size());
        for (String id : places.keySet()) {
            foods.add(known(id));
        }
        return foods;
    }

    @Override
    public Collection<String> ids() {
        return Collections.unmodifiableSet(places.keySet());
    }

    private Food known(String id) {
        Food food = known.get(id);
        if (food == null) {
            food = read(id);
            known.put(id, food);
        }
        return food;
    }

    private static void write(Food food, PackOut out) {
        label(food.label(), out);
        handling(food.handling(), out);
        out.count(food.parts().size());
        if (food.parts().isEmpty()) {
            composition(food.composition(), out);
            return;
        }
        out.text(food.lean().id());
        for (Part part : food.parts()) {
            out.one(part.kind());
            out.text(part.food().id());
            range(part.share(), out);
        }
    }

    private Food read(String id) {
        in.from(places.get(id));
        Label label = label(id, in);
        Handling handling = handling(in);
        int parts = in.size();
        if (parts == 0) {
            return Food.whole(label, composition(), handling);
        }
        String lean = in.text();
        String[] ids = new String[parts];
        Part.Kind[] kinds = new Part.Kind[parts];
        Range[] shares = new Range[parts];
        for (int i = 0; i < parts; i++) {
            kinds[i] = in.one(KINDS);
            ids[i] = in.text();
            shares[i] = range(in);
        }
        List<Part> taken = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            taken.add(new Part(kinds[i], known(ids[i]), shares[i]));
        }
        return Food.cut(label, known(lean), taken, handling);
    }

    private static void label(Label label, PackOut out) {
        out.text(label.name());
        out.texts(label.also());
        out.text(label.group());
        out.text(label.source().table());
        out.text(label.source().number());
    }

    private static Label label(String id, PackIn in) {
        return new Label(id, in.text(), List.of(in.texts()), in.text(), new Source(in.text(), in.text()));
    }

    private static void handling(Handling handling, PackOut out) {
        out.number(handling.edible());
        out.count(handling.melts().isPresent() ? handling.melts().get().ordinal() + 1 : 0);
        out.number(handling.fatEnergy());
        out.number(handling.density().isPresent() ? handling.density().get().gramsPerMillilitre() : Double.NaN);
        out.count(handling.measures().size());
        for (Measure measure : handling.measures()) {
            out.text(measure.name());
            out.number(measure.grams().value());
            out.yes(measure.asBought());
        }
        out.texts(new TreeSet<>(handling.warnings().allergens()));
        out.texts(new TreeSet<>(handling.warnings().cautions()));
    }

    private static Handling handling(PackIn in) {
        double edible = in.number();
        int melts = in.count();
        double fatEnergy = in.number();
        double density = in.number();
        Measure[] measures = new Measure[in.size()];
        for (int i = 0; i < measures.length; i++) {
            measures[i] = new Measure(in.text(), Grams.of(in.number()), in.yes());
        }
        return new Handling(edible, melts == 0 ? Optional.empty() : Optional.of(MELTS[melts - 1]), fatEnergy,
                Double.isNaN(density) ? Optional.empty() : Optional.of(Density.of(density)), List.of(measures),
                new Handling.Warnings(Set.of(in.texts()), Set.of(in.texts())));
    }

    private static void composition(Composition composition, PackOut out) {
        for (Nutrient nutrient : NUTRIENTS) {
            out.number(composition.of(nutrient).orElse(Double.NaN));
        }
    }

    private Composition composition() {
        double[] row = new double[NUTRIENTS.length];
        Arrays.fill(row, Double.NaN);
        for (Nutrient nutrient : order) {
            double figure = in.number();
            if (nutrient != null) {
                row[nutrient.ordinal()] = figure;
            }
        }
        return Composition.of(row);
    }

    static void range(Range range, PackOut out) {
        out.number(range.low());
        out.number(range.typical());
        out.number(range.high());
    }

    static Range range(PackIn in) {
        return Range.of(in.number(), in.number(), in.number());
    }
}
