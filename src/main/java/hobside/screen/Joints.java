package hobside.screen;

/** Thin lines and what they become where they meet: arms to the four sides, and the sign that has just these arms. */
final class Joints {
    static final int UP = 1;
    static final int DOWN = 2;
    static final int LEFT = 4;
    static final int RIGHT = 8;

    /** One sign for each set of arms, counted in the four values above; a lone arm is drawn as a whole line. */
    private static final String SIGNS = " │││─┘┐┤─└┌├─┴┬┼";

    private Joints() {}

    static char sign(int arms) {
        return SIGNS.charAt(arms);
    }
}
