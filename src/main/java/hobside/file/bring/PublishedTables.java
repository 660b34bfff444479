package hobside.file.bring;

import hobside.file.Loaded;
import hobside.file.Nearest;
import hobside.file.Numbers;
import hobside.file.OwnPack;
import hobside.file.Problems;
import hobside.file.Read;
import hobside.file.Rejected;
import hobside.file.Shown;
import hobside.file.Wanted;
import hobside.food.Food;
import hobside.food.Shelf;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Brings in a folder of tables as the US Department of Agriculture lays out FoodData Central for download: food.csv, nutrient.csv
 * and food_nutrient.csv, and if they are there food_portion.csv, measure_unit.csv and food_category.csv. Columns are found by
 * their headings. Each file is walked over once and never held in memory; the order of the rows does not matter.
 */
public final class PublishedTables {

    public static final String FOOD = "food.csv";
    public static final String NUTRIENT = "nutrient.csv";
    public static final String FOOD_NUTRIENT = "food_nutrient.csv";
    public static final String PORTION = "food_portion.csv";
    public static final String UNIT = "measure_unit.csv";
    public static final String CATEGORY = "food_category.csv";
    public static final List<String> NEEDED = List.of(FOOD, NUTRIENT, FOOD_NUTRIENT);
    public static final List<String> ALL = List.of(FOOD, NUTRIENT, FOOD_NUTRIENT, PORTION, UNIT, CATEGORY);

    /** Records of foods as they are eaten; all other types are samples and purchases behind them. */
    private static final List<String> TYPES = List.of("foundation_food", "sr_legacy_food", "survey_fndds_food", "branded_food");
    private static final int MOST_FOODS = 20_000;

    private final Map<String, Input> files;
    private final Notes notes;
    private final Map<Long, PublishedFood> foods = new HashMap<>();
    private final List<PublishedFood> inOrder = new ArrayList<>();

    private PublishedTables(Map<String, Input> files, Notes notes) {
        this.files = files;
        this.notes = notes;
    }

    /**
     * The review of a folder; rejected when one of the needed files or columns is missing.
     *
     * @param folder the name of the folder, for messages
     * @param files the files of the folder by their names; others than those named above are not looked at
     * @param name the name it would be kept under: safe, free, at most 30 characters
     */
    public static Read<Review> review(String folder, Map<String, Input> files, Shelf shelf, String name) throws IOException {
        Problems problems = new Problems(folder);
        for (String needed : NEEDED) {
            if (!files.containsKey(needed)) {
                problems.add(0, "no file " + needed, Wanted.of("the files " + Nearest.listed(NEEDED), "unpack the whole download into one folder"));
            }
        }
        PublishedTables tables = new PublishedTables(files, new Notes(problems));
        boolean readable = problems.isEmpty() && tables.foods() && tables.figures();
        if (!readable) {
            return new Rejected<>(problems.all());
        }
        new PublishedPortions(files, tables.notes).read(tables.foods);
        return new Loaded<>(tables.review(shelf, name));
    }

    /** food.csv: which foods there are. */
    private boolean foods() throws IOException {
        Map<Long, String> groups = files.containsKey(CATEGORY) ? PublishedFile.names(files.get(CATEGORY), "description", notes) : Map.of();
        Optional<PublishedFile> file = PublishedFile.of(files.get(FOOD), List.of("fdc_id", "description"), notes);
        if (file.isEmpty()) {
            return false;
        }
        Map<String, Integer> others = new TreeMap<>();
        file.get().each(rows -> {
            String type = rows.text("data_type");
            if (type.isEmpty() || TYPES.contains(type)) {
                food(rows, groups);
            } else {
                others.merge(type, 1, Integer::sum);
            }
        });
        others.forEach((type, count) -> notes.tell(count + " records of the type " + Shown.of(type) + " are samples behind the foods; they are not taken."));
        return true;
    }

