package hobside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One visit to the program, from the first frame to leaving: the screen one is on, the size it has, and the work that the
 * last message brought up. On a screen that is too small, keys reach no screen, so that nothing is done unseen.
 */
public record Visit(Optional<Screen> screen, Size size, Showing showing, List<Effect> due) {
    public static Visit of(Screen first, Size size) {
        return of(first, size, Showing.SIGNS);
    }

    /** {@code showing}: how its frames are shown. */
    public static Visit of(Screen first, Size size, Showing showing) {
        return new Visit(Optional.of(first), size, showing, List.of());
    }

    Visit owing(List<Effect> effects) {
        return new Visit(screen, size, showing, effects);
    }

    /** The visit after a message. */
    public Visit after(Message message) {
        if (message instanceof Message.Resized resized) {
            return new Visit(screen, resized.size(), showing, List.of()).handing(message);
        }
        if (isRoomy() || message instanceof Message.Told || message instanceof Message.Woken) {
            return handing(message);
        }
        return new Visit(leaves(message) ? Optional.empty() : screen, size, showing, List.of());
    }

    public boolean isOver() {
        return screen.isEmpty();
    }

    /** What is to be seen now. */
    public Frame frame() {
        Frame frame = new Frame(size.width(), size.height(), showing);
        if (!isRoomy()) {
            askForRoom(frame);
        } else if (screen.isPresent()) {
            screen.get().view(frame);
        }
        return frame;
    }

    private Visit handing(Message message) {
        Screen from = screen.orElseThrow();
        Next next = from.update(message);
        return new Visit(next.screen(), size, showing, jotting(from.typed(), next));
    }

    /** Whatever screen one types on: what changed in the half-typed text is noted, after all else that is to be done. */
    private static List<Effect> jotting(Optional<Typed> before, Next next) {
        Optional<Typed> now = next.screen().isPresent() ? next.screen().get().typed() : Optional.empty();
        if (now.equals(before)) {
            return next.effects();
        }
        List<Effect> effects = new ArrayList<>(next.effects());
        effects.add(new Jot(now));
        return effects;
    }

    private boolean isRoomy() {
        return size.holds(Size.LEAST);
    }

    private static boolean leaves(Message message) {
        return message instanceof Message.KeyPressed pressed
                && (pressed.key().types('q') || pressed.key().isCtrl('c'));
    }

    private void askForRoom(Frame frame) {
        String[] words = ("Hobside needs " + Size.LEAST.width() + " columns and " + Size.LEAST.height()
                        + " rows; this window has " + size.width() + " and " + size.height()
                        + ". Please make it larger to go on, or press q to leave.")
                .split(" ");
        int row = 0;
        int column = 0;
        for (String word : words) {
            if (column > 0 && column + word.length() > size.width()) {
                row++;
                column = 0;
            }
            column = frame.put(row, column, word) + 1;
        }
    }
}
