package hobside.screen.asked;

import hobside.screen.Next;
import hobside.talk.Demo;

/** What is done with a demo that the user keeps, and with the words that tell of it. */
public interface Keep {
    Next keep(Demo changed, String said);
}
