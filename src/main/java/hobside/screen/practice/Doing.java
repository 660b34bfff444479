package hobside.screen.practice;

import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.read.ReadScreen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An exercise that is being done by choosing: what all of these have in common. */
interface Doing extends Screen {

    Asking asking();

    /** What can be chosen just now, in words. */
    List<String> rows();

    int cursor();

    /** The same with the cursor on another row. */
    Screen at(int row);

    /** The row under the cursor is taken. */
    Next taken(int row);

    /** A key that only this exercise knows; empty for all others. */
    default Optional<Next> own(Key key) {
        return Optional.empty();
    }

    @Override
    default Next update(Message message) {
        return message instanceof Message.KeyPressed pressed ? own(pressed.key()).orElseGet(() -> pressed(pressed.key())) : Next.to(this);
    }

    private Next pressed(Key key) {
        int digit = key.kind() == Key.Kind.CHARACTER ? key.codePoint() - '1' : -1;
        if (digit >= 0 && digit < Math.min(9, rows().size())) {
            return taken(digit);
        }
        return Keys.action(Choosing.values(), key).map(this::act)
                .orElseGet(() -> Next.to(at(Cursor.after(key, cursor(), rows().size()))));
    }

    private Next act(Choosing action) {
        return switch (action) {
            case TAKE -> taken(cursor());
            case LIFT -> Next.to(this);
            case LARGE -> large();
            case OTHER -> PracticeScreen.another(asking());
            case HELP -> Next.to(ReadScreen.help(this, "Practice", List.of(Choosing.values())));
            case BACK -> Next.to(PracticeScreen.of(asking().room(), asking().trainee(), ""));
        };
    }

    private Next large() {
        List<String> pages = new ArrayList<>(List.of(asking().exercise().prompt().asked()));
        for (int i = 0; i < rows().size(); i++) {
            pages.add((i + 1) + ". " + rows().get(i));
        }
        return Next.to(new LargeScreen(this, pages, 0));
    }

    @Override
    default void view(Frame frame) {
        Sheet.rows(frame, Sheet.head(asking(), frame), rows(), cursor());
        Sheet.because(asking(), frame);
        Keys.line(frame, List.of(Choosing.values()));
    }
}
