package hobside.screen;

import java.io.IOException;
import java.util.Optional;

/** The place a visit is seen in: a terminal, or a stand-in for one. */
public interface Hall {
    /** Takes over the screen. What stood on it before comes back with {@link #leave}. */
    void enter() throws IOException;

    /** Gives the screen back as it was. May be called twice, from any thread, and never fails. */
    void leave();

    /** The columns and rows there are now. */
    Size size() throws IOException;

    /** How it shows frames. */
    default Showing showing() {
        return Showing.SIGNS;
    }

    /** Shows a frame. After {@link #leave} it does nothing. */
    void paint(Frame frame) throws IOException;

    /** Waits for the next key or paste; empty when no more can come. */
    Optional<Message> read() throws IOException;

    /** Has {@code resized} run whenever the size changes. */
    void whenResized(Runnable resized);

    /** Gives the screen back, sleeps until the user's shell wakes the program, and takes the screen again. */
    void pause() throws IOException;
}
