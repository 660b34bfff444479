package hobside.screen.terminal;

import hobside.screen.Size;
import java.io.IOException;

/** The settings of a terminal device: what happens to keys before a program reads them, and how large the window is. */
interface Tty {
    /** Has each key arrive at once, unseen and without a meaning of its own; returns the size of the window. */
    Size takeOver() throws IOException;

    /** Puts the settings back as they were found. */
    void giveBack() throws IOException;

    Size size() throws IOException;

    /** Puts the settings back, stops the whole job until the shell continues it, then does as {@link #takeOver}. */
    Size pause() throws IOException;
}
