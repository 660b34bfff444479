package hobside.file;

import hobside.food.Composition;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Measure;
import hobside.food.MeltClass;
import hobside.food.Part;
import hobside.food.Source;
import hobside.measure.Density;
import hobside.measure.Grams;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads food records: one object each, from a file of foods or from the inline foods of a dish. */
final class FoodReader {

    private static final List<String> KINDS = List.of("foods/1");
    private static final Keys FILE_KEYS = Keys.of("hobside", "group", "note", "foods");
    private static final Keys KEYS = Keys.of("id", "name", "also", "group", "source", "melts", "edible", "lean", "parts", "per100g",
            "packet", "overruled", "asPublished", "fatEnergy", "density", "measures", "allergens", "cautions");
    private static final Keys SOURCE_KEYS = Keys.of("table", "number");
    private static final Keys PART_KEYS = Keys.of("part", "food", "share");
    private static final Keys MEASURE_KEYS = Keys.of("name", "grams", "asBought");

    private static final Bounds SHARE = Bounds.of(0, 0.999, "share of the edible weight", "write 0.3 for 30 %");
    private static final Bounds EDIBLE = Bounds.of(0.001, 1, "share of the weight as bought that is eaten", "write 0.73 for 73 %");
    private static final Bounds FAT_ENERGY = Bounds.of(1, 10, "kcal per g of fat", "leave it out for the general factor 9");
    private static final Bounds DENSITY = Bounds.of(0.01, 5, "g per ml", "weigh 100 ml of it and divide by 100");
    private static final Bounds MEASURE = Bounds.of(0.001, 100_000, "g", "weigh one of it");

    private final String group;

    private FoodReader(String group) {
        this.group = group;
    }

    /** The records of a file of foods, as far as they are sound. */
    static List<FoodRecord> file(RawFile file, Problems problems) {
        return Kind.of(file, KINDS, problems).map(tree -> records(tree, problems)).orElse(List.of());
    }

    /** The tree of a file of foods; of a damaged one what can be read of it, with its problems. */
    static Optional<Json.Obj> tree(RawFile file, Problems problems) {
        Optional<Json.Obj> sound = Kind.of(file, KINDS, problems);
        if (sound.isPresent() || file.bytes().length > RawFile.MOST_BYTES) {
            return sound;
        }
        JsonRest.Rest rest = JsonHoles.read(file.bytes());
        return rest.tree().filter(tree -> tree instanceof Json.Obj object && Parts.FOODS.isSoundBefore(object, rest.open())).map(tree -> (Json.Obj) tree)
                .filter(tree -> KINDS.contains(Kind.word(tree)));
    }

    /** The records of such a tree, as far as they are sound. */
    static List<FoodRecord> records(Json.Obj tree, Problems problems) {
        return Fields.of(tree, Where.TOP, FILE_KEYS, problems)
                .map(fields -> new FoodReader(fields.textOr("group", Limits.ID, "own")).all(fields))
                .orElse(List.of());
    }

    /** The records under the key "foods" of an object; no id twice. */
    static List<FoodRecord> inline(Fields fields) {
        return new FoodReader("own").all(fields);
    }

