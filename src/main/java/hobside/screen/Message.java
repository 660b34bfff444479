package hobside.screen;

import java.time.Instant;

/** What a screen can be told. */
public sealed interface Message {
    /** Whether it is for the screen below when another lies over it: news from outside, not what the user does. */
    default boolean isNews() {
        return this instanceof Told || this instanceof Woken;
    }

    /** A key was pressed. */
    record KeyPressed(Key key) implements Message {}

    /** The screen has another size now. */
    record Resized(Size size) implements Message {}

    /** A text was pasted in one go: lines end in {@code \n}; it may hold anything and is not a row of keys. */
    record Pasted(String text) implements Message {}

    /** The answer to an {@link Effect}. */
    record Told(Object answer) implements Message {}

    /** The time asked for by {@link Wake} has come; {@code now} is the time of day at that moment. */
    record Woken(Instant now) implements Message {}
}
