package hobside.screen.read;

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
import hobside.screen.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Locale;
import java.util.function.IntFunction;

/** A page to read, scrolled by the arrow keys. Lines are wrapped to the width there is. */
public record ReadScreen(Screen back, String title, Page page, int top) implements Screen {

    /** The keys of a page. */
    enum Action implements Keys.Bound {
        BACK("escape q ? t p ctrl-c", "back"),
        DOWN("down enter", "down"),
        PAGE("space page-down", "page down"),
        UP("up", "up"),
        PAGE_UP("page-up backspace", "page up");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    /** A page that is laid out for the width there is. */
    public static ReadScreen page(Screen back, String title, IntFunction<List<String>> layout) {
        return new ReadScreen(back, title, Page.of(layout), 0);
    }

    /** Lines to read, wrapped to the width there is. */
    public static ReadScreen text(Screen back, String title, List<String> lines) {
        return page(back, title, width -> wrapped(lines, width));
    }

    /** The help page of a screen, from its table of keys. */
    public static ReadScreen help(Screen back, String name, List<? extends Keys.Bound> actions) {
        List<String> lines = new ArrayList<>(List.of("The keys of this screen:", ""));
        for (Keys.Bound action : actions) {
            Keys.Binding binding = action.binding();
            String keys = binding.allKeys();
            lines.add(keys + "\t" + binding.help());
        }
        lines.addAll(List.of("", "Figures: \"▼ 9.1 g\" is less than before, \"▲\" is more, \"≥\" is at least so much because a figure or a price is not known. "
                + "In brackets stand the low and the high end of what is usual.", "",
                "Hobside gives figures, not medical advice. Follow your local food-safety rules, and leave questions about "
                + "somebody's own health to a doctor or a licensed dietitian."));
        return new ReadScreen(back, name, Page.of(width -> wrapped(lines, width)), 0);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> jump(pressed.key()));
        }
        return message.isNews() ? back.update(message).over(below -> new ReadScreen(below, title, page, top)) : Next.to(this);
    }

    private Next act(Action action) {
        return switch (action) {
            case BACK -> Next.to(back);
            case DOWN -> to(first() + 1);
            case UP -> to(first() - 1);
            case PAGE -> to(first() + page.step());
            case PAGE_UP -> to(first() - page.step());
        };
    }

    private Next jump(Key key) {
        return switch (key.kind()) {
            case HOME -> to(0);
            case END -> to(page.last());
            case CHARACTER, CTRL, FUNCTION, ENTER, ESCAPE, TAB, BACK_TAB, UP, DOWN, LEFT, RIGHT, PAGE_UP, PAGE_DOWN, BACKSPACE, DELETE,
                    INSERT -> Next.to(this);
        };
    }

    /** The window may have grown since. */
    private int first() {
        return Math.min(top, page.last());
    }

    private Next to(int row) {
        return Next.to(new ReadScreen(back, title, page, Math.max(0, Math.min(page.last(), row))));
    }

    @Override
    public Optional<Typed> typed() {
        return back.typed();
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, title, Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
        List<String> lines = page.lines(frame.width() - 2, frame.height() - 4);
        int first = first();
        for (int row = 2; row < frame.height() - 2 && first + row - 2 < lines.size(); row++) {
            String line = lines.get(first + row - 2);
            frame.put(row, 1, line, style(line));
        }
        frame.horizontal(frame.height() - 2, 0, frame.width() - 1);
        // How much of the page one has had before one's eyes: 100 when its end can be seen.
        int seen = first + frame.height() - 4;
        int part = seen >= lines.size() ? 100 : Math.min(99, Math.round(100f * seen / lines.size()));
        frame.putRight(frame.height() - 1, frame.width() - 1, part + " %", Style.QUIET);
        Keys.line(frame.part(new Area(0, 0, frame.height(), frame.width() - 6)), List.of(Action.values()));
    }

    private static List<String> wrapped(List<String> lines, int width) {
        return lines.stream().flatMap(line -> wrapped(line, width).stream()).toList();
    }

    /** A line keeps its indent; what does not fit goes below it, indented alike. */
    private static List<String> wrapped(String line, int width) {
        int tab = line.indexOf('\t');
        if (tab >= 0) {
            return beside(line.substring(0, tab), line.substring(tab + 1), width);
        }
        String text = line.stripLeading();
        String indent = " ".repeat(Math.min(line.length() - text.length(), 20));
        if (TextWidth.of(line) <= width || text.isEmpty()) {
            return List.of(line);
        }
        return Lines.wrap(text, width - indent.length()).stream().map(each -> indent + each).toList();
    }

    /** Keys on the left, what they do on the right. */
    private static List<String> beside(String keys, String words, int width) {
        List<String> lines = new ArrayList<>();
        List<String> names = Lines.wrap(keys, KEYS_WIDE - 1);
        List<String> told = Lines.wrap(words, width - KEYS_WIDE);
        for (int i = 0; i < Math.max(names.size(), told.size()); i++) {
            String left = i < names.size() ? names.get(i) : "";
            String each = i < told.size() ? told.get(i) : "";
            lines.add(left + " ".repeat(Math.max(1, KEYS_WIDE - left.length())) + each);
        }
        return lines;
    }

    private static final int KEYS_WIDE = 18;

    private static Style style(String line) {
        boolean heading = !line.isBlank() && line.equals(line.toUpperCase(Locale.ROOT)) && line.chars().anyMatch(Character::isLetter);
        return heading ? Style.STRONG : Style.PLAIN;
    }
}
