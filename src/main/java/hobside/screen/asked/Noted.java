package hobside.screen.asked;

import hobside.screen.Next;

/** What is done with a question that was asked: it is noted, in the words of whoever asked, as answered or to be answered later. */
public interface Noted {
    Next noted(String question, boolean answered);
}
