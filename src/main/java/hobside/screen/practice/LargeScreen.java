package hobside.screen.practice;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.Typed;
import hobside.screen.letters.CueText;
import java.util.List;
import java.util.Optional;

/** A question and its answers in letters that a group can read, one at a time. */
record LargeScreen(Screen back, List<String> pages, int at) implements Screen {

    /** The keys of the large letters. */
    enum Action implements Keys.Bound {
        ON("enter right down space", "next"),
        BEFORE("left up", "before"),
        BACK("escape q L ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    @Override
    public Next update(Message message) {
        return message instanceof Message.KeyPressed pressed ? pressed(pressed.key()) : Next.to(this);
    }

    private Next pressed(Key key) {
        return Keys.action(Action.values(), key).map(action -> switch (action) {
            case ON -> Next.to(new LargeScreen(back, pages, Math.min(pages.size() - 1, at + 1)));
            case BEFORE -> Next.to(new LargeScreen(back, pages, Math.max(0, at - 1)));
            case BACK -> Next.to(back);
        }).orElseGet(() -> Next.to(this));
    }

    @Override
    public Optional<Typed> typed() {
        return back.typed();
    }

    @Override
    public void view(Frame frame) {
        CueText.draw(frame.part(new Area(1, 1, frame.height() - 3, frame.width() - 2)), pages.get(at), 0);
        frame.putRight(frame.height() - 1, frame.width() - 1, (at + 1) + " of " + pages.size(), Style.QUIET);
        Keys.line(frame, List.of(Action.values()));
    }
}
