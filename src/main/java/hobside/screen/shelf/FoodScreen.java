package hobside.screen.shelf;

import hobside.file.PriceFile;
import hobside.food.Food;
import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Size;
import hobside.screen.Style;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Work;
import hobside.screen.packet.PacketForm;
import hobside.screen.packet.PacketScreen;
import hobside.screen.prices.EntryScreen;
import hobside.screen.prices.PricesScreen;
import hobside.screen.read.ReadScreen;
import java.util.List;

/** One food in full. A food of the user's can be changed and deleted; any other can be copied as one of the user's. */
public record FoodScreen(ShelfScreen shelf, Food food, int top, String said) implements Screen {

    private static final int PAGE = 8;

    /** The keys of a food. */
    enum Action implements Keys.Bound {
        PRICE("p", "price", "Say what a pack of it costs, on the price list in use."),
        NEW("n ctrl-n f2", "new from a packet", "Write down a new food from the panel on its packet."),
        COPY("c", "copy", "Write down a food of your own that begins with the figures of this one."),
        EDIT("e", "edit", "Change a food of your own. Foods that come with the program cannot be changed, only copied."),
        DELETE("x delete", "", "Take a food of your own off the shelf."),
        DOWN("down j", "", "One line down."),
        UP("up k", "", "One line up."),
        FORTH("space page-down", "", "Further down."),
        FAR_UP("page-up backspace", "", "Further up."),
        HELP("?", "help", "This page."),
        BACK("escape enter q ctrl-c", "back", "Back to the shelf.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    static FoodScreen of(ShelfScreen shelf, Food food) {
        return new FoodScreen(shelf, food, 0, "");
    }

    /** The food as the shelf has it now, over a bench that has heard news. */
    public static FoodScreen over(ShelfScreen shelf, Food food, Bench bench) {
        Food now = bench.desk().demoShelf().food(food.id()).orElse(food);
        return new FoodScreen(shelf.over(bench), now, 0, bench.said());
    }

    private Bench bench() {
        return shelf.bench();
    }

    private boolean isOwn() {
        return bench().desk().study().isOwn(food);
    }

    private FoodScreen saying(String words) {
        return new FoodScreen(shelf, food, top, words);
    }

    private FoodScreen at(int line) {
        return new FoodScreen(shelf, food, Math.max(0, Math.min(lastTop(), line)), "");
    }

    /** As far down as there is something to read on a screen of the home size. */
    private int lastTop() {
        return FoodPage.laidOut(FoodPage.of(food, bench().desk().study()), Size.HOME.width()).size() - PAGE;
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told) {
            return bench().below(message, this::heard);
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> Next.to(this));
        }
        return Next.to(this);
    }

    /** A food that is no longer there leads back to the shelf. */
    private Screen heard(Bench bench) {
        boolean there = bench.desk().demoShelf().food(food.id()).isPresent();
        return there ? over(shelf, food, bench) : shelf.over(bench);
    }

    private Next act(Action action) {
        return switch (action) {
            case PRICE -> price();
            case NEW -> Next.to(PacketScreen.of(shelf, PacketForm.blank("")));
            case COPY -> Next.to(PacketScreen.of(shelf, PacketForm.copyOf(food)));
            case EDIT -> edit();
            case DELETE -> delete();
            case DOWN -> Next.to(at(top + 1));
            case UP -> Next.to(at(top - 1));
            case FORTH -> Next.to(at(top + PAGE));
            case FAR_UP -> Next.to(at(top - PAGE));
            case HELP -> Next.to(ReadScreen.help(this, "A food", List.of(Action.values())));
            case BACK -> Next.to(shelf);
        };
    }

    private Next price() {
        PriceFile inUse = bench().desk().study().prices().inUse();
        return inUse.isOwn() ? Next.to(EntryScreen.priceOf(food, inUse, bench(), bench -> over(shelf, food, bench)))
                : Next.to(PricesScreen.of(bench(), bench -> over(shelf, food, bench)).saying(
                        "The list in use comes with the program. Make one of your own first: n new, c copy for your shop."));
    }

    private Next edit() {
        if (!isOwn()) {
            return Next.to(saying(whose() + " and stays as it is. c copies it as a food of your own."));
        }
        return food.parts().isEmpty() ? Next.to(PacketScreen.of(shelf, PacketForm.edit(food)))
                : Next.to(saying("It is put together from parts; change it in its file in foods/own. c copies it without its parts."));
    }

    private String whose() {
        return bench().desk().study().shelf().food(food.id()).isPresent() ? "It comes with the program" : "It came with the dish on the bench";
    }

    private Next delete() {
        if (!isOwn()) {
            return Next.to(saying(whose() + " and stays on the shelf."));
        }
        List<Menu.Row> rows = List.of(new Menu.Row("Keep it", "", "Nothing changes."),
                new Menu.Row("Delete it", "", "Its file in foods/own is deleted. Dishes on the bench keep its figures."));
        return Next.to(MenuScreen.of(this, new Menu("Take " + food.name() + " off the shelf?", "This cannot be undone.", rows,
                index -> index == 0 ? Next.to(this) : Next.doing(this, new Work.DeleteFood(food))), 0));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, Lines.fit(food.name(), frame.width() - 24), Style.TITLE);
        frame.putRight(0, frame.width() - 1, isOwn() ? "Shelf · your own" : "Shelf", Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        List<FoodPage.Line> lines = FoodPage.laidOut(FoodPage.of(food, bench().desk().study()), frame.width());
        int room = frame.height() - 5;
        int first = Math.max(0, Math.min(top, lines.size() - room));
        for (int i = 0; i < room && first + i < lines.size(); i++) {
            FoodPage.Line line = lines.get(first + i);
            frame.put(2 + i, 1, line.label(), Style.QUIET);
            frame.put(2 + i, FoodPage.WORDS, line.words(), line.style());
        }
        frame.horizontal(frame.height() - 3, 0, frame.width() - 1);
        int below = lines.size() - first - room;
        frame.put(frame.height() - 2, 1, Lines.fit(said.isEmpty() && below > 0 ? "Space shows " + below + " more lines." : said, frame.width() - 2),
                said.isEmpty() ? Style.QUIET : Style.STRONG);
        Keys.line(frame, List.of(Action.values()));
    }
}
