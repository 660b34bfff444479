package hobside.file;

import hobside.food.PriceList;
import hobside.measure.Currency;

/** Writes a price list, one pack a line, so that it is read back the same. */
public final class PriceWriter {

    private PriceWriter() {}

    public static String file(PriceList list) {
        Currency money = list.currency();
        Page page = new Page(0).text("hobside", "prices/1").text("place", list.heading().place()).textIfAny("date", list.heading().date())
                .text("currency", money.code()).text("unit", money.one()).text("units", money.many()).text("symbol", money.sign())
                .number("minorDigits", money.minorDigits());
        if (list.heading().invented()) {
            page.raw("invented", "true");
        }
        return page.rows("prices", list.packs().stream().map(PriceWriter::row).toList()).written() + "\n";
    }

    private static Row row(PriceList.Pack pack) {
        String size = Numbers.written(pack.size().count()) + (pack.size().unit().isEmpty() ? "" : " " + pack.size().unit());
        return new Row().text("food", pack.foodId()).text("pack", size).text("price", pack.price().digits());
    }
}
