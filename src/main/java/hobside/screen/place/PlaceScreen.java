package hobside.screen.place;

import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Typing;
import java.util.List;

/**
 * Asks where to keep the work, because the kitchen may only be read.
 *
 * @param locked the folder that may only be read, as it is shown
 */
public record PlaceScreen(String locked, Typing typing, String problem) implements Screen {

    private static final int LEFT = 2;
    private static final int WIDEST = 76;

    enum Action implements Keys.Bound {
        KEEP("enter", "keep it there"),
        EMPTY("ctrl-u", "empty the line"),
        LOOK("escape", "only look, keep nothing"),
        LEAVE("ctrl-c", "leave");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    /** With the folder that is offered. */
    public static PlaceScreen of(String locked, String offered) {
        return new PlaceScreen(locked, Typing.of(offered), "");
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Pasted pasted) {
            return Next.to(with(typing.inserting(pasted.text().strip()), ""));
        }
        if (message instanceof Message.Told told) {
            return told.answer() instanceof Place.Refused refused ? Next.to(with(typing, refused.why())) : Next.leave();
        }
        return message instanceof Message.KeyPressed pressed ? pressed(pressed.key()) : Next.to(this);
    }

    private Next pressed(Key key) {
        if (Action.KEEP.binding().isFor(key)) {
            return Next.doing(this, new Place.Keep(typing.text().strip()));
        }
        if (Action.LOOK.binding().isFor(key)) {
            return Next.doing(this, new Place.OnlyLook());
        }
        return Action.LEAVE.binding().isFor(key) ? Next.leave() : Next.to(with(typing.after(key), ""));
    }

    private PlaceScreen with(Typing typed, String trouble) {
        return new PlaceScreen(locked, typed, trouble);
    }

    @Override
    public void view(Frame frame) {
        int width = Math.min(WIDEST, frame.width() - 2 * LEFT);
        frame.put(1, LEFT, "Where shall your work be kept?", Style.TITLE);
        int row = 3;
        for (String paragraph : List.of("The kitchen folder may only be read: nothing can be written to " + locked
                + ". It may be a stick with its lock on, or a disc.",
                "Your dishes, foods, prices and demos are copied to the folder that you name, and your work is kept there. Nothing in the "
                + "old one changes.")) {
            row = wrapped(frame, row, paragraph, Style.PLAIN) + 1;
        }
        frame.put(row, LEFT, "Folder", Style.QUIET);
        typing.draw(frame, row, LEFT + 8, width - 8);
        wrapped(frame, row + 2, problem, Style.WARN);
        Keys.line(frame, List.of(Action.values()));
    }

    private static int wrapped(Frame frame, int from, String words, Style style) {
        int row = from;
        for (String line : Lines.wrap(words, Math.min(WIDEST, frame.width() - 2 * LEFT))) {
            frame.put(row++, LEFT, line, style);
        }
        return row;
    }
}
