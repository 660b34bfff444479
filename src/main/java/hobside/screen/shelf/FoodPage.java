package hobside.screen.shelf;

import hobside.file.Study;
import hobside.food.Doubt;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Measure;
import hobside.food.Nutrient;
import hobside.food.PacketLabel;
import hobside.food.Part;
import hobside.food.PriceList;
import hobside.food.Printed;
import hobside.food.Source;
import hobside.food.Substitute;
import hobside.food.UnitPrice;
import hobside.guide.Allergens;
import hobside.guide.Caution;
import hobside.ledger.Figure;
import hobside.measure.Range;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.prices.PriceText;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Everything the kitchen knows of one food, line by line. What is not known is said to be unknown. */
final class FoodPage {

    /** The column where the words begin. */
    static final int WORDS = 17;

    private static final List<List<Nutrient>> FIGURES = List.of(
            List.of(Nutrient.FASAT, Nutrient.FAT), List.of(Nutrient.FAMS, Nutrient.FAPU), List.of(Nutrient.FATRN, Nutrient.CHOLE),
            List.of(Nutrient.CHOCDF, Nutrient.SUGAR), List.of(Nutrient.FIBTG, Nutrient.PROCNT), List.of(Nutrient.NA, Nutrient.WATER),
            List.of(Nutrient.ALC));

    /** A line: a word in front, what is said, and how it looks. */
    record Line(String label, String words, Style style) {}

    /** Between two figures that stand side by side where there is room. */
    private static final char BESIDE = '\t';

    private static final int WIDE_PAIR = 30;
    private static final int NARROW_PAIR = 22;
    private static final int LONGEST_FIGURE = "cholesterol 3,100 mg".length();

    private final Food food;
    private final Study study;
    private final List<Line> lines = new ArrayList<>();

    private FoodPage(Food food, Study study) {
        this.food = food;
        this.study = study;
    }

    static List<Line> of(Food food, Study study) {
        FoodPage page = new FoodPage(food, study);
        page.figures();
        page.price();
        page.kitchen();
        page.warnings();
        page.source();
        page.substitutes();
        return page.lines;
    }

    /** The lines wrapped for a width; what runs on stands below the first line, without the word in front. */
    static List<Line> laidOut(List<Line> lines, int width) {
        List<Line> laid = new ArrayList<>();
        for (Line line : lines) {
            String label = line.label();
            for (String words : line.words().indexOf(BESIDE) < 0 ? Lines.wrap(line.words(), width - WORDS - 1) : pair(line.words(), width - WORDS - 1)) {
                laid.add(new Line(label, words, line.style()));
                label = "";
            }
        }
        return laid;
    }

    /** Two figures side by side, nearer on a narrow screen; below each other where even that would cut one. */
    private static List<String> pair(String words, int room) {
        int at = words.indexOf(BESIDE);
        String first = words.substring(0, at);
        String second = words.substring(at + 1);
        int column = room < WIDE_PAIR + LONGEST_FIGURE ? NARROW_PAIR : WIDE_PAIR;
        return first.length() < column && column + second.length() <= room ? List.of(first + " ".repeat(column - first.length()) + second) : List.of(first, second);
    }

    private void say(String label, String words) {
        lines.add(new Line(label, words, Style.PLAIN));
    }

    private void figures() {
        String energy = figure(Nutrient.ENERC) + ", " + figure(Nutrient.ENERC_KCAL);
        lines.add(new Line("100 g eaten", "energy " + (energy.equals("unknown, unknown") ? "unknown" : energy), Style.STRONG));
        for (List<Nutrient> pair : FIGURES) {
            String second = pair.size() == 1 ? "" : BESIDE + cell(pair.get(1));
            lines.add(new Line("", cell(pair.get(0)) + second, Style.STRONG));
        }
    }

    private String cell(Nutrient nutrient) {
        return nutrient.word().replace("saturated fat", "saturated").replace("monounsaturated", "mono-").replace("polyunsaturated", "poly-") + " " + figure(nutrient);
    }

    private String figure(Nutrient nutrient) {
        OptionalDouble known = food.composition().of(nutrient);
        if (known.isEmpty() && nutrient == Nutrient.CHOCDF) {
            return withoutFibre().map(least -> Written.figure(nutrient, new Figure(Range.exactly(least), true))).orElse("unknown");
        }
        return known.isEmpty() ? "unknown" : Written.figure(nutrient, new Figure(Range.exactly(known.getAsDouble()), false));
    }

