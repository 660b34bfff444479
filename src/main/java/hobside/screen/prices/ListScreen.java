package hobside.screen.prices;

import hobside.file.PriceFile;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.UnitPrice;
import hobside.measure.Money;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.read.ReadScreen;
import java.util.List;

/** The prices of one list, each with what a kilogram and 100 g eaten come to. */
public record ListScreen(PricesScreen lists, PriceFile file, int cursor, String said) implements Screen {

    /** The keys of a price list. */
    enum Action implements Keys.Bound {
        ENTRY("a", "take prices", "Walk through the shop: find the food, its pack, its price, and on to the next, with the keyboard alone."),
        EDIT("enter e", "change", "Another pack or price for this food."),
        DELETE("x delete", "delete", "Take this price off the list. The food then has no price, which is never taken as nothing."),
        HELP("?", "help", "This page."),
        BACK("escape q ctrl-c", "back", "Back to the lists.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    static ListScreen of(PricesScreen lists, PriceFile file) {
        return new ListScreen(lists, file, 0, "");
    }

    Bench bench() {
        return lists.bench();
    }

    /** The same list as it is now, over a bench that has heard news. */
    ListScreen over(Bench bench, PriceFile now) {
        int last = Math.max(0, now.list().packs().size() - 1);
        return new ListScreen(lists.over(bench), now, Math.min(cursor, last), bench.said());
    }

    private List<PriceList.Pack> packs() {
        return List.copyOf(file.list().packs());
    }

    private ListScreen saying(String words) {
        return new ListScreen(lists, file, cursor, words);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told) {
            PriceFile now = told.answer() instanceof Answer.Priced priced ? priced.list().orElse(file) : file;
            return bench().below(message, bench -> over(bench, now));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> moved(pressed.key()));
        }
        return Next.to(this);
    }

    private Next moved(Key key) {
        return Next.to(new ListScreen(lists, file, Cursor.after(key, cursor, Math.max(1, packs().size())), ""));
    }

    private Next act(Action action) {
        return switch (action) {
            case ENTRY -> onOwn(Next.to(EntryScreen.into(this)));
            case EDIT -> packs().isEmpty() ? act(Action.ENTRY) : onOwn(Next.to(EntryScreen.change(this, food(packs().get(cursor)))));
            case DELETE -> packs().isEmpty() ? Next.to(this) : onOwn(Next.doing(this, new Work.PutPrices(file.with(file.list().without(packs().get(cursor).foodId())))));
            case HELP -> Next.to(ReadScreen.help(this, "One price list", List.of(Action.values())));
            case BACK -> Next.to(lists);
        };
    }

    private Next onOwn(Next next) {
        return file.isOwn() ? next : Next.to(saying("It comes with the program and stays as it is. c among the lists copies it as one of your own."));
    }

    private Food food(PriceList.Pack pack) {
        return bench().desk().study().shelf().food(pack.foodId()).orElseThrow();
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, Lines.fit(PriceText.heading(file.list()), frame.width() - 20), Style.TITLE);
        frame.putRight(0, frame.width() - 1, packs().size() + " prices, " + file.list().currency().many(), Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        heading(frame);
        int room = frame.height() - 6;
        int first = Lines.firstShown(cursor, packs().size(), room);
        for (int i = 0; i < room && first + i < packs().size(); i++) {
            Frame line = frame.part(new Area(3 + i, 0, 1, frame.width()));
            row(line, packs().get(first + i));
            Cursor.mark(line, first + i == cursor);
        }
        frame.horizontal(frame.height() - 3, 0, frame.width() - 1);
        boolean quiet = said.isEmpty() && !packs().isEmpty();
        String words = quiet ? about(packs().get(cursor)) : packs().isEmpty() ? "No price yet. a takes the first." : said;
        frame.put(frame.height() - 2, 1, Lines.fit(words, frame.width() - 2), quiet ? Style.QUIET : Style.STRONG);
        Keys.line(frame, List.of(Action.values()));
    }

    private String about(PriceList.Pack pack) {
        return PriceText.pack(pack, file.list().currency()) + "; " + PriceText.units(UnitPrice.of(pack, food(pack)), file.list().currency());
    }

    private static boolean isNarrow(Frame frame) {
        return frame.width() < 76;
    }

    private static void heading(Frame frame) {
        int end = frame.width() - 2;
        frame.put(2, 3, "food", Style.QUIET);
        frame.putRight(2, end - 32, isNarrow(frame) ? "" : "pack", Style.QUIET);
        frame.putRight(2, end - 22, "price", Style.QUIET);
        frame.putRight(2, end - 12, "a kg", Style.QUIET);
        frame.putRight(2, end, "100 g eaten", Style.QUIET);
    }

    /** On a narrow screen the name of the food needs the room of the pack, which is told below the list. */
    private void row(Frame line, PriceList.Pack pack) {
        int end = line.width() - 2;
        int wide = isNarrow(line) ? end - 22 - 10 : end - 32 - 14;
        UnitPrice unit = UnitPrice.of(pack, food(pack));
        line.put(0, 3, Lines.fit(food(pack).name(), wide - 3), Style.PLAIN);
        line.putRight(0, end - 32, isNarrow(line) ? "" : Lines.fit(pack.size().written(), 12), Style.PLAIN);
        line.putRight(0, end - 22, pack.price().digits(), Style.STRONG);
        line.putRight(0, end - 12, bare(unit.kilogram()), Style.PLAIN);
        line.putRight(0, end, bare(unit.hundredEaten()), Style.PLAIN);
    }

    private String bare(double minor) {
        return Money.rounded(minor, file.list().currency()).digits();
    }
}
