package hobside.file.bring;

import hobside.file.RawFile;
import hobside.food.Nutrient;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Published tables made up by seed, laid out as FoodData Central publishes its own, with what the importer must find in them.
 * All figures are invented; energy goes with its parts, so that nothing is doubtful.
 */
public final class MadeTables {

    private static final Map<Nutrient, int[]> NUMBERS = new LinkedHashMap<>();

    static {
        NUMBERS.put(Nutrient.PROCNT, new int[] {1003, 203});
        NUMBERS.put(Nutrient.FAT, new int[] {1004, 204});
        NUMBERS.put(Nutrient.CHOCDF, new int[] {1005, 205});
        NUMBERS.put(Nutrient.ENERC_KCAL, new int[] {1008, 208});
        NUMBERS.put(Nutrient.ALC, new int[] {1018, 221});
        NUMBERS.put(Nutrient.WATER, new int[] {1051, 255});
        NUMBERS.put(Nutrient.ENERC, new int[] {1062, 268});
        NUMBERS.put(Nutrient.FIBTG, new int[] {1079, 291});
        NUMBERS.put(Nutrient.NA, new int[] {1093, 307});
        NUMBERS.put(Nutrient.CHOLE, new int[] {1253, 601});
        NUMBERS.put(Nutrient.FATRN, new int[] {1257, 605});
        NUMBERS.put(Nutrient.FASAT, new int[] {1258, 606});
        NUMBERS.put(Nutrient.FAMS, new int[] {1292, 645});
        NUMBERS.put(Nutrient.FAPU, new int[] {1293, 646});
        NUMBERS.put(Nutrient.SUGAR, new int[] {2000, 269});
    }

    /** Nutrients that the shelf does not keep: they must be passed over. */
    private static final int[] OTHERS = {1087, 1089, 1090, 1092, 1095, 1162};

    private static final String[] KINDS = {"Squash", "Barley", "Perch", "Mutton", "Curd", "Dock", "Samphire", "Plum", "Oat", "Hazel"};
    private static final String[] WAYS = {"raw", "boiled, drained", "baked", "smoked", "tinned", "dried", "\"river style\"", "with skin"};

    /** What the tables say of one food. */
    public record Made(long id, String name, Map<Nutrient, Double> figures, Map<String, Double> measures) {}

    private final Random random;
    private final List<Made> foods = new ArrayList<>();

    private MadeTables(long seed, int count) {
        random = new Random(seed);
        for (int i = 0; i < count; i++) {
            foods.add(food(167_512 + 3L * i, i));
        }
    }

    public static MadeTables of(long seed, int count) {
        return new MadeTables(seed, count);
    }

    public List<Made> foods() {
        return foods;
    }

    private double tenths(int most) {
        return random.nextInt(most * 10) / 10.0;
    }

    private Made food(long id, int number) {
        String name = KINDS[number % KINDS.length] + " of bank " + number + ", " + WAYS[random.nextInt(WAYS.length)];
        Map<Nutrient, Double> figures = new HashMap<>();
        double fat = tenths(30);
        double protein = tenths(25);
        double carbohydrate = tenths(30);
        figures.put(Nutrient.FAT, fat);
        figures.put(Nutrient.PROCNT, protein);
        figures.put(Nutrient.CHOCDF, carbohydrate);
        figures.put(Nutrient.WATER, tenths(10));
        figures.put(Nutrient.ENERC_KCAL, (double) Math.round(4 * protein + 9 * fat + 4 * carbohydrate));
        if (random.nextInt(4) > 0) {
            figures.put(Nutrient.ENERC, (double) Math.round(17 * protein + 37 * fat + 17 * carbohydrate));
        }
        if (random.nextInt(5) > 0) {
            figures.put(Nutrient.FASAT, Math.round(fat * 400) / 1000.0);
            figures.put(Nutrient.FAMS, Math.round(fat * 300) / 1000.0);
            figures.put(Nutrient.FAPU, Math.round(fat * 200) / 1000.0);
        }
        figures.put(Nutrient.FIBTG, Math.round(carbohydrate) / 10.0);
        figures.put(Nutrient.SUGAR, Math.round(carbohydrate * 2) / 10.0);
        figures.put(Nutrient.NA, (double) random.nextInt(800));
        figures.put(Nutrient.CHOLE, (double) random.nextInt(90));
        Map<String, Double> measures = new LinkedHashMap<>();
        if (random.nextBoolean()) {
            measures.put("cup, chopped", 50.0 + random.nextInt(150));
            measures.put("large", 20.0 + random.nextInt(200));
        }
        return new Made(id, name, figures, measures);
    }

