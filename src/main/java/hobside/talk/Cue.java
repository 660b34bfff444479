package hobside.talk;

/** One unit of the narrated script: something to say, to do, to show, to ask, or to take care of. */
public record Cue(Kind kind, String words) {

    /** What the presenter does with a cue, and the word that stands in front of it. */
    public enum Kind {
        SAY("Say"),
        DO("Do"),
        SHOW("Show"),
        ASK("Ask"),
        TAKE_CARE("Take care");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public static Cue say(String words) {
        return new Cue(Kind.SAY, words);
    }

    public static Cue act(String words) {
        return new Cue(Kind.DO, words);
    }

    public static Cue show(String words) {
        return new Cue(Kind.SHOW, words);
    }

    public static Cue ask(String words) {
        return new Cue(Kind.ASK, words);
    }

    public static Cue takeCare(String words) {
        return new Cue(Kind.TAKE_CARE, words);
    }
}
