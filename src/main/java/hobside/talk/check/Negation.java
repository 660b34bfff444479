package hobside.talk.check;

import java.util.regex.Pattern;

/** Whether words are denied: "does not take all the fat out" promises nothing. */
final class Negation {

    private static final Pattern NEGATION = Pattern.compile("\\b(?:not|never|nobody|no one|none of|nothing|neither|nor|without|cannot|can't|won't|don't|doesn't|isn't|aren't|didn't|wouldn't"
            + "|couldn't|shouldn't|need not|needn't|rather than|instead of saying|far from|hardly|no (?:way|dish|food|oil|cook|recipe|supper|meal|promise|doctor|claim|need to))\\b");

    private Negation() {}

    static boolean in(String text) {
        return NEGATION.matcher(text).find();
    }
}
