package hobside.screen.terminal;

import hobside.screen.Frame;

/** Turns frames into what is sent to the terminal. */
interface Easel {

    /** Forgets what the terminal shows, so that the next frame is sent whole. */
    void forget();

    /** What to send so that this frame is known: nothing when it is known already. */
    String paint(Frame frame);
}
