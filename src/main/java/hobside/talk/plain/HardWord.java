package hobside.talk.plain;

/** A word or a few words that many listeners do not know, as found in the talk, what to say instead, and where it stands. */
public record HardWord(String found, String plain, Place place) {}
