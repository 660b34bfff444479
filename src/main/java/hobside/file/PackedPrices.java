package hobside.file;

import hobside.food.PriceList;
import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Grams;
import hobside.measure.Money;
import java.util.ArrayList;
import java.util.List;

/** The page of the price lists: of each its heading, its money, and a row for each pack. */
final class PackedPrices {

    private PackedPrices() {}

    static byte[] page(List<PriceList> lists) {
        PackOut out = new PackOut();
        out.count(lists.size());
        lists.forEach(list -> write(list, out));
        return out.bytes();
    }

    static List<PriceList> read(PackIn in) {
        PriceList[] lists = new PriceList[in.count()];
        for (int i = 0; i < lists.length; i++) {
            lists[i] = list(in);
        }
        return List.of(lists);
    }

    private static void write(PriceList list, PackOut out) {
        out.text(list.heading().place());
        out.text(list.heading().date());
        out.yes(list.heading().invented());
        Currency currency = list.currency();
        out.texts(List.of(currency.code(), currency.one(), currency.many(), currency.sign()));
        out.count(currency.minorDigits());
        out.count(list.packs().size());
        for (PriceList.Pack pack : list.packs()) {
            out.text(pack.foodId());
            out.number(pack.size().count());
            out.text(pack.size().unit());
            out.number(pack.asBought().value());
            out.count(pack.price().minor());
        }
    }

    private static PriceList list(PackIn in) {
        PriceList.Heading heading = new PriceList.Heading(in.text(), in.text(), in.yes());
        String[] money = in.texts();
        Currency currency = new Currency(money[0], money[1], money[2], money[3], in.count());
        int size = in.count();
        List<PriceList.Pack> packs = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            packs.add(new PriceList.Pack(in.text(), Amount.of(in.number(), in.text()), Grams.of(in.number()),
                    Money.of(in.longCount(), currency)));
        }
        return PriceList.of(heading, currency, packs);
    }
}