    private void food(PublishedFile.Row row, Map<Long, String> groups) {
        notes.readOne();
        long id = row.whole("fdc_id");
        Optional<String> name = row.line("description");
        if (id < 0 || name.isEmpty() || name.get().isEmpty()) {
            if (id < 0 || name.isPresent()) {
                row.fault(id < 0 ? "fdc_id" : "description", id < 0 ? "a whole number" : "the name of the food");
            }
            notes.leaveOutOne();
        } else if (inOrder.size() >= MOST_FOODS) {
            beyond(row);
        } else {
            PublishedFood food = new PublishedFood(id, row.number(), name.get(), groups.getOrDefault(row.whole("food_category_id"), ""));
            if (foods.putIfAbsent(id, food) == null) {
                inOrder.add(food);
            } else {
                row.fault("fdc_id", "each number once");
                notes.leaveOutOne();
            }
        }
    }

    private void beyond(PublishedFile.Row row) {
        notes.leaveOutOne();
        if (notes.readRows() == MOST_FOODS + 1) {
            notes.fault(row.number(), "", "more than " + MOST_FOODS + " foods in " + FOOD, Wanted.of("at most " + MOST_FOODS
                    + "; the rest is left out", "take the tables without branded foods, or delete the rows you do not need"));
        }
    }

    /** nutrient.csv and food_nutrient.csv: the figures. */
    private boolean figures() throws IOException {
        Optional<PublishedNutrients> nutrients = PublishedNutrients.read(files.get(NUTRIENT), notes);
        Optional<PublishedFile> file = PublishedFile.of(files.get(FOOD_NUTRIENT), List.of("fdc_id", "nutrient_id", "amount"), notes);
        if (nutrients.isEmpty() || file.isEmpty()) {
            return false;
        }
        file.get().each(row -> {
            PublishedFood food = foods.get(row.whole("fdc_id"));
            Optional<PublishedNutrients.Slot> slot = food == null ? Optional.empty() : nutrients.get().slot(row.whole("nutrient_id"));
            if (slot.isPresent() && !row.text("amount").isEmpty()) {
                figure(row, food, slot.get());
            }
        });
        return true;
    }

    private void figure(PublishedFile.Row row, PublishedFood food, PublishedNutrients.Slot slot) {
        double figure = slot.toShelf(row.figure("amount"));
        if (!(figure >= 0 && figure <= slot.nutrient().most())) {
            row.fault("amount", "a number from 0 to " + Numbers.written(slot.nutrient().most()) + " " + slot.nutrient().unit() + " of " + slot.nutrient().word() + " per 100 g");
            food.breakIt();
        } else {
            food.enter(slot, figure);
        }
    }

    private Review review(Shelf shelf, String name) {
        Naming naming = new Naming(shelf, OwnPack.prefix(name));
        List<Food> taken = new ArrayList<>();
        int bare = 0;
        for (PublishedFood each : inOrder) {
            if (each.isBroken() || each.isBare()) {
                bare += each.isBroken() ? 0 : 1;
                notes.leaveOutOne();
            } else {
                taken.add(offered(each, naming));
            }
        }
        if (bare > 0) {
            notes.tell(bare + " foods have none of the figures that the shelf keeps; they are left out.");
        }
        notes.tell("Cups and spoons of solid foods are the US ones of the table scaled to 250, 15 and 5 ml.");
        return notes.review(new Review.Goods.Pack(name, taken));
    }

    private Food offered(PublishedFood each, Naming naming) {
        Food food = each.food(naming.free(String.valueOf(each.id())));
        naming.twin(food.name(), "in line " + each.line() + " of " + FOOD).ifPresent(where -> notes.note(each.line(), food.name(),
                Review.Mark.SAME_NAME, "a food of this name is there already, " + where + "; both are kept"));
        List<String> doubts = Plausible.doubts(food.composition());
        if (!doubts.isEmpty()) {
            notes.note(each.line(), food.name(), Review.Mark.DOUBTFUL, String.join("; ", doubts));
        }
        notes.offerOne();
        return food;
    }
}
