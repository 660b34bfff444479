package hobside.file;

import hobside.food.Cookery;
import hobside.food.CookingMethod;
import hobside.food.Factor;
import hobside.food.Factors;
import hobside.food.FatKept;
import hobside.food.MeltClass;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads what the kitchen knows about cooking: the table of fat kept, and the typical shares; each may have a file of its own. */
public final class CookeryReader {

    private static final Keys FILE_KEYS = Keys.of("hobside", "about", "saturatedSpread", "saturatedSource", "fatKept", "shares");
    private static final Keys ROW_KEYS = Keys.of("melts", "method", "hold", "bend", "below", "above", "noise", "source");
    private static final Keys SHARE_KEYS = Keys.of("name", "what", "low", "typical", "high", "source");
    private static final List<String> NAMES = Arrays.stream(Factors.Name.values()).map(Factors.Name::word).toList();
    private static final List<String> MELTS = Stream.concat(Stream.of("any"),
            Arrays.stream(MeltClass.values()).flatMap(kind -> Stream.of(kind.word(), kind.family()))).distinct().toList();
    private static final List<String> METHODS = Stream.concat(Stream.of("any"),
            Arrays.stream(CookingMethod.values()).flatMap(method -> Stream.of(method.word(), method.heat().word()))).distinct().toList();

    private static final String SEE = "see foods/factors";
    private static final Bounds ABOVE_ZERO = Bounds.of(1e-6, 10_000, "", SEE);
    private static final Bounds SHARE = Bounds.of(0, 1, "share", "write 0.75 for 75 %");
    private static final Bounds BELOW = Bounds.of(0, 0.999, "share", "write 0.13 for 13 %");
    private static final Bounds ABOVE = Bounds.of(0, 10, "share", "write 0.18 for 18 %");

    private final List<FatKept.Row> rows = new ArrayList<>();
    private final Map<Factors.Name, Factor> factors = new EnumMap<>(Factors.Name.class);
    private double saturatedSpread = Double.NaN;
    private final Problems problems;

    private CookeryReader(Problems problems) {
        this.problems = problems;
    }

    /** The cookery of one or several files together. */
    public static Read<Cookery> read(List<RawFile> files) {
        List<InputProblem> faults = new ArrayList<>();
        CookeryReader whole = new CookeryReader(new Problems(files.isEmpty() ? "foods/factors" : files.get(0).name()));
        for (RawFile file : files) {
            CookeryReader one = new CookeryReader(new Problems(file.name()));
            one.take(file);
            faults.addAll(one.problems.all());
            whole.add(one);
        }
        return faults.isEmpty() ? whole.finished() : new Rejected<>(faults);
    }

    private void add(CookeryReader one) {
        rows.addAll(one.rows);
        factors.putAll(one.factors);
        saturatedSpread = Double.isNaN(one.saturatedSpread) ? saturatedSpread : one.saturatedSpread;
    }

    private void take(RawFile file) {
        Kind.of(file, List.of("factors/1"), problems)
                .flatMap(tree -> Fields.of(tree, Where.TOP, FILE_KEYS, problems))
                .ifPresent(this::take);
    }

    private void take(Fields fields) {
        fields.number("saturatedSpread", ABOVE).ifPresent(spread -> saturatedSpread = spread);
        List<Json> kept = fields.list("fatKept", 500);
        for (int i = 0; i < kept.size(); i++) {
            Fields.of(kept.get(i), Where.TOP.field("fatKept").item(i), ROW_KEYS, problems).ifPresent(this::row);
        }
        List<Json> shares = fields.list("shares", 100);
        for (int i = 0; i < shares.size(); i++) {
            Fields.of(shares.get(i), Where.TOP.field("shares").item(i), SHARE_KEYS, problems).ifPresent(this::share);
        }
    }

    private void row(Fields fields) {
        int before = problems.count();
        Optional<String> melts = fields.word("melts", known(MELTS), MELTS);
        Optional<String> method = fields.word("method", known(METHODS), METHODS);
        OptionalDouble hold = fields.needed("hold", ABOVE_ZERO);
        OptionalDouble bend = fields.needed("bend", ABOVE_ZERO);
        OptionalDouble below = fields.needed("below", BELOW);
        OptionalDouble above = fields.needed("above", ABOVE);
        OptionalDouble noise = fields.needed("noise", ABOVE);
        Optional<String> source = fields.text("source", Limits.NOTE);
        if (problems.count() > before) {
            return;
        }
        boolean twice = rows.stream().anyMatch(row -> row.melts().equals(melts.get()) && row.method().equals(method.get()));
        if (twice) {
            fields.fault("", "a second row for " + melts.get() + " " + method.get(), Wanted.of("one row for each", "delete one of them"));
            return;
        }
        rows.add(new FatKept.Row(melts.get(), method.get(), new FatKept.Curve(hold.getAsDouble(), bend.getAsDouble()),
                new FatKept.Spread(below.getAsDouble(), above.getAsDouble(), noise.getAsDouble()), source.get()));
    }

    private static Function<String, Optional<String>> known(List<String> words) {
        return word -> words.contains(word) ? Optional.of(word) : Optional.empty();
    }

    private void share(Fields fields) {
        Optional<Factors.Name> name = fields.word("name", CookeryReader::name, NAMES);
        OptionalDouble low = fields.needed("low", SHARE);
        OptionalDouble typical = fields.needed("typical", SHARE);
        OptionalDouble high = fields.needed("high", SHARE);
        Optional<String> source = fields.text("source", Limits.NOTE);
        if (name.isEmpty() || low.isEmpty() || typical.isEmpty() || high.isEmpty() || source.isEmpty()) {
            return;
        }
        boolean ordered = low.getAsDouble() <= typical.getAsDouble() && typical.getAsDouble() <= high.getAsDouble();
        if (!ordered || factors.containsKey(name.get())) {
            fields.fault("", ordered ? "the share " + name.get().word() + " a second time" : "low, typical and high out of order",
                    Wanted.of("each share once, low ≤ typical ≤ high", SEE));
            return;
        }
        factors.put(name.get(), new Factor(Range.of(low.getAsDouble(), typical.getAsDouble(), high.getAsDouble()), source.get()));
    }

    private static Optional<Factors.Name> name(String word) {
        return Arrays.stream(Factors.Name.values()).filter(name -> name.word().equals(word)).findFirst();
    }

    /** All files together must answer for every class of flesh and every share. */
    private Read<Cookery> finished() {
        NAMES.stream().filter(word -> !factors.containsKey(name(word).orElseThrow())).forEach(word ->
                problems.add(0, "no share \"" + word + "\"", Wanted.of("a row for each of " + Nearest.listed(NAMES),
                        "add it under \"shares\"")));
        boolean answersAll = rows.stream().anyMatch(row -> row.melts().equals("any") && row.method().equals("any"));
        if (!answersAll || Double.isNaN(saturatedSpread)) {
            problems.add(0, answersAll ? "no saturatedSpread" : "no row of fatKept for any and any",
                    Wanted.of("a table that answers for every food and method", SEE));
        }
        return problems.isEmpty()
                ? new Loaded<>(new Cookery(FatKept.of(rows, saturatedSpread), Factors.of(factors)))
                : new Rejected<>(problems.all());
    }
}
