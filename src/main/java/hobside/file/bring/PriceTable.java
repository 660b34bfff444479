package hobside.file.bring;

import hobside.file.Limits;
import hobside.file.Loaded;
import hobside.file.Nearest;
import hobside.file.Problems;
import hobside.file.Read;
import hobside.file.Rejected;
import hobside.file.Shown;
import hobside.file.Wanted;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.food.Weigher;
import hobside.measure.Amount;
import hobside.measure.Currency;
import hobside.measure.Grams;
import hobside.measure.Money;
import hobside.measure.SpoonSet;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Brings in a table of prices, one pack a row: food (an id or a name of the shelf), pack, price; and if they are there currency,
 * place and date. The currency may also stand in the heading of the price, such as {@code price (EUR)}.
 */
public final class PriceTable {

    private static final List<String> KNOWN = List.of("food", "id", "name", "pack", "price", "currency", "place", "date");
    private static final Weigher WEIGHER = new Weigher(SpoonSet.METRIC);

    private final Sheet sheet;
    private final Notes notes;
    private final Map<String, Integer> columns = new HashMap<>();
    private final FoodNamed foods;
    private final Map<String, PriceList.Pack> packs = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private final Currency usual;
    private Currency currency;
    private String place = "";
    private String date = "";
    private Decimals decimals;

    private PriceTable(Sheet sheet, Notes notes, FoodNamed foods, Currency usual) {
        this.sheet = sheet;
        this.notes = notes;
        this.foods = foods;
        this.usual = usual;
    }

    /**
     * The review of a table; rejected when it is no table of prices at all.
     *
     * @param usual the money of the kitchen, for tables that do not name theirs
     * @param name the name it would be kept under
     */
    public static Read<Review> review(Input input, Shelf shelf, Currency usual, String name) throws IOException {
        Problems problems = new Problems(input.name());
        Optional<Sheet> sheet = Sheet.of(input, problems);
        if (sheet.isEmpty()) {
            return new Rejected<>(problems.all());
        }
        PriceTable table = new PriceTable(sheet.get(), new Notes(problems), FoodNamed.on(shelf), usual);
        return table.headings() ? new Loaded<>(table.review(name)) : new Rejected<>(problems.all());
    }

    private boolean headings() {
        for (int i = 0; i < sheet.headings().size(); i++) {
            String written = sheet.headings().get(i).strip().toLowerCase(Locale.ROOT);
            boolean price = written.startsWith("price");
            columns.putIfAbsent(price ? "price" : written, i);
            String code = price ? written.substring("price".length()).replaceAll("[\\s()\\[\\],_:]", "").toUpperCase(Locale.ROOT) : "";
            if (price && Currency.isCode(code)) {
                currency = known(code);
            }
        }
        boolean sound = foodColumn() >= 0 && columns.containsKey("pack") && columns.containsKey("price");
        if (!sound) {
            notes.problems().add(1, Shown.quoted(String.join(", ", sheet.headings())), Wanted.of("a first line with the headings food (or id, or name), pack and price",
                    Nearest.hintOr(sheet.headings().get(0), KNOWN, "write the headings into the first line")));
        }
        notes.tell(sheet.told());
        return sound;
    }

    private int foodColumn() {
        return columns.getOrDefault("food", columns.getOrDefault("id", columns.getOrDefault("name", -1)));
    }

    private Review review(String name) throws IOException {
        decimals = sheet.decimals(column -> column == columns.get("price"));
        notes.tell(decimals.told());
        sheet.each(notes, this::row);
        if (currency == null) {
            currency = usual;
            notes.tell("No currency is named: the prices are taken as " + usual.many() + ".");
        }
        return notes.review(new Review.Goods.Prices(name, PriceList.of(new PriceList.Heading(place.isEmpty() ? name.replace('-', ' ') : place, date, false),
                currency, packs.values().stream().map(pack -> new PriceList.Pack(pack.foodId(), pack.size(), pack.asBought(),
                        Money.of(pack.price().minor(), currency))).toList())));
    }

    private void row(CsvRows rows) {
        Optional<Food> food = food(rows);
        Optional<Money> price = money(rows) ? price(rows) : Optional.empty();
        Optional<PriceList.Pack> pack = food.isEmpty() ? Optional.empty() : pack(rows, food.get(), price);
        if (pack.isEmpty()) {
            notes.leaveOutOne();
            return;
        }
        place = place.isEmpty() ? words(rows, "place", Limits.NAME) : place;
        date = date.isEmpty() ? words(rows, "date", Limits.ID) : date;
        packs.put(pack.get().foodId(), pack.get());
        notes.offerOne();
    }

    private String words(CsvRows rows, String column, int most) {
        int at = columns.getOrDefault(column, -1);
        return at < 0 ? "" : Sheet.line(rows, at, column, notes).filter(text -> text.length() <= most).orElse("");
    }