    /** Carbohydrate of a packet that does not print its fibre: there is at least so much. */
    private Optional<Double> withoutFibre() {
        Optional<PacketLabel> packet = food.label().source().packet();
        OptionalDouble printed = packet.map(label -> label.of(Printed.CARBOHYDRATE)).orElse(OptionalDouble.empty());
        OptionalDouble grams = packet.map(label -> label.grams(food.handling().density())).orElse(OptionalDouble.empty());
        return printed.isPresent() && grams.isPresent() ? Optional.of(printed.getAsDouble() * 100 / grams.getAsDouble()) : Optional.empty();
    }

    private void kitchen() {
        Handling handling = food.handling();
        for (Part part : food.parts()) {
            say("part", part.kind().word() + ", " + percent(part.share()) + " of what is eaten; without it: " + food.lean().name());
        }
        if (handling.edible() < 1) {
            say("eaten", Math.round(handling.edible() * 100) + " % of the weight as bought");
        }
        say("measures", handling.measures().isEmpty() ? (handling.density().isEmpty() ? "weights only" : "weights, cups and spoons")
                : handling.measures().stream().map(FoodPage::measure).collect(Collectors.joining("; ")));
        say("density", handling.density().map(known -> plain(known.gramsPerMillilitre()) + " g per ml").orElse("unknown, so it cannot be measured in cups and spoons"));
        handling.melts().ifPresent(kind -> say("on heating", "fat runs out of it as out of " + kind.word().replace('-', ' ')));
    }

    private static String measure(Measure measure) {
        return measure.name() + " " + Written.number(measure.grams().value()).replace(".0", "") + " g" + (measure.asBought() ? " as bought" : "");
    }

    private static String percent(Range share) {
        String typical = Math.round(share.typical() * 100) + " %";
        return share.isExact() ? typical : typical + " (" + Math.round(share.low() * 100) + "–" + Math.round(share.high() * 100) + " %)";
    }

    private static String plain(double figure) {
        return String.format(Locale.ROOT, "%.3f", figure).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private void warnings() {
        List<String> allergens = List.copyOf(new TreeSet<>(food.handling().warnings().allergens()));
        lines.add(new Line("allergens", Allergens.listed(allergens) + (allergens.isEmpty() ? "; the label decides" : ""), allergens.isEmpty() ? Style.PLAIN : Style.WARN));
        for (String key : new TreeSet<>(food.handling().warnings().cautions())) {
            Optional<Caution> caution = study.published().cautions().all().stream()
                    .filter(each -> each.when().stream().anyMatch(trigger -> trigger.word().equals(key))).findFirst();
            say("take care", caution.map(Caution::said).orElse(key));
        }
    }

    private void substitutes() {
        for (Substitute swap : study.substitutes().of(food.id())) {
            study.shelf().food(swap.pair().instead()).ifPresent(other -> say("in its place", other.name() + " as " + swap.part() + ", "
                    + plain(swap.ratio()) + " g for 1 g. " + swap.words().why()));
        }
    }

    private void price() {
        PriceList list = study.books().prices();
        String where = " (" + list.heading().place() + (list.heading().date().isEmpty() ? "" : ", " + list.heading().date())
                + (list.heading().invented() ? "; invented" : "") + ")";
        String now = list.packOf(food).map(pack -> PriceText.pack(pack, list.currency()) + "; " + PriceText.units(UnitPrice.of(pack, food), list.currency()))
                .orElse(PriceList.isFree(food) ? "counted as free" : "no price");
        say("price now", now + where);
    }

    private void source() {
        Source source = food.label().source();
        say("source", source.written() + "; in files: " + food.id());
        if (!food.label().also().isEmpty()) {
            say("also called", String.join(", ", food.label().also()));
        }
        source.packet().ifPresent(label -> say("as printed", printed(label)));
        for (Doubt.Overruled each : source.overruled()) {
            lines.add(new Line("overruled", "The check of " + each.check().word().replace('-', ' ') + ", because: " + each.reason(), Style.WARN));
        }
    }

    private static String printed(PacketLabel label) {
        List<String> words = new ArrayList<>();
        for (Printed each : Printed.values()) {
            label.of(each).ifPresent(figure -> words.add(each.label().replace("or ", "") + " " + plain(figure) + " " + each.unit()));
        }
        return "for " + label.per().written() + ": " + String.join(", ", words);
    }
}
