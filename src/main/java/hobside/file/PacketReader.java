package hobside.file;

import hobside.food.Doubt;
import hobside.food.PacketLabel;
import hobside.food.Plausibility;
import hobside.food.Printed;
import hobside.food.Source;
import hobside.measure.Amount;
import hobside.measure.Density;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the panel of a packet and the checks that were overruled for it. Every check but that of energy is made again; what is
 * hard to believe is a fault unless it was overruled with a reason.
 */
final class PacketReader {

    private static final Keys KEYS = Keys.of(Arrays.stream(Printed.values()).map(Printed::word).toList()).and("per");
    private static final Keys REASON_KEYS = Keys.of("check", "reason");

    private PacketReader() {}

    /** The source with its panel; empty, with problems, when the panel is at fault. */
    static Optional<Source> source(Fields food, Source written, Optional<Density> density) {
        int before = food.problems().count();
        List<Doubt.Overruled> overruled = overruled(food);
        Optional<PacketLabel> label = Fields.of(food.value("packet"), food.where().field("packet"), KEYS, food.problems())
                .flatMap(fields -> label(fields, density, overruled));
        return label.isEmpty() || food.problems().count() > before ? Optional.empty() : Optional.of(written.with(label.get(), overruled));
    }

    private static Optional<PacketLabel> label(Fields fields, Optional<Density> density, List<Doubt.Overruled> overruled) {
        Optional<Amount> per = per(fields, density);
        Map<Printed, Double> figures = new EnumMap<>(Printed.class);
        for (Json.Entry entry : fields.entries()) {
            Optional<Printed> printed = Printed.parse(entry.key());
            OptionalDouble figure = printed.isEmpty() ? OptionalDouble.empty() : fields.number(entry, bounds(printed.get()));
            if (figure.isPresent()) {
                figures.put(printed.get(), figure.getAsDouble());
            }
        }
        Optional<PacketLabel> label = per.map(known -> new PacketLabel(known, figures));
        label.ifPresent(known -> check(known, density, overruled, fields));
        return label;
    }

    /** A large serving may hold more than 100 g could; what 100 g may hold is checked with the rest. */
    private static Bounds bounds(Printed printed) {
        return Bounds.of(0, printed.most() * PacketLabel.MOST_PER / 100, printed.unit() + " as printed", "leave it out if it is not printed");
    }

    private static Optional<Amount> per(Fields fields, Optional<Density> density) {
        Optional<Amount> per = fields.text("per", Limits.ID).flatMap(Amount::parse);
        boolean volume = per.isPresent() && per.get().unit().equals("ml");
        if (per.filter(PacketLabel::isPer).isEmpty()) {
            fields.fault("per", fields.has("per") ? fields.value("per").shown() : "nothing", Wanted.of("what the figures are for, in g or ml, up to 10,000",
                    "write \"100 g\", \"100 ml\" or the serving, such as \"30 g\""));
            return Optional.empty();
        }
        if (volume && density.isEmpty()) {
            fields.fault("per", "figures for a volume, and no density", Wanted.of("a density beside figures for ml", "weigh 100 ml and divide by 100"));
            return Optional.empty();
        }
        return per;
    }

    private static void check(PacketLabel label, Optional<Density> density, List<Doubt.Overruled> overruled, Fields fields) {
        for (Doubt doubt : Plausibility.withoutEnergy(label, density)) {
            if (overruled.stream().noneMatch(each -> each.check() == doubt.check())) {
                fields.fault(fields.has(doubt.about().word()) ? doubt.about().word() : "", doubt.words(), Wanted.of("figures that fit together",
                        "look at the packet again" + (doubt.isImpossible() ? "" : ", or overrule the check \"" + doubt.check().word() + "\" with a reason")));
            }
        }
    }

    private static List<Doubt.Overruled> overruled(Fields food) {
        List<Doubt.Overruled> overruled = new ArrayList<>();
        List<Json> items = food.list("overruled", Doubt.Check.values().length);
        for (int i = 0; i < items.size(); i++) {
            Where where = food.where().field("overruled").item(i);
            Fields.of(items.get(i), where, REASON_KEYS, food.problems()).flatMap(PacketReader::reason).ifPresent(overruled::add);
        }
        return overruled;
    }

    private static Optional<Doubt.Overruled> reason(Fields fields) {
        List<String> words = Arrays.stream(Doubt.Check.values()).filter(check -> check != Doubt.Check.AMOUNT).map(Doubt.Check::word).toList();
        Optional<Doubt.Check> check = fields.word("check", word -> Doubt.Check.parse(word).filter(known -> known != Doubt.Check.AMOUNT), words);
        Optional<String> reason = fields.text("reason", Doubt.Overruled.MOST);
        return check.isEmpty() || reason.isEmpty() ? Optional.empty() : Optional.of(new Doubt.Overruled(check.get(), reason.get()));
    }
}
