package hobside.screen.live;

/** Times in words: "12:40", "1:20 behind". */
public final class Minutes {

    private static final long NEAR = 5_000;

    private Minutes() {}

    /** Minutes and seconds, whole seconds only: a clock shows a second once it is full. */
    public static String of(long milliseconds) {
        long seconds = Math.max(0, milliseconds) / 1_000;
        return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
    }

    /** How one stands to the plan, in words. Within five seconds one is on time. */
    public static String standing(long behind) {
        if (Math.abs(behind) < NEAR) {
            return "on time";
        }
        return of(Math.abs(behind)) + (behind > 0 ? " behind" : " ahead");
    }
}
