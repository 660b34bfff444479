package hobside;

/**
 * How many made-up cases a test goes through: as many as it says, unless {@code -Dhobside.seeds=...} asks for fewer. The usual
 * suite takes all; putting faults into the program runs each test hundreds of times, and takes the first of them.
 */
public final class Seeds {

    private Seeds() {}

    public static int upTo(int usual) {
        return Math.min(usual, Integer.getInteger("hobside.seeds", usual));
    }
}
