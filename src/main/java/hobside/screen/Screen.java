package hobside.screen;

import java.util.Optional;

/** One screen in one state. It never changes: {@code update} answers with the next one. Neither method has side effects. */
public interface Screen {
    /** The next screen, and the work to be done, after a message. */
    Next update(Message message);

    /** Draws this state onto an empty frame of at least {@link Size#LEAST}. */
    void view(Frame frame);

    /** What is typed here and not taken yet; empty when nothing would be lost. */
    default Optional<Typed> typed() {
        return Optional.empty();
    }

    /** What one is working on here, for what is typed over this screen. */
    default Typed.About whereTyped() {
        return Typed.About.NOTHING;
    }
}
