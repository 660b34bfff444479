package hobside.stage.run;

import hobside.talk.Cue;

/**
 * A number for the words of a cue, by which a measured time knows whether it is still about the same words. Figures do not
 * count: "12 grams" and "13 grams" take as long to say.
 *
 * <p>The hash FNV-1a of 32 bits over the characters, low byte first (Fowler, Noll and Vo; also in the IETF draft on FNV). It
 * stands in files, so it may never change.
 */
public final class Wording {

    private static final int BASIS = 0x811c9dc5;
    private static final int PRIME = 0x01000193;

    private Wording() {}

    /** The number for a cue: of its words as they were written, before the live figures are filled in. */
    public static int of(Cue cue) {
        return of(cue.raw());
    }

    public static int of(String words) {
        int hash = BASIS;
        boolean figure = false;
        for (int i = 0; i < words.length(); i++) {
            char each = words.charAt(i);
            boolean digit = each >= '0' && each <= '9';
            if (!digit || !figure) {
                hash = with(hash, digit ? '0' : each);
            }
            figure = digit;
        }
        return hash;
    }

    private static int with(int hash, char each) {
        return ((hash ^ each & 0xff) * PRIME ^ each >> 8) * PRIME;
    }
}
