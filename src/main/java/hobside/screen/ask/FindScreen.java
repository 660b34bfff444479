package hobside.screen.ask;

import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Shelf;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.talk.Written;
import java.util.List;
import java.util.OptionalDouble;

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
        return Next.to(this);
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
        List<Food> found = found();
        heading(frame, found.size());
        int room = frame.height() - 9;
        int first = Lines.firstShown(cursor, found.size(), room);
        for (int i = 0; i < room && first + i < found.size(); i++) {
            row(frame.part(new Area(4 + i, 0, 1, frame.width())), found.get(first + i), first + i == cursor);
        }
        frame.horizontal(frame.height() - 5, 0, frame.width() - 1);
        about(frame, found);
        Keys.line(frame, List.of(Action.values()));
    }

    private void heading(Frame frame, int size) {
        frame.put(3, 3, size == 0 ? "nothing fits; try fewer letters or another name" : "per 100 g", Style.QUIET);
        if (size > 0) {
            frame.putRight(3, frame.width() - 20, "saturated", Style.QUIET);
            frame.putRight(3, frame.width() - 11, "fat", Style.QUIET);
            frame.putRight(3, frame.width() - 2, "kJ", Style.QUIET);
        }
    }

    private static void row(Frame line, Food food, boolean here) {
        line.put(0, 3, Lines.fit(food.name(), line.width() - 34), Style.PLAIN);
        line.putRight(0, line.width() - 20, figure(food, Nutrient.FASAT), Style.STRONG);
        line.putRight(0, line.width() - 11, figure(food, Nutrient.FAT), Style.PLAIN);
        line.putRight(0, line.width() - 2, figure(food, Nutrient.ENERC), Style.PLAIN);
        Cursor.mark(line, here);
    }

    private static String figure(Food food, Nutrient nutrient) {
        OptionalDouble figure = food.composition().of(nutrient);
        if (figure.isEmpty()) {
            return "unknown";
        }
        return nutrient == Nutrient.ENERC ? Long.toString(Math.round(figure.getAsDouble())) : Written.number(figure.getAsDouble());
    }

    private void about(Frame frame, List<Food> found) {
        if (found.isEmpty()) {
            return;
        }
        Food food = found.get(cursor);
        String also = food.label().also().isEmpty() ? "" : "Also: " + String.join(", ", food.label().also()) + ". ";
        String source = "Source: " + food.label().source().written() + ".";
        int row = frame.height() - 4;
        for (String line : Lines.wrap(also + source, frame.width() - 2)) {
            if (row < frame.height() - 1) {
                frame.put(row++, 1, line, Style.QUIET);
            }
        }
    }
}