    /** The files by their names; the rows of the figures are shuffled when {@code shuffled}. */
    public Map<String, String> files(boolean shuffled) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(PublishedTables.NUTRIENT, nutrients());
        files.put(PublishedTables.CATEGORY, "\"id\",\"code\",\"description\"\n\"1\",\"0100\",\"Bank foods\"\n");
        files.put(PublishedTables.UNIT, "\"id\",\"name\"\n\"1000\",\"cup\"\n\"9999\",\"undetermined\"\n");
        files.put(PublishedTables.FOOD, foodRows());
        List<String> rows = figureRows();
        if (shuffled) {
            Collections.shuffle(rows, random);
        }
        files.put(PublishedTables.FOOD_NUTRIENT, "\"id\",\"fdc_id\",\"nutrient_id\",\"amount\",\"data_points\",\"derivation_id\",\"min\",\"max\",\"median\",\"footnote\",\"min_year_acquired\"\n"
                + String.join("", rows));
        files.put(PublishedTables.PORTION, portions());
        return files;
    }

    private static String nutrients() {
        StringBuilder text = new StringBuilder("\"id\",\"name\",\"unit_name\",\"nutrient_nbr\",\"rank\"\n");
        NUMBERS.forEach((nutrient, numbers) -> text.append(String.format(Locale.ROOT, "\"%d\",\"%s\",\"%s\",\"%d\",\"1\"\n", numbers[0], nutrient.word(),
                nutrient == Nutrient.ENERC ? "kJ" : nutrient.unit().toUpperCase(Locale.ROOT), numbers[1])));
        for (int other : OTHERS) {
            text.append('"').append(other).append("\",\"something else\",\"MG\",\"").append(other - 700).append("\",\"1\"\n");
        }
        return text.toString();
    }

    private String foodRows() {
        StringBuilder text = new StringBuilder("\"fdc_id\",\"data_type\",\"description\",\"food_category_id\",\"publication_date\"\n");
        for (Made food : foods) {
            text.append('"').append(food.id()).append("\",\"sr_legacy_food\",\"").append(food.name().replace("\"", "\"\"")).append("\",\"1\",\"2019-04-01\"\n");
        }
        return text.append("\"99\",\"sub_sample_food\",\"a sample\",\"1\",\"2019-04-01\"\n").toString();
    }

    private List<String> figureRows() {
        List<String> rows = new ArrayList<>();
        int id = 1;
        for (Made food : foods) {
            for (Map.Entry<Nutrient, Double> figure : food.figures().entrySet()) {
                rows.add(row(id++, food.id(), NUMBERS.get(figure.getKey())[0], String.valueOf(figure.getValue())));
            }
            for (int other : OTHERS) {
                rows.add(row(id++, food.id(), other, "1.5"));
            }
        }
        rows.add(row(id, 99, 1003, "5"));
        return rows;
    }

    private static String row(int id, long food, int nutrient, String amount) {
        return "\"" + id + "\",\"" + food + "\",\"" + nutrient + "\",\"" + amount + "\",\"0\",\"1\",\"\",\"\",\"\",\"\",\"\"\n";
    }

    private String portions() {
        StringBuilder text = new StringBuilder("\"id\",\"fdc_id\",\"seq_num\",\"amount\",\"measure_unit_id\",\"portion_description\",\"modifier\",\"gram_weight\",\"data_points\"\n");
        for (Made food : foods) {
            food.measures().forEach((name, grams) -> text.append("\"1\",\"").append(food.id()).append("\",\"1\",\"2.0\",\"9999\",\"\",\"").append(name).append("\",\"")
                    .append(2 * grams).append("\",\"\"\n"));
        }
        return text.toString();
    }

    /** The same as inputs in memory. */
    public static Map<String, Input> inputs(Map<String, String> files) {
        Map<String, Input> inputs = new LinkedHashMap<>();
        files.forEach((name, text) -> inputs.put(name, Input.of(RawFile.of(name, text))));
        return inputs;
    }

    /** Writes the files into a folder. */
    public void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, String> file : files(true).entrySet()) {
            try (BufferedWriter out = Files.newBufferedWriter(folder.resolve(file.getKey()))) {
                out.write(file.getValue());
            }
        }
    }
}
