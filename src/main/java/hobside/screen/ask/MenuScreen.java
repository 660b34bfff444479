package hobside.screen.ask;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.Typed;
import java.util.List;
import java.util.Optional;

/** Lets one choose from a menu. Enter chooses, Escape goes back. */
public record MenuScreen(Screen back, Menu menu, int cursor) implements Screen {

    private static final int ABOUT_ROWS = 4;

    /** The keys of every menu. */
    enum Action implements Keys.Bound {
        CHOOSE("enter", "choose"),
        BACK("escape q ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    public static MenuScreen of(Screen back, Menu menu, int cursor) {
        return new MenuScreen(back, menu, Math.max(0, Math.min(cursor, menu.rows().size() - 1)));
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return message.isNews() ? back.update(message).over(below -> new MenuScreen(below, menu, cursor)) : Next.to(this);
    }

    private Next pressed(Key key) {
        if (Action.CHOOSE.binding().isFor(key) && !menu.rows().isEmpty()) {
            return menu.then().apply(cursor);
        }
        if (Action.BACK.binding().isFor(key)) {
            return Next.to(back);
        }
        return Next.to(of(back, menu, Cursor.after(key, cursor, menu.rows().size())));
    }

    @Override
    public Optional<Typed> typed() {
        return back.typed();
    }

    @Override
    public Typed.About whereTyped() {
        return back.whereTyped();
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, Lines.fit(menu.title(), frame.width() - 2), Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
        int top = intro(frame);
        int room = frame.height() - ABOUT_ROWS - top - 2;
        int first = Lines.firstShown(cursor, menu.rows().size(), room);
        for (int i = 0; i < room && first + i < menu.rows().size(); i++) {
            row(frame.part(new Area(top + i, 0, 1, frame.width())), menu.rows().get(first + i), first + i == cursor);
        }
        about(frame);
        Keys.line(frame, List.of(Action.values()));
    }

    /** In full, on two rows where one is too short; the row below the blank one after it. */
    private int intro(Frame frame) {
        int row = 2;
        for (String line : Lines.wrap(menu.intro(), frame.width() - 2)) {
            frame.put(row++, 1, line, Style.QUIET);
        }
        return row + 1;
    }

    private static void row(Frame line, Menu.Row row, boolean here) {
        int end = line.width() - 2;
        line.put(0, 3, Lines.fit(row.label(), end - row.right().length() - 5), Style.PLAIN);
        line.putRight(0, end, row.right(), Style.QUIET);
        Cursor.mark(line, here);
    }

    private void about(Frame frame) {
        int row = frame.height() - ABOUT_ROWS - 2;
        frame.horizontal(row++, 0, frame.width() - 1);
        if (menu.rows().isEmpty()) {
            frame.put(row, 1, "There is nothing to choose from here.", Style.PLAIN);
            return;
        }
        for (String line : Lines.wrap(menu.rows().get(cursor).about(), frame.width() - 2)) {
            if (row < frame.height() - 1) {
                frame.put(row++, 1, line, Style.PLAIN);
            }
        }
    }
}
