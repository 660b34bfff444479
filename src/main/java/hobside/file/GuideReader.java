package hobside.file;

import hobside.dish.Stage;
import hobside.guide.Band;
import hobside.guide.Caution;
import hobside.guide.Cautions;
import hobside.guide.Claim;
import hobside.guide.ClaimKind;
import hobside.guide.Component;
import hobside.guide.Condition;
import hobside.guide.EnergyFactors;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import hobside.guide.Per;
import hobside.guide.Published;
import hobside.guide.Trigger;
import hobside.guide.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the published yardsticks: daily guides, claims, bands, energy factors and cautions, each kind from a file of its own. */
public final class GuideReader {

    private static final Bounds ANY = Bounds.of(0, 100_000, "", "see the example files in foods/guides");
    private static final Bounds MINUTES = Bounds.of(1, Limits.MINUTES, "minutes", "say how long food may stay out, or leave it out");
    private static final int MOST = 1_000;

    private static final Keys FILE = Keys.of("hobside", "about", "energy", "guides", "claims", "bands", "cautions");
    private static final Keys ENERGY = Keys.of(PublishedReader.KEYS).and("protein-kJ", "fat-kJ", "carbohydrate-kJ", "fibre-kJ", "alcohol-kJ",
            "protein-kcal", "fat-kcal", "carbohydrate-kcal", "fibre-kcal", "alcohol-kcal", "kJ-per-kcal");
    private static final Keys GUIDE = Keys.of(PublishedReader.KEYS).and("sentence", "lines");
    private static final Keys LINE = Keys.of("of", "figure", "unit", "sense");
    private static final Keys CLAIM = Keys.of(PublishedReader.KEYS).and("kind", "per", "conditions");
    private static final Keys CONDITION = Keys.of("rule", "of", "figure", "unit");
    private static final Keys BAND = Keys.of(PublishedReader.KEYS).and("of", "per", "low-up-to", "medium-up-to", "big-portion-over", "big-portion-high-above");
    private static final Keys CAUTION = Keys.of(PublishedReader.KEYS).and("stage", "when", "say", "figures");
    private static final Keys ADVISED = Keys.of("place", "text", "celsius", "minutes", "source", "date", "mark", "note");

    private final Fields fields;

    private GuideReader(Fields fields) {
        this.fields = fields;
    }

    /** All yardsticks of these files together; the cautions of one file at least must hold one that is always said. */
    public static Read<GuideBook> read(List<RawFile> files) {
        List<InputProblem> faults = new ArrayList<>();
        List<GuideReader> readers = new ArrayList<>();
        List<Problems> noted = new ArrayList<>();
        for (RawFile file : files) {
            Problems problems = new Problems(file.name());
            Kind.of(file, List.of("guides/1"), problems).flatMap(tree -> Fields.of(tree, Where.TOP, FILE, problems))
                    .ifPresent(fields -> readers.add(new GuideReader(fields)));
            noted.add(problems);
        }
        Optional<GuideBook> book = book(readers);
        noted.forEach(problems -> faults.addAll(problems.all()));
        return faults.isEmpty() ? new Loaded<>(book.orElseThrow()) : new Rejected<>(faults);
    }

    private static Optional<GuideBook> book(List<GuideReader> readers) {
        List<Caution> cautions = all(readers, "cautions", CAUTION, GuideReader::caution);
        GuideBook book = new GuideBook(all(readers, "energy", ENERGY, GuideReader::energy), all(readers, "guides", GUIDE, GuideReader::guide),
                all(readers, "claims", CLAIM, GuideReader::claim), all(readers, "bands", BAND, GuideReader::band),
                cautions.isEmpty() ? Cautions.NONE : Cautions.from(cautions));
        return Optional.of(book);
    }

    private static <T> List<T> all(List<GuideReader> readers, String key, Keys keys, Function<Fields, Optional<T>> make) {
        List<T> rows = new ArrayList<>();
        readers.forEach(reader -> rows.addAll(rows(reader.fields, key, keys, make)));
        return rows;
    }

