package hobside.screen.packet;

import hobside.file.Limits;
import hobside.food.Doubt;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.PacketLabel;
import hobside.food.Printed;
import hobside.food.Source;
import hobside.guide.Allergens;
import hobside.screen.ask.Typing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What has been typed into the form so far, line by line, and the food that it began with. */
public record PacketForm(Origin origin, Map<PacketRow, Typing> typed, Set<String> allergens) {

    /**
     * What the form began with.
     *
     * @param old the own food that is being changed; empty for a new one
     * @param label its other names, group and source
     * @param handling what a packet does not say: edible share, cautions, other measures
     */
    record Origin(Optional<Food> old, Label label, Handling handling) {}

    public PacketForm {
        typed = Map.copyOf(typed);
        allergens = Set.copyOf(allergens);
    }

    /** An empty form; the name may be there already. */
    public static PacketForm blank(String name) {
        Label label = new Label("", name, List.of(), "own", new Source(Source.PACKET, ""));
        return new PacketForm(new Origin(Optional.empty(), label, Handling.PLAIN),
                Map.of(PacketRow.NAME, Typing.of(name), PacketRow.PER, Typing.of(PacketLabel.HUNDRED_GRAMS.written())), Set.of());
    }

    /** A form for changing an own food. */
    public static PacketForm edit(Food food) {
        return of(new Origin(Optional.of(food), food.label(), food.handling()), food);
    }

    /** A form for a new food that begins with the figures of another. A cut is copied as it is, without its parts. */
    public static PacketForm copyOf(Food food) {
        Source source = food.label().source();
        Source copied = source.table().startsWith(COPY) ? source : new Source(cut(COPY + source.table()), source.number(), Optional.empty(), source.overruled());
        Label label = new Label("", food.name(), food.label().also(), food.label().group(), copied);
        return of(new Origin(Optional.empty(), label, food.handling()), food);
    }

    private static final String COPY = "copied from ";

    private static String cut(String words) {
        return words.length() <= Limits.NAME ? words : words.substring(0, Limits.NAME);
    }

    private static PacketForm of(Origin origin, Food food) {
        PacketLabel panel = food.label().source().packet().orElseGet(() -> PacketLabel.from(food.composition()));
        Map<PacketRow, Typing> typed = new HashMap<>();
        typed.put(PacketRow.NAME, Typing.of(food.name()));
        typed.put(PacketRow.PER, Typing.of(plain(panel.per().count()) + " " + panel.per().unit()));
        panel.figures().forEach((figure, value) -> typed.put(PacketRow.of(figure), Typing.of(plain(value))));
        food.handling().density().ifPresent(density -> typed.put(PacketRow.DENSITY, Typing.of(plain(density.gramsPerMillilitre()))));
        food.handling().measures().stream().findFirst().ifPresent(measure -> typed.put(PacketRow.MEASURE, Typing.of(written(measure))));
        return new PacketForm(origin, typed, food.handling().warnings().allergens());
    }

    private static String written(Measure measure) {
        return measure.name() + " " + plain(measure.grams().value()) + " g";
    }

    /** As few digits as will do; no table is more exact than six. */
    private static String plain(double value) {
        return new BigDecimal(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    public Typing typing(PacketRow row) {
        return typed.getOrDefault(row, Typing.EMPTY);
    }

    String text(PacketRow row) {
        return typing(row).text().strip();
    }

    PacketForm with(PacketRow row, Typing typing) {
        Map<PacketRow, Typing> more = new HashMap<>(typed);
        more.put(row, typing);
        return new PacketForm(origin, more, allergens);
    }

    /** The form with an allergen put in, or taken out when it was in. */
    PacketForm toggling(String allergen) {
        Set<String> others = new TreeSet<>(allergens);
        if (!others.remove(allergen)) {
            others.add(allergen);
        }
        return new PacketForm(origin, typed, others);
    }

    /** The reason that was given earlier for overruling a check; empty when none was. */
    String earlierReason(List<Doubt> doubts) {
        return origin.label().source().overruled().stream().filter(each -> doubts.stream().anyMatch(doubt -> doubt.check() == each.check()))
                .map(Doubt.Overruled::reason).findFirst().orElse("");
    }

    /** All lines as one text, for a note of what is half typed. */
    String noted() {
        StringBuilder all = new StringBuilder();
        for (PacketRow row : PacketRow.ALL) {
            if (row.isTyped() && !text(row).isEmpty()) {
                all.append(row.label()).append(IS).append(text(row)).append('\n');
            }
        }
        return allergens.isEmpty() ? all.toString() : all + PacketRow.ALLERGENS.label() + IS + String.join(" ", new TreeSet<>(allergens)) + '\n';
    }

    private static final String IS = ": ";

    /** The form with its lines as they were noted; a line that no row bears is left out. */
    PacketForm with(String noted) {
        Map<PacketRow, Typing> lines = new HashMap<>();
        Set<String> named = new TreeSet<>();
        for (String line : noted.split("\n")) {
            int end = Math.max(0, line.indexOf(IS));
            String text = line.substring(Math.min(line.length(), end + IS.length()));
            for (PacketRow row : PacketRow.ALL) {
                if (row.label().equals(line.substring(0, end)) && row.isTyped()) {
                    lines.put(row, Typing.of(text));
                } else if (row.label().equals(line.substring(0, end)) && row.equals(PacketRow.ALLERGENS)) {
                    named.addAll(List.of(text.split(" ")));
                }
            }
        }
        named.retainAll(Allergens.KEYS);
        return new PacketForm(origin, lines, named);
    }

    boolean hasFigure() {
        for (Printed each : Printed.values()) {
            if (!text(PacketRow.of(each)).isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
