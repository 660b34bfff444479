package hobside.file.bring;

import hobside.file.Limits;
import hobside.file.Numbers;
import hobside.file.Shown;
import hobside.file.Wanted;
import hobside.food.Composition;
import hobside.food.Food;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Nutrient;
import hobside.food.Source;
import hobside.measure.Density;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads one row of a table of foods; all faults of the row at once. */
final class FoodRow {

    private static final Set<String> UNKNOWN = Set.of("-", "–", "n", "na", "n/a", "nd", "n.d.", "?");
    private static final Set<String> TRACE = Set.of("tr", "tr.", "trace", "traces");

    private final List<Heading> headings;
    private final List<String> written;
    private final Decimals decimals;
    private final Notes notes;
    private int traces;
    private int renamed;

    FoodRow(List<Heading> headings, List<String> written, Decimals decimals, Notes notes) {
        this.headings = headings;
        this.written = written;
        this.decimals = decimals;
        this.notes = notes;
    }

    /**
     * A row that is sound in itself.
     *
     * @param id as given or made from the name
     * @param given true when the table has a column of ids and this row fills it
     */
    record Found(int line, String id, boolean given, Label label, Composition composition, Handling handling) {

        Food food(String withId) {
            return Food.whole(new Label(withId, label.name(), label.also(), label.group(), label.source()), composition, handling);
        }
    }

    Optional<Found> read(CsvRows rows) {
        int before = notes.problems().count();
        Map<Heading.Kind, String> texts = texts(rows);
        Map<Nutrient, Double> figures = figures(rows);
        Handling handling = handling(rows);
        String id = texts.getOrDefault(Heading.Kind.ID, "");
        String name = texts.getOrDefault(Heading.Kind.NAME, "");
        if (id.isEmpty() && name.isEmpty()) {
            notes.fault(rows.line(), "name", "neither a name nor an id", Wanted.of("at least one of them", "write what the food is called"));
        }
        if (notes.problems().count() > before) {
            return Optional.empty();
        }
        String fit = Naming.id(id.isEmpty() ? name : id);
        renamed += id.isEmpty() || id.equals(fit) ? 0 : 1;
        Label label = new Label(fit, name.isEmpty() ? id.replace('-', ' ') : name, also(texts), texts.getOrDefault(Heading.Kind.GROUP, "own"), source(texts));
        return Optional.of(new Found(rows.line(), fit, !id.isEmpty(), label, Composition.of(figures), handling));
    }

    private Map<Heading.Kind, String> texts(CsvRows rows) {
        Map<Heading.Kind, String> texts = new EnumMap<>(Heading.Kind.class);
        for (int i = 0; i < headings.size(); i++) {
            int most = most(headings.get(i).kind());
            String heading = written.get(i);
            Optional<String> text = most == 0 ? Optional.empty() : Sheet.line(rows, i, heading, notes);
            if (text.isPresent() && text.get().length() > most) {
                notes.fault(rows.line(), heading, "a text of " + text.get().length() + " characters, " + Shown.quoted(text.get()),
                        Wanted.of("at most " + most + " characters", "shorten it"));
            } else if (text.isPresent() && !text.get().isEmpty()) {
                texts.put(headings.get(i).kind(), text.get());
            }
        }
        return texts;
    }

    private static int most(Heading.Kind kind) {
        return switch (kind) {
            case ID, GROUP, NUMBER -> Limits.ID;
            case NAME, SOURCE -> Limits.NAME;
            case ALSO -> Limits.STORY;
            case EDIBLE, DENSITY, FIGURE, AVAILABLE, ASIDE, WRONG_UNIT -> 0;
        };
    }

    /** Other names are separated by semicolons or bars. */
    private static List<String> also(Map<Heading.Kind, String> texts) {
        List<String> also = new ArrayList<>();
        for (String each : texts.getOrDefault(Heading.Kind.ALSO, "").split("[;|]")) {
            if (!each.isBlank() && each.strip().length() <= Limits.NAME && also.size() < 30) {
                also.add(each.strip());
            }
        }
        return also;
    }

    private static Source source(Map<Heading.Kind, String> texts) {
        String table = texts.getOrDefault(Heading.Kind.SOURCE, "");
        String number = texts.getOrDefault(Heading.Kind.NUMBER, "");
        return table.isEmpty() && number.isEmpty() ? Source.OWN : new Source(table.isEmpty() ? Source.OWN.table() : table, number);
    }

