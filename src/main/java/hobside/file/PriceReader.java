package hobside.file;

import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Money;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads a price list: packs as they stand on the shelf of one shop on one day. */
public final class PriceReader {

    private static final Keys FILE_KEYS =
            Keys.of("hobside", "place", "date", "currency", "unit", "units", "symbol", "minorDigits", "invented", "note", "prices");
    private static final Keys KEYS = Keys.of("food", "pack", "price");

    private final Shelf shelf;
    private final Set<String> seen = new HashSet<>();

    private PriceReader(Shelf shelf) {
        this.shelf = shelf;
    }

    public static Read<PriceList> read(RawFile file, Shelf shelf) {
        Problems problems = new Problems(file.name());
        Optional<PriceList> list = Kind.of(file, List.of("prices/1"), problems)
                .flatMap(tree -> Fields.of(tree, Where.TOP, FILE_KEYS, problems))
                .flatMap(new PriceReader(shelf)::list);
        return Read.of(list, problems);
    }

    /** The same, and of a damaged list the prices that can be read; a food whose price is missing makes a total "at least". */
    public static Read<PriceList> salvage(RawFile file, Shelf shelf) {
        Read<PriceList> strict = read(file, shelf);
        return strict.value().isPresent() ? strict : Salvage.of(file, strict, Parts.PRICES, (tree, problems) -> Kind.of(tree, List.of("prices/1"), problems)
                .flatMap(sound -> Fields.of(sound, Where.TOP, FILE_KEYS, problems)).flatMap(new PriceReader(shelf)::list));
    }

    private Optional<PriceList> list(Fields fields) {
        PriceList.Heading heading = new PriceList.Heading(fields.text("place", Limits.NAME).orElse(""),
                fields.textOr("date", Limits.ID, ""), fields.yes("invented"));
        Optional<Currency> currency = currency(fields);
        List<PriceList.Pack> packs = new ArrayList<>();
        List<Json> items = fields.list("prices", Limits.FOODS);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field("prices").item(i);
            Currency counted = currency.orElse(Currency.NONE);
            Fields.of(items.get(i), where, KEYS, fields.problems()).flatMap(row -> pack(row, counted)).ifPresent(packs::add);
        }
        return currency.map(known -> PriceList.of(heading, known, packs));
    }

    private static Optional<Currency> currency(Fields fields) {
        Optional<String> code = fields.text("currency", Limits.ID);
        if (code.isPresent() && !Currency.isCode(code.get())) {
            fields.fault("currency", Shown.quoted(code.get()), Wanted.of("a code of three capitals (ISO 4217)",
                    "write EUR, GBP, AUD ..., or XXX for no currency"));
            return Optional.empty();
        }
        String one = fields.textOr("unit", Limits.ID, code.orElse(""));
        String many = fields.textOr("units", Limits.ID, one);
        String sign = fields.textOr("symbol", 8, code.orElse(""));
        int digits = fields.whole("minorDigits", Bounds.of(0, 4, "digits after the point", "write 2 for cents"), 2);
        return code.map(known -> new Currency(known, one, many, sign, digits));
    }

    private Optional<PriceList.Pack> pack(Fields fields, Currency currency) {
        Optional<Food> food = food(fields);
        Optional<String> size = fields.text("pack", Limits.ID);
        Optional<Money> price = price(fields, currency);
        if (food.isEmpty() || size.isEmpty() || price.isEmpty()) {
            return Optional.empty();
        }
        Optional<PriceList.Pack> pack = Amount.parse(size.get()).flatMap(known -> PriceList.Pack.of(food.get(), known, price.get()));
        if (pack.isEmpty()) {
            fields.fault("pack", Shown.quoted(size.get()), Amounts.wanted(food.get(), "1 kg"));
        }
        return pack;
    }

    private Optional<Food> food(Fields fields) {
        Optional<String> id = Ids.of(fields, "food");
        Optional<Food> food = id.flatMap(shelf::food);
        if (id.isPresent() && food.isEmpty()) {
            fields.fault("food", "the unknown food \"" + id.get() + "\"",
                    Wanted.of("the id of a food on the shelf", Nearest.hintOr(id.get(), shelf.ids(),
                            "add a food of that id to foods/own, or delete this price")));
        }
        if (food.isPresent() && !seen.add(food.get().id())) {
            fields.fault("food", "a second price of \"" + food.get().id() + "\"", Wanted.of("one pack of each food",
                    "keep the pack that is usually bought"));
        }
        return food;
    }

    /** A price is written as a text, "12.50", so that no digit is lost; a plain number will do. */
    private static Optional<Money> price(Fields fields, Currency currency) {
        Json value = fields.value("price");
        String written = value instanceof Json.Text text ? text.value() : value instanceof Json.Num num
                ? num.written() : "";
        Optional<Money> price = Money.parse(written, currency);
        if (price.isEmpty()) {
            fields.fault("price", value == null ? "nothing" : value.shown(),
                    Wanted.of("a price such as \"12.50\", 0 or more, with at most " + currency.minorDigits() + " digits after the point",
                            "write the price of the whole pack"));
        }
        return price;
    }
}
