package hobside.screen.prices;

import hobside.file.Library;
import hobside.file.PriceFile;
import hobside.food.PriceList;
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
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.read.ReadScreen;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** All price lists, one for each place and day: which one is in use, and what can be done with each. */
public record PricesScreen(Bench bench, Function<Bench, Screen> back, int cursor, String said) implements Screen {

    /** The column of the day, on a screen of the home size and on a narrower one. */
    private static final int PLACE = 38;
    private static final int PLACE_NARROW = 24;

    /** The keys of the price lists. */
    enum Action implements Keys.Bound {
        OPEN("enter", "open", "See the prices of this list, and change them when the list is yours."),
        USE("space", "use", "Reckon with this list from now on, on every screen."),
        NEW("n", "new", "A new list for a place and a day, empty, then take prices in the shop."),
        COPY("c", "copy", "A new list that begins with the prices of this one: the same shop on another day."),
        COMPARE("d", "compare", "Hold this list against another, food by food, and what the dish on the bench costs on either."),
        TILL("t", "till", "What the dish on the bench costs at the till, in whole packs, and where a swap breaks even."),
        DELETE("x delete", "", "Delete a list of your own."),
        HELP("?", "help", "This page."),
        BACK("escape q ctrl-c", "back", "Back to where you came from.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    /** Over the Bench. */
    public static PricesScreen of(Bench bench) {
        return of(bench, there -> there);
    }

    /** Over another screen, which is made anew for the bench that has heard news. */
    public static PricesScreen of(Bench bench, Function<Bench, Screen> back) {
        return new PricesScreen(bench, back, 0, "");
    }

    public PricesScreen saying(String words) {
        return new PricesScreen(bench, back, cursor, words);
    }

    PricesScreen over(Bench other) {
        int last = other.desk().study().prices().all().size() - 1;
        return new PricesScreen(other, back, Math.max(0, Math.min(cursor, last)), "");
    }

    private Library.Prices prices() {
        return bench.desk().study().prices();
    }

    private PriceFile current() {
        return prices().all().get(cursor);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told) {
            return bench.below(message, there -> heard(told, there));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> moved(pressed.key()));
        }
        return Next.to(this);
    }

    /** A list that was just made is opened for its first price. */
    private Screen heard(Message.Told told, Bench there) {
        if (told.answer() instanceof Answer.Priced priced && priced.list().isPresent()) {
            PricesScreen under = over(there);
            ListScreen list = ListScreen.of(under, priced.list().get());
            return priced.list().get().list().packs().isEmpty() ? EntryScreen.into(list) : list;
        }
        return over(there).saying(there.said());
    }

    private Next moved(Key key) {
        return Next.to(new PricesScreen(bench, back, Cursor.after(key, cursor, prices().all().size()), ""));
    }

    private Next act(Action action) {
        return switch (action) {
            case OPEN -> Next.to(ListScreen.of(this, current()));
            case USE -> Next.doing(this, new Work.UsePrices(current()));
            case NEW -> NewList.ask(this, Optional.empty());
            case COPY -> NewList.ask(this, Optional.of(current().list()));
            case COMPARE -> compare();
            case TILL -> Next.to(ReadScreen.page(this, "What " + bench.demo().dish().name() + " costs", width -> TillPage.lines(bench, width)));
            case DELETE -> delete();
            case HELP -> Next.to(ReadScreen.help(this, "Price lists", List.of(Action.values())));
            case BACK -> Next.to(back.apply(bench));
        };
    }

    private Next compare() {
        List<PriceFile> others = prices().all().stream().filter(each -> !each.equals(current())).toList();
        if (others.isEmpty()) {
            return Next.to(saying("There is only one list. n makes another, c copies this one for another day."));
        }
        List<Menu.Row> rows = others.stream().map(each -> new Menu.Row(PriceText.heading(each.list()), each.list().packs().size() + " prices",
                "In " + each.list().currency().many() + ".")).toList();
        return Next.to(MenuScreen.of(this, new Menu("Compare " + current().list().heading().place() + " with", "Food by food, by weight as bought.", rows,
                index -> Next.to(ReadScreen.page(this, "Two price lists",
                        width -> ComparePage.lines(bench, current().list(), others.get(index).list(), width)))), 0));
    }

    private Next delete() {
        if (!current().isOwn()) {
            return Next.to(saying("It comes with the program and stays. Space uses another list instead."));
        }
        List<Menu.Row> rows = List.of(new Menu.Row("Keep it", "", "Nothing changes."),
                new Menu.Row("Delete it", "", "Its file in foods/own/prices is deleted."));
        return Next.to(MenuScreen.of(this, new Menu("Delete " + PriceText.heading(current().list()) + "?", "This cannot be undone.", rows,
                index -> index == 0 ? Next.to(this) : Next.doing(this, new Work.DeletePrices(current()))), 0));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "Price lists", Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
        frame.put(2, 3, "place", Style.QUIET);
        frame.put(2, frame.width() < 76 ? PLACE_NARROW : PLACE, "day", Style.QUIET);
        frame.putRight(2, frame.width() - 2, "prices", Style.QUIET);
        int room = frame.height() - 7;
        int first = Lines.firstShown(cursor, prices().all().size(), room);
        for (int i = 0; i < room && first + i < prices().all().size(); i++) {
            row(frame.part(new Area(3 + i, 0, 1, frame.width())), prices().all().get(first + i));
            Cursor.mark(frame.part(new Area(3 + i, 0, 1, frame.width())), first + i == cursor);
        }
        frame.horizontal(frame.height() - 4, 0, frame.width() - 1);
        int row = frame.height() - 3;
        String words = said.isEmpty() ? "One list is in use: every cost you see comes from it. A food without a price makes a cost \"at least\"." : said;
        for (String line : Lines.wrap(words, frame.width() - 2).stream().limit(2).toList()) {
            frame.put(row++, 1, line, said.isEmpty() ? Style.QUIET : Style.STRONG);
        }
        Keys.line(frame, List.of(Action.values()));
    }

    private void row(Frame line, PriceFile file) {
        boolean narrow = line.width() < 76;
        PriceList list = file.list();
        String right = (file.equals(prices().inUse()) ? "in use · " : "") + (file.isOwn() ? "own" : "bundled") + (narrow ? "" : " · " + list.currency().code());
        line.put(0, 3, Lines.fit(list.heading().place(), narrow ? PLACE_NARROW - 5 : PLACE - 5), Style.PLAIN);
        line.put(0, narrow ? PLACE_NARROW : PLACE, list.heading().date(), Style.PLAIN);
        line.putRight(0, line.width() - 7, right, Style.QUIET);
        line.putRight(0, line.width() - 2, String.valueOf(list.packs().size()), Style.PLAIN);
    }
}