    private Optional<Food> food(CsvRows rows) {
        Optional<String> written = Sheet.line(rows, foodColumn(), "food", notes);
        int name = columns.getOrDefault("name", -1);
        Optional<Food> food = written.flatMap(foods::exactly).or(() -> name < 0 ? Optional.empty() : foods.exactly(rows.text(name)));
        if (written.isPresent() && food.isEmpty()) {
            notes.fault(rows.line(), "food", written.get().isEmpty() ? "nothing" : "the unknown food " + Shown.quoted(written.get()),
                    Wanted.of("the id or a name of a food on the shelf", foods.hint(written.get())));
        }
        Integer before = food.isPresent() ? lines.putIfAbsent(food.get().id(), rows.line()) : null;
        if (before != null) {
            notes.fault(rows.line(), "food", "a second price of \"" + food.get().id() + "\"", Wanted.of("one pack of each food; the first stands in line " + before,
                    "keep the pack that is usually bought"));
            return Optional.empty();
        }
        return food;
    }

    /** One table, one currency: the first that is named. */
    private boolean money(CsvRows rows) {
        int at = columns.getOrDefault("currency", -1);
        String code = at < 0 ? "" : rows.text(at).toUpperCase(Locale.ROOT);
        if (code.isEmpty()) {
            return true;
        }
        boolean form = Currency.isCode(code);
        currency = currency == null && form ? known(code) : currency;
        if (!form || !currency.code().equals(code)) {
            notes.fault(rows.line(), "currency", Shown.quoted(rows.text(at)), Wanted.of(form ? "one currency in a table, " + currency.code() : "a code of three capitals (ISO 4217)",
                    form ? "put these rows into a table of their own" : "write EUR, GBP, AUD ..., or XXX for no currency"));
            return false;
        }
        return true;
    }

    /** The money of the kitchen where the code is the same, else what the Java library knows of the code. */
    private Currency known(String code) {
        if (code.equals(usual.code())) {
            return usual;
        }
        try {
            int digits = java.util.Currency.getInstance(code).getDefaultFractionDigits();
            return new Currency(code, code, code, code, digits < 0 ? 2 : digits);
        } catch (IllegalArgumentException unknown) {
            return new Currency(code, code, code, code, 2);
        }
    }

    private Optional<Money> price(CsvRows rows) {
        String written = rows.text(columns.get("price"));
        OptionalDouble figure = decimals.figure(Decimals.bare(written));
        Currency counted = currency == null ? usual : currency;
        double minor = figure.orElse(-1) * counted.minorPerMajor();
        boolean sound = minor >= 0 && minor < 1e11 && Math.abs(minor - Math.rint(minor)) < 1e-6;
        if (!sound) {
            notes.fault(rows.line(), "price", written.isEmpty() ? "nothing" : Shown.quoted(written), Wanted.of("a price of 0 or more with a decimal "
                    + (decimals.mark() == '.' ? "point" : "comma") + " and at most " + counted.minorDigits() + " digits after it", "write the price of the whole pack"));
        }
        return sound ? Optional.of(Money.of(Math.round(minor), counted)) : Optional.empty();
    }

    private Optional<PriceList.Pack> pack(CsvRows rows, Food food, Optional<Money> price) {
        String written = rows.text(columns.get("pack"));
        Optional<Amount> amount = written.length() > Limits.ID ? Optional.empty() : Amount.parse(written);
        Optional<Grams> grams = amount.flatMap(known -> WEIGHER.weigh(known, food)).map(Weigher.Weights::asBought);
        if (grams.isEmpty() || grams.get().value() <= 0 || grams.get().value() > Limits.WEIGHT) {
            notes.fault(rows.line(), "pack", written.isEmpty() ? "nothing" : Shown.quoted(written), Wanted.of("an amount of " + food.name() + " in one of its units: "
                    + Nearest.listed(WEIGHER.unitsFor(food)), "write it as \"1 kg\", or weigh it and give grams"));
            return Optional.empty();
        }
        return price.map(paid -> new PriceList.Pack(food.id(), amount.orElseThrow(), grams.get(), paid));
    }

    /** The list as a table that is read back the same. */
    public static String written(PriceList list, Shelf shelf) {
        CsvOut out = new CsvOut();
        out.row(List.of("food", "name", "pack", "price", "currency", "place", "date"));
        for (PriceList.Pack pack : list.packs()) {
            String name = shelf.food(pack.foodId()).map(Food::name).orElse("");
            out.row(List.of(pack.foodId(), name, pack.size().written(), pack.price().digits(), list.currency().code(),
                    list.heading().place(), list.heading().date()));
        }
        return out.written();
    }
}
