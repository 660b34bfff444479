package hobside.screen.packet;

import hobside.file.Limits;
import hobside.food.Doubt;
import hobside.food.EnergyRule;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.PacketLabel;
import hobside.food.Plausibility;
import hobside.food.Printed;
import hobside.measure.Amount;
import hobside.measure.Density;
import hobside.measure.Grams;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the form comes to: the panel as far as it can be read, what cannot be read line by line, and the food it makes. */
final class PacketReading {

    private static final Pattern MEASURE = Pattern.compile("(\\p{Ll}[^\\d=]*?)\\s*=?\\s*(\\d.*)");

    private final PacketForm form;
    private final Map<PacketRow, String> problems = new LinkedHashMap<>();
    private final Optional<Density> density;
    private final Optional<Measure> measure;
    private final Optional<PacketLabel> label;

    private PacketReading(PacketForm form) {
        this.form = form;
        name();
        this.density = density();
        Optional<Amount> per = per();
        Map<Printed, Double> figures = new EnumMap<>(Printed.class);
        for (Printed each : Printed.values()) {
            figure(each).ifPresent(figure -> figures.put(each, figure));
        }
        this.label = per.map(known -> new PacketLabel(known, figures));
        this.measure = measure();
    }

    static PacketReading of(PacketForm form) {
        return new PacketReading(form);
    }

    /** What cannot be read, in the order of the form, with what would be right. */
    Map<PacketRow, String> problems() {
        return problems;
    }

    Optional<PacketLabel> label() {
        return label;
    }

    List<Doubt> doubts(EnergyRule rule) {
        return label.map(known -> Plausibility.of(known, density, rule)).orElse(List.of());
    }

    /** How much of a figure 100 g hold, when the panel is for another amount; empty when it is not known. */
    OptionalDouble inHundredGrams(Printed figure) {
        OptionalDouble printed = label.map(known -> known.of(figure)).orElse(OptionalDouble.empty());
        OptionalDouble grams = label.map(known -> known.grams(density)).orElse(OptionalDouble.empty());
        boolean other = grams.isPresent() && grams.getAsDouble() != 100;
        return printed.isPresent() && other ? OptionalDouble.of(printed.getAsDouble() * 100 / grams.getAsDouble()) : OptionalDouble.empty();
    }

    /** The food; only for a form without problems. */
    Food food(List<Doubt.Overruled> overruled) {
        PacketLabel panel = label.orElseThrow();
        Label old = form.origin().label();
        Label named = new Label(old.id(), form.text(PacketRow.NAME), old.also(), old.group(), old.source().with(panel, overruled));
        return Food.whole(named, panel.composition(density).orElseThrow(), handling());
    }

    private Handling handling() {
        Handling old = form.origin().handling();
        List<Measure> measures = new ArrayList<>();
        measure.ifPresent(measures::add);
        old.measures().stream().skip(1).filter(each -> measure.filter(known -> known.name().equals(each.name())).isEmpty()).forEach(measures::add);
        return new Handling(old.edible(), old.melts(), old.fatEnergy(), density, measures, new Handling.Warnings(form.allergens(), old.warnings().cautions()));
    }

    private void name() {
        String name = form.text(PacketRow.NAME);
        if (name.isEmpty() || name.length() > Limits.NAME) {
            problems.put(PacketRow.NAME, name.isEmpty() ? "A food needs a name, so that it can be found." : "At most " + Limits.NAME + " characters.");
        }
    }

    private Optional<Amount> per() {
        String text = form.text(PacketRow.PER);
        Optional<Amount> per = Amount.parse(text).map(PacketReading::small);
        if (per.filter(PacketLabel::isPer).isEmpty()) {
            problems.put(PacketRow.PER, "\"" + text + "\" is no amount in g or ml. Write 100 g, 100 ml, or the serving, such as 30 g.");
            return Optional.empty();
        }
        if (per.get().unit().equals("ml") && density.isEmpty() && !problems.containsKey(PacketRow.DENSITY)) {
            problems.put(PacketRow.DENSITY, "Figures for ml need the density: what one ml weighs. Weigh 100 ml and divide by 100; milk and juice are about 1.03.");
        }
        return per;
    }

    private static Amount small(Amount amount) {
        boolean big = (amount.unit().equals("l") || amount.unit().equals("kg")) && amount.count() <= PacketLabel.MOST_PER / 1000;
        return big ? Amount.of(amount.count() * 1000, amount.unit().equals("l") ? "ml" : "g") : amount;
    }

    private Optional<Double> figure(Printed printed) {
        PacketRow row = PacketRow.of(printed);
        String text = form.text(row);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> figure = number(text, printed.unit());
        if (figure.isEmpty()) {
            problems.put(row, text.startsWith("<") ? "\"" + text + "\" is a limit, not a figure. Write the limit itself, which is the most it can be, or leave it blank: unknown."
                    : "\"" + text + "\" is no figure. Write a number of " + printed.unit() + ", such as 12.5, or leave it blank: unknown.");
        }
        return figure;
    }

    /** A number, with its own unit or none. */
    private static Optional<Double> number(String text, String unit) {
        return Amount.parse(text).filter(amount -> amount.unit().isEmpty() || amount.unit().equalsIgnoreCase(unit)).map(Amount::count);
    }

    private Optional<Density> density() {
        String text = form.text(PacketRow.DENSITY);
        Optional<Density> known = number(text, "g/ml").filter(figure -> figure >= 0.01 && figure <= 5).map(Density::of);
        if (!text.isEmpty() && known.isEmpty()) {
            problems.put(PacketRow.DENSITY, "\"" + text + "\" is no density. Write what one ml weighs in grams, such as 0.92 for oil.");
        }
        return known;
    }

    private Optional<Measure> measure() {
        String text = form.text(PacketRow.MEASURE);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher matcher = MEASURE.matcher(text.toLowerCase(Locale.ROOT));
        Optional<Measure> measure = matcher.matches() && matcher.group(1).length() <= Limits.ID
                ? grams(matcher.group(2)).map(grams -> new Measure(matcher.group(1), Grams.of(grams), wasAsBought(matcher.group(1)))) : Optional.empty();
        if (measure.isEmpty()) {
            problems.put(PacketRow.MEASURE, "\"" + text + "\" is no measure. Write its name and what one weighs: slice 35 g.");
        }
        return measure;
    }

    private boolean wasAsBought(String name) {
        return form.origin().handling().measures().stream().anyMatch(each -> each.name().equals(name) && each.asBought());
    }

    private Optional<Double> grams(String text) {
        return Amount.parse(text).flatMap(amount -> switch (amount.unit()) {
            case "g", "" -> Optional.of(amount.count());
            case "kg" -> Optional.of(amount.count() * 1000);
            case "ml" -> density.map(known -> amount.count() * known.gramsPerMillilitre());
            default -> Optional.<Double>empty();
        }).filter(grams -> grams >= 0.001 && grams <= 100_000);
    }
}