    private List<FoodRecord> all(Fields fields) {
        List<FoodRecord> records = new ArrayList<>();
        List<Json> items = fields.list("foods", Limits.FOODS);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field("foods").item(i);
            Fields.of(items.get(i), where, KEYS, fields.problems()).flatMap(this::record).ifPresent(records::add);
        }
        return records;
    }

    private Optional<FoodRecord> record(Fields fields) {
        int before = fields.problems().count();
        Optional<Label> named = label(fields);
        Handling handling = handling(fields);
        boolean cut = fields.has("lean") || fields.has("parts");
        boolean packet = fields.has("packet");
        oneKind(fields, cut);
        Optional<Label> label = packet ? named.flatMap(known -> fromPacket(known, handling, fields)) : named;
        Optional<Composition> composition = cut ? Optional.empty()
                : packet ? label.flatMap(known -> known.source().packet()).flatMap(known -> known.composition(handling.density()))
                : PerHundred.of(fields);
        Optional<FoodRecord.Ref> lean = cut ? ref(fields, "lean") : Optional.empty();
        List<FoodRecord.PartRef> parts = cut ? parts(fields) : List.of();
        if (label.isEmpty() || fields.problems().count() > before) {
            return Optional.empty();
        }
        FoodRecord.Place place = new FoodRecord.Place(fields.problems(), fields.where(), fields.line());
        return Optional.of(new FoodRecord(label.get(), handling, composition, lean, parts, place));
    }

    private static void oneKind(Fields fields, boolean cut) {
        if (fields.has("packet") && (cut || fields.has("per100g"))) {
            fields.fault("", "a packet beside other figures", Wanted.of("a packet alone", "delete per100g, lean and parts, or the packet"));
        } else if (fields.has("overruled") && !fields.has("packet")) {
            fields.fault("overruled", "checks overruled without a packet", Wanted.of("a packet", "delete this line"));
        } else if (!fields.has("packet") && cut == fields.has("per100g")) {
            fields.fault("", cut ? "per100g beside lean and parts" : "neither per100g nor lean and parts",
                    Wanted.of("either per100g, or lean with parts", "give the figures of 100 g, or what the cut is put together from"));
        }
    }

    private static Optional<Label> fromPacket(Label label, Handling handling, Fields fields) {
        return PacketReader.source(fields, label.source(), handling.density()).map(label::with);
    }

    private Optional<Label> label(Fields fields) {
        Optional<String> id = Ids.of(fields, "id");
        Optional<String> name = fields.text("name", Limits.NAME);
        List<String> also = fields.texts("also", 30, Limits.NAME);
        String kind = fields.textOr("group", Limits.ID, group);
        Source source = !fields.has("source") ? Source.OWN
                : Fields.of(fields.value("source"), fields.where().field("source"), SOURCE_KEYS, fields.problems())
                        .map(FoodReader::source).orElse(Source.OWN);
        return id.isEmpty() || name.isEmpty() ? Optional.empty() : Optional.of(new Label(id.get(), name.get(), also, kind, source));
    }

    private static Source source(Fields fields) {
        return new Source(fields.text("table", Limits.NAME).orElse(""), fields.textOr("number", Limits.ID, ""));
    }

    private static Handling handling(Fields fields) {
        Optional<MeltClass> melts = fields.has("melts") ? fields.word("melts", MeltClass.values()) : Optional.empty();
        OptionalDouble density = fields.number("density", DENSITY);
        Handling.Warnings warnings = new Handling.Warnings(
                new HashSet<>(fields.texts("allergens", 30, Limits.ID)), new HashSet<>(fields.texts("cautions", 30, Limits.ID)));
        return new Handling(fields.number("edible", EDIBLE).orElse(1), melts,
                fields.number("fatEnergy", FAT_ENERGY).orElse(Handling.GENERAL_FAT_ENERGY),
                density.isPresent() ? Optional.of(Density.of(density.getAsDouble())) : Optional.empty(), measures(fields), warnings);
    }

    private static List<Measure> measures(Fields fields) {
        List<Measure> measures = new ArrayList<>();
        List<Json> items = fields.list("measures", 50);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field("measures").item(i);
            Fields.of(items.get(i), where, MEASURE_KEYS, fields.problems()).flatMap(FoodReader::measure).ifPresent(measures::add);
        }
        return measures;
    }

    /** A measure is looked up by the unit of an amount, which is in small letters and begins with one. */
    private static Optional<Measure> measure(Fields fields) {
        Optional<String> name = fields.text("name", Limits.ID);
        OptionalDouble grams = fields.needed("grams", MEASURE);
        boolean asBought = fields.yes("asBought");
        if (name.isEmpty() || grams.isEmpty()) {
            return Optional.empty();
        }
        if (!Character.isLowerCase(name.get().charAt(0)) || !name.get().equals(name.get().toLowerCase(Locale.ROOT))) {
            fields.fault("name", Shown.quoted(name.get()), Wanted.of("a measure in small letters that begins with a letter",
                    "write it as in \"2 tins\" or \"1 cup, chopped\", without the number"));
            return Optional.empty();
        }
        return Optional.of(new Measure(name.get(), Grams.of(grams.getAsDouble()), asBought));
    }

    private static Optional<FoodRecord.Ref> ref(Fields fields, String key) {
        FoodRecord.Place place = new FoodRecord.Place(fields.problems(), fields.where().field(key), fields.lineOf(key));
        return Ids.of(fields, key).map(id -> new FoodRecord.Ref(id, place));
    }

    private static List<FoodRecord.PartRef> parts(Fields fields) {
        List<FoodRecord.PartRef> parts = new ArrayList<>();
        List<Json> items = fields.list("parts", Part.Kind.values().length);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field("parts").item(i);
            Fields.of(items.get(i), where, PART_KEYS, fields.problems()).flatMap(FoodReader::part).ifPresent(parts::add);
        }
        boolean twice = parts.stream().map(FoodRecord.PartRef::kind).distinct().count() < parts.size();
        double most = parts.stream().mapToDouble(part -> part.share().high()).sum();
        if (items.isEmpty() || twice || most >= 1) {
            fields.fault("parts", items.isEmpty() ? "no parts" : twice ? "a part twice" : "shares that leave nothing",
                    Wanted.of("each part once, together less than the whole",
                            "write the share of fat, skin or liquid, or give per100g instead"));
        }
        return parts;
    }

    private static Optional<FoodRecord.PartRef> part(Fields fields) {
        Optional<Part.Kind> kind = fields.word("part", Part.Kind.values());
        Optional<FoodRecord.Ref> food = ref(fields, "food");
        Optional<Range> share = fields.range("share", SHARE);
        return kind.isEmpty() || food.isEmpty() || share.isEmpty()
                ? Optional.empty()
                : Optional.of(new FoodRecord.PartRef(kind.get(), food.get(), share.get()));
    }
}
