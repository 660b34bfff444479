package hobside.talk.plain;

/** One spoken sentence, where it stands, how many words it has, and how hard it is by itself. */
public record Measured(String sentence, Place place, int words, Grades grades) {}