    /** Carbohydrate by difference counts fibre in: where the table has the available kind, fibre is added, and without it nothing is known. */
    private Map<Nutrient, Double> figures(CsvRows rows) {
        Map<Nutrient, Double> figures = new EnumMap<>(Nutrient.class);
        double available = Double.NaN;
        for (int i = 0; i < headings.size(); i++) {
            Heading heading = headings.get(i);
            if (heading.nutrient().isPresent()) {
                OptionalDouble figure = figure(rows, i, heading.nutrient().get().most());
                available = heading.kind() == Heading.Kind.AVAILABLE && figure.isPresent() ? figure.getAsDouble() : available;
                if (figure.isPresent() && heading.kind() == Heading.Kind.FIGURE) {
                    figures.put(heading.nutrient().get(), figure.getAsDouble());
                }
            }
        }
        if (!Double.isNaN(available) && figures.containsKey(Nutrient.FIBTG)) {
            figures.putIfAbsent(Nutrient.CHOCDF, Math.min(100, available + figures.get(Nutrient.FIBTG)));
        }
        return figures;
    }

    private Handling handling(CsvRows rows) {
        double edible = 1;
        Optional<Density> density = Optional.empty();
        for (int i = 0; i < headings.size(); i++) {
            Heading.Kind kind = headings.get(i).kind();
            OptionalDouble figure = kind == Heading.Kind.EDIBLE ? figure(rows, i, 1) : kind == Heading.Kind.DENSITY ? figure(rows, i, 5) : OptionalDouble.empty();
            if (figure.isPresent() && figure.getAsDouble() < 0.001) {
                fault(rows, i, "more than 0");
            } else if (figure.isPresent() && kind == Heading.Kind.EDIBLE) {
                edible = figure.getAsDouble();
            } else if (figure.isPresent()) {
                density = Optional.of(Density.of(figure.getAsDouble()));
            }
        }
        return new Handling(edible, Optional.empty(), Handling.GENERAL_FAT_ENERGY, density, List.of(), Handling.Warnings.NONE);
    }

    /** A figure in the unit of the shelf; empty when it is not known, and with a fault when it is none or out of bounds. */
    private OptionalDouble figure(CsvRows rows, int column, double most) {
        String text = rows.text(column);
        String small = text.toLowerCase(Locale.ROOT);
        boolean trace = TRACE.contains(small) || text.startsWith("<");
        traces += trace ? 1 : 0;
        if (text.isEmpty() || trace || UNKNOWN.contains(small)) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = decimals.figure(text);
        double factor = headings.get(column).factor();
        double value = number.isEmpty() ? Double.NaN : factor == 1 ? number.getAsDouble() : tidy(number.getAsDouble() * factor);
        if (!(value >= 0 && value <= most)) {
            fault(rows, column, "a number from 0 to " + Numbers.written(tidy(most / factor)));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private void fault(CsvRows rows, int column, String expected) {
        String remedy = decimals.isUnclear(rows.text(column)) ? "write it so that the decimal mark is plain, such as 1234 or 1.5"
                : "correct it, or leave the field empty when it is not known";
        notes.fault(rows.line(), written.get(column), Shown.quoted(rows.text(column)), Wanted.of(expected + " with a decimal "
                + (decimals.mark() == '.' ? "point" : "comma"), remedy));
    }

    /** Takes off the last digits that a change of unit leaves: 0.3 g are 300 mg and not 299.99999999999994. */
    private static double tidy(double value) {
        return Double.isFinite(value) ? Math.round(value * 1e9) / 1e9 : value;
    }

    void tell() {
        if (traces > 0) {
            notes.tell((traces == 1 ? "1 figure is" : traces + " figures are") + " a trace or \"less than\": taken as not known, never as 0.");
        }
        if (renamed > 0) {
            notes.tell((renamed == 1 ? "1 id has" : renamed + " ids have") + " been made to fit: a-z, 0-9 and -.");
        }
        boolean available = headings.stream().anyMatch(each -> each.kind() == Heading.Kind.AVAILABLE);
        if (available) {
            notes.tell("Carbohydrate is worked out as CHOAVL + FIBTG; where fibre is not known, neither is it.");
        }
    }
}
