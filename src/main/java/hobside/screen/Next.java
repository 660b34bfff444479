package hobside.screen;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What comes next: a screen, or none when the user leaves, and the work to be done on the way there. */
public record Next(Optional<Screen> screen, List<Effect> effects) {
    public Next {
        effects = List.copyOf(effects);
    }

    /** Goes on with a screen. */
    public static Next to(Screen screen) {
        return new Next(Optional.of(screen), List.of());
    }

    /** Goes on with a screen while work is done. */
    public static Next doing(Screen screen, Effect... effects) {
        return new Next(Optional.of(screen), List.of(effects));
    }

    /** The same with something laid over the screen it goes on with, as when news reaches a screen below. */
    public Next over(UnaryOperator<Screen> laid) {
        return new Next(screen.map(laid), effects);
    }

    /** Leaves, after the last work is done. */
    public static Next leave(Effect... effects) {
        return new Next(Optional.empty(), List.of(effects));
    }
}
