package hobside.stage.order;

/**
 * When a job may run: not before the one time, and over by the other.
 *
 * @param earliest earliest start in seconds from the beginning, 0 or later
 * @param latest latest end in seconds from the beginning; {@link Integer#MAX_VALUE} for no such limit
 */
public record Window(int earliest, int latest) {

    /** Any time will do. */
    public static final Window ANY = new Window(0, Integer.MAX_VALUE);

    public Window {
        if (earliest < 0 || latest < earliest) {
            throw new IllegalArgumentException("expected 0 <= earliest <= latest, found earliest " + earliest + " and latest " + latest);
        }
    }

    boolean hasEnd() {
        return latest < Integer.MAX_VALUE;
    }
}
