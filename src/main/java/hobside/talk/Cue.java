package hobside.talk;

import java.util.List;

/**
 * One unit of the narrated script: something to say, to do, to show, to ask, or to take care of.
 *
 * @param key what it is known by, whatever its words: {@code change:trim:ribs/why}; cautions end in {@code /care:KEY}
 * @param text its words: as they are said, and as they are written
 */
public record Cue(String key, Kind kind, Text text, Details details) {

    /** What the presenter does with a cue, and the word that stands in front of it in English. */
    public enum Kind {
        SAY("say"),
        DO("do"),
        SHOW("show"),
        ASK("ask"),
        TAKE_CARE("take-care");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word that files and keys know it by. */
        public String word() {
            return word;
        }

        /** Whether its words are spoken aloud. */
        public boolean isSpoken() {
            return this == SAY || this == ASK || this == TAKE_CARE;
        }
    }

    /** Who does it. */
    public enum Who {
        PRESENTER("presenter"),
        HELPER("helper");

        private final String word;

        Who(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The words as written, with gaps, and as said. */
    public record Text(String raw, String said) {

        static Text of(String raw) {
            return new Text(raw, raw);
        }
    }

    /** What has to be at hand: equipment, and props to be shown. */
    public record Needs(List<String> equipment, List<String> props) {

        public static final Needs NOTHING = new Needs(List.of(), List.of());

        public Needs {
            equipment = List.copyOf(equipment);
            props = List.copyOf(props);
        }
    }

    /**
     * How a cue is carried out.
     *
     * @param seconds how long the hands are busy, beside speaking
     * @param must whether it may not be dropped when time runs short
     */
    public record Details(Who who, int seconds, boolean must, Needs needs) {

        public static final Details SPOKEN = new Details(Who.PRESENTER, 0, true, Needs.NOTHING);

        public Details {
            if (seconds < 0) {
                throw new IllegalArgumentException("hands cannot be busy for " + seconds + " seconds");
            }
        }

        public Details may() {
            return new Details(who, seconds, false, needs);
        }

        public Details by(Who other) {
            return new Details(other, seconds, must, needs);
        }

        public Details taking(int other) {
            return new Details(who, other, must, needs);
        }

        public Details needing(Needs other) {
            return new Details(who, seconds, must, other);
        }
    }

    private static final String CARE = "/care:";

    /** A cue that must be said, in the words of the program. */
    static Cue of(String key, Kind kind, String raw) {
        return new Cue(key, kind, Text.of(raw), Details.SPOKEN);
    }

    static Cue care(String section, String caution, String words) {
        return of(section + CARE + caution, Kind.TAKE_CARE, words);
    }

    /** Whether the program put it there as a caution: it cannot be lost by accident. */
    public boolean isCaution() {
        return isCaution(key);
    }

    /** The same of a cue of which only the key is known. */
    public static boolean isCaution(String key) {
        return key.contains(CARE);
    }

    /** The key of its caution; empty when it is none. */
    public String caution() {
        return isCaution() ? key.substring(key.indexOf(CARE) + CARE.length()) : "";
    }

    public boolean isOwn() {
        return Edit.isOwn(key);
    }

    public String words() {
        return text.said();
    }

    public String raw() {
        return text.raw();
    }

    Cue said(String said) {
        return new Cue(key, kind, new Text(text.raw(), said), details);
    }

    Cue with(Details other) {
        return new Cue(key, kind, text, other);
    }

    Cue may() {
        return with(details.may());
    }
}
