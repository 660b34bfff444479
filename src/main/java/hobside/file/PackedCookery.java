package hobside.file;

import hobside.food.Cookery;
import hobside.food.Factor;
import hobside.food.Factors;
import hobside.food.FatKept;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The page of what is known about cooking: the rows of fat kept, and the typical shares in the order of their names. */
final class PackedCookery {

    private PackedCookery() {}

    static byte[] page(Cookery cookery) {
        PackOut out = new PackOut();
        out.number(cookery.fatKept().saturatedSpread());
        out.count(cookery.fatKept().rows().size());
        for (FatKept.Row row : cookery.fatKept().rows()) {
            out.text(row.melts());
            out.text(row.method());
            out.number(row.curve().hold());
            out.number(row.curve().bend());
            out.number(row.spread().below());
            out.number(row.spread().above());
            out.number(row.spread().noise());
            out.text(row.source());
        }
        for (Factors.Name name : Factors.Name.values()) {
            PackedFoods.range(cookery.factors().of(name).range(), out);
            out.text(cookery.factors().of(name).source());
        }
        return out.bytes();
    }

    static Cookery read(PackIn in) {
        double saturatedSpread = in.number();
        int size = in.count();
        List<FatKept.Row> rows = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            rows.add(new FatKept.Row(in.text(), in.text(), new FatKept.Curve(in.number(), in.number()),
                    new FatKept.Spread(in.number(), in.number(), in.number()), in.text()));
        }
        Map<Factors.Name, Factor> factors = new EnumMap<>(Factors.Name.class);
        for (Factors.Name name : Factors.Name.values()) {
            factors.put(name, new Factor(PackedFoods.range(in), in.text()));
        }
        return new Cookery(FatKept.of(rows, saturatedSpread), Factors.of(factors));
    }
}
