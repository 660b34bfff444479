package hobside.talk.plain;

import java.util.List;

/** One sentence, where it begins in its text, and its words in order; the places of the words are those in the whole text. */
public record Sentence(String text, int at, List<Word> words) {

    public Sentence {
        words = List.copyOf(words);
    }
}
