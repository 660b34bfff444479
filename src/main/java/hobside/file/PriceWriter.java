package hobside.file;

import hobside.food.PriceList;
import hobside.measure.Currency;
import java.util.List;

/** Writes a price list, one pack a line, so that {@link PriceReader} reads it back the same. */
public final class PriceWriter {

    private PriceWriter() {}

    public static String file(PriceList list) {
        Currency currency = list.currency();
        Page page = new Page(0).text("hobside", "prices/1").text("place", list.heading().place())
                .textIfAny("date", list.heading().date()).text("currency", currency.code())
                .text("unit", currency.one()).text("units", currency.many()).text("symbol", currency.sign())
                .number("minorDigits", currency.minorDigits());
        if (list.heading().invented()) {
            page.raw("invented", "true");
        }
        List<Row> rows = list.packs().stream().map(PriceWriter::row).toList();
        return page.rows("prices", rows).written() + "\n";
    }

    private static Row row(PriceList.Pack pack) {
        return new Row().text("food", pack.foodId()).text("pack", size(pack)).text("price", pack.price().digits());
    }

    /** The size as it was written where that is exact, else its weight. */
    private static String size(PriceList.Pack pack) {
        String written = AmountWriter.written(pack.size());
        return written.startsWith("\"") ? written.substring(1, written.length() - 1) : Numbers.written(pack.asBought().value()) + " g";
    }
}
