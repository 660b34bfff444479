package hobside.screen.prices;

import hobside.food.PriceList;
import hobside.food.UnitPrice;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.talk.Written;

/** Prices in words. */
public final class PriceText {

    private PriceText() {}

    /** "14.80 cr"; rounded to the smallest coin. */
    static String money(double minor, Currency currency) {
        return Written.money(new Figure(Range.exactly(minor), false), currency);
    }

    /** "1 kg for 14.80 cr". */
    public static String pack(PriceList.Pack pack, Currency currency) {
        return pack.size().written() + " for " + money((double) pack.price().minor(), currency);
    }

    /** "14.80 cr a kg, 2.03 cr for 100 g eaten". */
    public static String units(UnitPrice unit, Currency currency) {
        String litre = unit.litre().isPresent() ? money(unit.litre().getAsDouble(), currency) + " a litre, " : "";
        return litre + money(unit.kilogram(), currency) + " a kg, " + money(unit.hundredEaten(), currency) + " for 100 g eaten";
    }

    /** "Ostrey Landing quay market, 2026-11-02 (invented)". */
    static String heading(PriceList list) {
        return list.heading().place() + (list.heading().date().isEmpty() ? "" : ", " + list.heading().date())
                + (list.heading().invented() ? " (invented)" : "");
    }
}
