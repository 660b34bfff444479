package hobside.screen.prices;

import hobside.file.PriceFile;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.UnitPrice;
import hobside.food.Weigher;
import hobside.measure.Amount;
import hobside.measure.Money;
import hobside.measure.SpoonSet;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.Typed;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.FoodRows;
import hobside.screen.ask.Typing;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Taking prices while walking through a shop: the food, its pack, its price, Enter after each, and on to the next food. Each price
 * is on the disk before the next key is read.
 */
public record EntryScreen(Shop shop, Stage stage, Typing typing, int cursor, String problem) implements Screen {

    /** Where the prices go: the bench, the list, where Escape leads, and what has been taken so far, the last first. */
    record Shop(Bench bench, PriceFile file, Leaving leaving, List<String> taken) {

        Shop {
            taken = List.copyOf(taken);
        }
    }

    /** The way out, and whether it is taken by itself after one price. */
    record Leaving(BiFunction<Bench, PriceFile, Screen> to, boolean afterOne) {}

    /** What is asked: a food, then its pack, then its price. */
    record Stage(Optional<Food> food, Optional<Amount> size) {
        static final Stage FOOD = new Stage(Optional.empty(), Optional.empty());
    }

    /** The keys of taking prices. */
    enum Action implements Keys.Bound {
        TAKE("enter", "take it"),
        MOVE("down up", "choose"),
        BACK("escape ctrl-c", "back one step");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    private static final int FOUND = 60;
    private static final int TAKEN = 12;

    /** One price after another into a list. */
    static EntryScreen into(ListScreen list) {
        return new EntryScreen(new Shop(list.bench(), list.file(), new Leaving(list::over, false), List.of()), Stage.FOOD, Typing.EMPTY, 0, "");
    }

    /** Another price for one food of a list. */
    static EntryScreen change(ListScreen list, Food food) {
        return new EntryScreen(new Shop(list.bench(), list.file(), new Leaving(list::over, true), List.of()), Stage.FOOD, Typing.EMPTY, 0, "").choosing(food);
    }

    /** The price of one food, asked for from a screen that is come back to. */
    public static EntryScreen priceOf(Food food, PriceFile file, Bench bench, Function<Bench, Screen> back) {
        Leaving leaving = new Leaving((there, now) -> back.apply(there), true);
        return new EntryScreen(new Shop(bench, file, leaving, List.of()), Stage.FOOD, Typing.EMPTY, 0, "").choosing(food);
    }

    private EntryScreen choosing(Food food) {
        String first = list().packOf(food).map(pack -> pack.size().written()).orElse("");
        return new EntryScreen(shop, new Stage(Optional.of(food), Optional.empty()), Typing.of(first), 0, "");
    }

    private PriceList list() {
        return shop.file().list();
    }

    private EntryScreen typing(Typing other, int row) {
        return new EntryScreen(shop, stage, other, row, "");
    }

    private EntryScreen saying(String words) {
        return new EntryScreen(shop, stage, typing, cursor, words);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told) {
            return shop.bench().below(message, bench -> heard(told, bench));
        }
        if (message instanceof Message.Pasted pasted) {
            return Next.to(typing(typing.inserting(pasted.text().strip()), 0));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return Next.to(this);
    }

    /** A price that is written makes room for the next food; one that could not be written stays to be tried again. */
    private Screen heard(Message.Told told, Bench bench) {
        if (told.answer() instanceof Answer.Priced priced && priced.list().isPresent()) {
            return shop.leaving().afterOne() ? shop.leaving().to().apply(bench, priced.list().get())
                    : new EntryScreen(new Shop(bench, priced.list().get(), shop.leaving(), taken(priced.list().get().list())), Stage.FOOD, Typing.EMPTY, 0, "");
        }
        Shop there = new Shop(bench, shop.file(), shop.leaving(), shop.taken());
        return new EntryScreen(there, stage, typing, cursor, told.answer() instanceof Answer.Failed failed ? failed.words() : problem);
    }

    private List<String> taken(PriceList list) {
        List<String> taken = new ArrayList<>();
        stage.food().flatMap(food -> list.packOf(food).map(pack -> food.name() + ": " + PriceText.pack(pack, list.currency()))).ifPresent(taken::add);
        taken.addAll(shop.taken());
        return taken.subList(0, Math.min(TAKEN, taken.size()));
    }

    private Next pressed(Key key) {
        if (key.kind() == Key.Kind.ENTER) {
            return stage.food().isEmpty() ? takeFood() : stage.size().isEmpty() ? takeSize() : takePrice();
        }
        if (Action.BACK.binding().isFor(key)) {
            return back();
        }
        Typing typed = typing.after(key);
        return Next.to(typed.text().equals(typing.text()) ? typing(typed, Cursor.after(key, cursor, Math.max(1, found().size()))) : typing(typed, 0));
    }

    private Next back() {
        if (stage.size().isPresent()) {
            Typing size = Typing.of(stage.size().get().written());
            return Next.to(new EntryScreen(shop, new Stage(stage.food(), Optional.empty()), size, 0, ""));
        }
        boolean leaves = stage.food().isEmpty() || shop.leaving().afterOne();
        return Next.to(leaves ? shop.leaving().to().apply(shop.bench().saying(""), shop.file()) : new EntryScreen(shop, Stage.FOOD, Typing.EMPTY, 0, ""));
    }