    private static <T> List<T> rows(Fields fields, String key, Keys keys, Function<Fields, Optional<T>> make) {
        List<T> rows = new ArrayList<>();
        List<Json> items = fields.list(key, MOST);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field(key).item(i);
            Fields.of(items.get(i), where, keys, fields.problems()).flatMap(row -> sound(row, () -> make.apply(row))).ifPresent(rows::add);
        }
        return rows;
    }

    /** A row that breaks a rule of the guides themselves, such as bands out of order, is a fault of the file. */
    private static <T> Optional<T> sound(Fields row, Supplier<Optional<T>> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException broken) {
            row.fault("", broken.getMessage(), Wanted.of("a row that holds together", "compare it with its source"));
            return Optional.empty();
        }
    }

    private static double number(Fields row, String key) {
        OptionalDouble number = row.needed(key, ANY);
        return number.orElse(Double.NaN);
    }

    private static Optional<EnergyFactors> energy(Fields row) {
        EnergyFactors.PerGram kilojoules = column(row, "kJ");
        EnergyFactors.Kilocalories kilocalories = row.has("kJ-per-kcal")
                ? EnergyFactors.Kilocalories.dividing(number(row, "kJ-per-kcal"))
                : EnergyFactors.Kilocalories.of(column(row, "kcal"));
        return PublishedReader.published(row).map(known -> new EnergyFactors(known, kilojoules, kilocalories));
    }

    private static EnergyFactors.PerGram column(Fields row, String unit) {
        return new EnergyFactors.PerGram(number(row, "protein-" + unit), number(row, "fat-" + unit), number(row, "carbohydrate-" + unit),
                number(row, "fibre-" + unit), number(row, "alcohol-" + unit));
    }

    private static Optional<Guide> guide(Fields row) {
        Optional<Published> published = PublishedReader.published(row);
        Optional<String> sentence = row.text("sentence", Limits.NOTE);
        List<Guide.Line> lines = rows(row, "lines", LINE, GuideReader::line);
        return published.isPresent() && !lines.isEmpty() ? sentence.map(words -> new Guide(published.get(), words, lines)) : Optional.empty();
    }

    private static Optional<Guide.Line> line(Fields row) {
        Optional<Component> of = component(row);
        Optional<Guide.Sense> sense = row.word("sense", Guide.Sense::parse, words(Guide.Sense.values(), Guide.Sense::word));
        double figure = number(row, "figure");
        return of.flatMap(known -> unit(row, known).flatMap(unit -> sense.map(meant -> new Guide.Line(known, figure, unit, meant))));
    }

    private static Optional<Component> component(Fields row) {
        return row.word("of", Component::parse, words(Component.values(), Component::told));
    }

    private static Optional<Unit> unit(Fields row, Component of) {
        return row.word("unit", word -> Unit.parse(word, of), List.of(of.unit(), "% of energy", "% of kcal", "%"));
    }

    private static <T> List<String> words(T[] values, Function<T, String> word) {
        return Arrays.stream(values).map(word).toList();
    }

    private static Optional<Per> per(Fields row) {
        return row.word("per", Per::parse, words(Per.values(), Per::word));
    }

    private static Optional<Claim> claim(Fields row) {
        Optional<Published> published = PublishedReader.published(row);
        Optional<ClaimKind> kind = row.word("kind", ClaimKind::parse, words(ClaimKind.values(), ClaimKind::word));
        Optional<Per> per = per(row);
        List<Condition> conditions = rows(row, "conditions", CONDITION, GuideReader::condition);
        boolean whole = published.isPresent() && kind.isPresent() && per.isPresent() && !conditions.isEmpty();
        return whole ? Optional.of(new Claim(published.get(), kind.get(), per.get(), conditions)) : Optional.empty();
    }

    private static Optional<Condition> condition(Fields row) {
        Optional<Condition.Rule> rule = row.word("rule", Condition.Rule::parse, words(Condition.Rule.values(), Condition.Rule::word));
        Optional<Component> of = component(row);
        double figure = number(row, "figure");
        return of.flatMap(known -> unit(row, known).flatMap(unit -> rule.map(meant -> new Condition(meant, known, figure, unit))));
    }

    private static Optional<Band> band(Fields row) {
        Optional<Component> of = component(row);
        Optional<Per> per = per(row);
        Band.BigPortion portion = new Band.BigPortion(number(row, "big-portion-over"), number(row, "big-portion-high-above"));
        Band.Edges edges = new Band.Edges(number(row, "low-up-to"), number(row, "medium-up-to"), portion);
        return PublishedReader.published(row).flatMap(known -> of.flatMap(what -> per.map(each -> new Band(known, what, each, edges))));
    }

    private static Optional<Caution> caution(Fields row) {
        Optional<Published> published = PublishedReader.published(row);
        Optional<Stage> stage = row.word("stage", Stage::parse, words(Stage.values(), Stage::word));
        List<Trigger> when = new ArrayList<>();
        row.texts("when", MOST, Limits.NAME).forEach(word -> Trigger.parse(word).ifPresentOrElse(when::add, () ->
                row.fault("when", Shown.quoted(word), Wanted.of("always, food KEY, change KIND, cooking METHOD, frying or allergen-added", "correct it"))));
        Optional<String> say = row.text("say", Limits.NOTE);
        List<Caution.Advised> figures = rows(row, "figures", ADVISED, GuideReader::advised);
        boolean whole = published.isPresent() && stage.isPresent() && say.isPresent() && !when.isEmpty();
        return whole ? Optional.of(new Caution(published.get(), stage.get(), when, new Caution.Advice(say.get(), figures))) : Optional.empty();
    }

    private static Optional<Caution.Advised> advised(Fields row) {
        Optional<String> place = row.text("place", Limits.NAME);
        Optional<String> text = row.text("text", Limits.NOTE);
        OptionalDouble celsius = row.number("celsius", ANY);
        int minutes = row.whole("minutes", MINUTES, 0);
        return PublishedReader.citation(row).flatMap(citation -> place.flatMap(where -> text.map(words ->
                new Caution.Advised(where, words, celsius, minutes == 0 ? OptionalInt.empty() : OptionalInt.of(minutes), citation))));
    }
}
