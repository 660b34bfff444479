package hobside.screen;

/**
 * What somebody has typed and not taken yet, so that it is not lost if the program is stopped now.
 *
 * @param asked what it is the answer to, in the words that stand on the screen
 */
public record Typed(About about, String asked, String text) {

    /** What is being worked on: the demo's file (empty when it has none yet), the dish, and where in it. */
    public record About(String demo, String dish, String spot) {

        public static final About NOTHING = new About("", "", "");
    }
}