    private List<Food> found() {
        return stage.food().isEmpty() ? shop.bench().desk().study().shelf().find(typing.text(), FOUND) : List.of();
    }

    private Next takeFood() {
        return Next.to(found().isEmpty() ? this : choosing(found().get(cursor)));
    }

    private Next takeSize() {
        Optional<Amount> size = size();
        return Next.to(size.isEmpty() ? saying("\"" + typing.text().strip() + "\" is no pack of " + stage.food().orElseThrow().name() + ". Units: " + units() + ".")
                : new EntryScreen(shop, new Stage(stage.food(), size), Typing.EMPTY, 0, ""));
    }

    private Optional<Amount> size() {
        Money nothing = Money.of(0, list().currency());
        return Amount.parse(typing.text().strip()).filter(size -> PriceList.Pack.of(stage.food().orElseThrow(), size, nothing).isPresent());
    }

    private String units() {
        return String.join("; ", new Weigher(SpoonSet.METRIC).unitsFor(stage.food().orElseThrow()));
    }

    private Next takePrice() {
        return pack().map(pack -> Next.doing(saying("Writing it down..."), new Work.PutPrices(shop.file().with(list().with(pack)))))
                .orElseGet(() -> Next.to(saying("\"" + typing.text().strip() + "\" is no price. Write what the whole pack costs, with at most "
                        + list().currency().minorDigits() + " digits after the point: " + example() + ".")));
    }

    private String example() {
        return list().currency().minorDigits() == 0 ? "350" : Money.of(Math.round(3.5 * list().currency().minorPerMajor()), list().currency()).digits();
    }

    /** The pack with the price as it is being typed. */
    private Optional<PriceList.Pack> pack() {
        return Money.parse(typing.text().strip(), list().currency())
                .flatMap(price -> PriceList.Pack.of(stage.food().orElseThrow(), stage.size().orElseThrow(), price));
    }

    /** The name of a food is only looked for; its pack and its price are written down. */
    @Override
    public Optional<Typed> typed() {
        boolean untouched = stage.food().isEmpty() || typing.fresh() || typing.text().isEmpty() && stage.size().isEmpty();
        return untouched ? Optional.empty() : Optional.of(new Typed(shop.bench().whereTyped(), stage.food().get().name() + (stage.size().isEmpty() ? ": its pack"
                : ": the price of " + stage.size().get().written()), typing.text()));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, Lines.fit("Take prices: " + PriceText.heading(list()), frame.width() - 14), Style.TITLE);
        frame.putRight(0, frame.width() - 1, list().packs().size() + " prices", Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        if (stage.food().isEmpty()) {
            frame.put(2, 1, "food", Style.PLAIN);
            typing.draw(frame, 2, 6, Math.min(40, frame.width() - 8));
            FoodRows.draw(frame, found(), cursor);
            if (!shop.taken().isEmpty()) {
                frame.putRight(frame.height() - 5, frame.width() - 1, " last: " + Lines.fit(shop.taken().get(0), frame.width() - 12) + " ", Style.STRONG);
            }
        } else {
            asked(frame, stage.food().get());
        }
        Keys.line(frame, List.of(Action.values()));
    }

    private void asked(Frame frame, Food food) {
        frame.put(3, 1, Lines.fit(food.name(), frame.width() - 2), Style.STRONG);
        frame.put(5, 3, "pack", Style.PLAIN);
        frame.put(6, 3, "price", Style.PLAIN);
        typing.draw(frame, stage.size().isEmpty() ? 5 : 6, 10, Math.min(24, frame.width() - 12));
        stage.size().ifPresent(size -> frame.put(5, 10, size.written(), Style.STRONG));
        frame.put(6, 36, stage.size().isEmpty() ? "" : list().currency().many(), Style.QUIET);
        int row = paragraph(frame, 8, unitPrices(), Style.BOARD);
        row = paragraph(frame, row, problem.isEmpty() ? hint() : problem, problem.isEmpty() ? Style.QUIET : Style.WARN);
        String before = list().packOf(food).map(pack -> "On the list so far: " + PriceText.pack(pack, list().currency()) + ".").orElse("");
        row = paragraph(frame, row, before, Style.QUIET) + 1;
        for (String taken : shop.taken()) {
            if (row < frame.height() - 1) {
                frame.put(row++, 1, Lines.fit(taken, frame.width() - 2), Style.QUIET);
            }
        }
    }

    private static int paragraph(Frame frame, int from, String words, Style style) {
        int row = from;
        for (String line : words.isEmpty() ? List.<String>of() : Lines.wrap(words, frame.width() - 2)) {
            if (row < frame.height() - 1) {
                frame.put(row++, 1, line, style);
            }
        }
        return row;
    }

    private String unitPrices() {
        if (stage.size().isEmpty()) {
            return "";
        }
        return pack().map(pack -> "= " + PriceText.units(UnitPrice.of(pack, stage.food().orElseThrow()), list().currency())).orElse("= ... a kg, ... for 100 g eaten");
    }

    private String hint() {
        return stage.size().isEmpty() ? "What one pack holds: 1 kg, 400 g, 1 tin. Units: " + units() + "."
                : "What the whole pack costs: " + example() + ". Enter writes it down.";
    }
}
