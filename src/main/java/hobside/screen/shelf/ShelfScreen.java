package hobside.screen.shelf;

import hobside.food.Food;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.FoodRows;
import hobside.screen.ask.Typing;
import hobside.screen.bench.Bench;
import hobside.screen.packet.PacketForm;
import hobside.screen.packet.PacketScreen;
import hobside.screen.prices.PricesScreen;
import hobside.screen.read.ReadScreen;
import java.util.List;

/** The shelf: every food there is, found while one types. Letters go into the search, so its own keys are held with Ctrl. */
public record ShelfScreen(Bench bench, Typing typing, int cursor) implements Screen {

    private static final int MOST = 300;

    /** The keys of the shelf. */
    enum Action implements Keys.Bound {
        SEE("enter", "see it in full", "See one food in full: all its figures, parts, measures, warnings, substitutes, price and source."),
        NEW("ctrl-n f2", "new from a packet", "Write down a new food from the panel on its packet."),
        PRICES("ctrl-p f3", "prices", "Price lists: choose one, take prices in a shop, compare two."),
        MOVE("down up page-down page-up", "", "Go to another food of those found."),
        EMPTY("ctrl-u", "", "Empty the line. With nothing typed, the whole shelf is shown."),
        HELP("f1 ?", "help", "This page."),
        BACK("escape ctrl-c", "back", "Back to the Bench.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    public static ShelfScreen of(Bench bench) {
        return new ShelfScreen(bench, Typing.EMPTY, 0);
    }

    /** The same search over a bench that has heard news. */
    public ShelfScreen over(Bench other) {
        ShelfScreen there = new ShelfScreen(other, typing, 0);
        return new ShelfScreen(other, typing, Math.max(0, Math.min(cursor, there.found().size() - 1)));
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told) {
            return bench.below(message, this::over);
        }
        if (message instanceof Message.Pasted pasted) {
            return Next.to(new ShelfScreen(bench, typing.inserting(pasted.text().strip()), 0));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(action -> act(action, pressed.key())).orElseGet(() -> typed(pressed.key()));
        }
        return Next.to(this);
    }

    private Next act(Action action, Key key) {
        return switch (action) {
            case SEE -> found().isEmpty() ? Next.to(this) : Next.to(FoodScreen.of(this, found().get(cursor)));
            case NEW -> Next.to(PacketScreen.of(this, PacketForm.blank(typing.text().strip())));
            case PRICES -> Next.to(PricesScreen.of(bench, this::over));
            case HELP -> Next.to(ReadScreen.help(this, "The shelf", List.of(Action.values())));
            case BACK -> Next.to(bench);
            case EMPTY, MOVE -> typed(key);
        };
    }

    private Next typed(Key key) {
        Typing after = typing.after(key);
        return Next.to(after.text().equals(typing.text())
                ? new ShelfScreen(bench, after, Cursor.after(key, cursor, Math.max(1, found().size())))
                : new ShelfScreen(bench, after, 0));
    }

    private List<Food> found() {
        return bench.desk().demoShelf().find(typing.text(), MOST);
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "The shelf", Style.TITLE);
        String count = bench.desk().study().shelf().ids().size() + " foods";
        frame.putRight(0, frame.width() - 1, count, Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        frame.put(2, 1, "food", Style.PLAIN);
        typing.draw(frame, 2, 6, Math.min(40, frame.width() - 8));
        FoodRows.draw(frame, found(), cursor);
        if (found().isEmpty()) {
            int row = frame.height() - 4;
            for (String line : Lines.wrap("Ctrl-n writes \"" + typing.text() + "\" down from its packet.", frame.width() - 2)) {
                frame.put(row++, 1, line, Style.PLAIN);
            }
        }
        Keys.line(frame, List.of(Action.values()));
    }
}
