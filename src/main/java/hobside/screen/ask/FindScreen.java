package hobside.screen.ask;

import hobside.food.Food;
import hobside.food.Shelf;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import java.util.List;

/** Finds a food on the shelf while one types. Enter takes it, Escape goes back. */
public record FindScreen(Screen back, Search search, Typing typing, int cursor) implements Screen {

    private static final int MOST = 60;

    /** What is looked for and where, and what happens to the food that is found. */
    public record Search(String title, Shelf shelf, Then then) {}

    /** Where a found food leads; {@code here} is the search itself, to come back to. */
    public interface Then {
        Next with(Screen here, Food food);
    }

    /** The keys of the search. */
    enum Action implements Keys.Bound {
        TAKE("enter", "take it"),
        BACK("escape ctrl-c", "back"),
        MOVE("down up", "choose");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    public static FindScreen of(Screen back, Search search) {
        return new FindScreen(back, search, Typing.EMPTY, 0);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Pasted pasted) {
            return Next.to(new FindScreen(back, search, typing.inserting(pasted.text().strip()), 0));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return relayed(message);
    }

    /** News and the time of day belong to the screen below. */
    private Next relayed(Message message) {
        Next below = back.update(message);
        return new Next(below.screen().map(screen -> new FindScreen(screen, search, typing, cursor)), below.effects());
    }

    private Next pressed(Key key) {
        if (key.kind() == Key.Kind.ENTER) {
            List<Food> found = found();
            return found.isEmpty() ? Next.to(this) : search.then().with(this, found.get(cursor));
        }
        if (Action.BACK.binding().isFor(key)) {
            return Next.to(back);
        }
        Typing typed = typing.after(key);
        return Next.to(typed.text().equals(typing.text())
                ? new FindScreen(back, search, typed, Cursor.after(key, cursor, Math.max(1, found().size())))
                : new FindScreen(back, search, typed, 0));
    }

    private List<Food> found() {
        return search.shelf().find(typing.text(), MOST);
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, search.title(), Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
        frame.put(2, 1, "food", Style.PLAIN);
        typing.draw(frame, 2, 6, Math.min(40, frame.width() - 8));
        FoodRows.draw(frame, found(), cursor);
        Keys.line(frame, List.of(Action.values()));
    }
}
