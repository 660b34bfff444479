package hobside.screen.live;

import hobside.screen.Next;
import hobside.screen.Screen;

/** A screen on which a talk is run: before an audience, or for practice. */
public interface Onstage extends Screen {
    Playing playing();

    /** The cue of this key is gone to. */
    Next jumping(String cue);
}
