package hobside.talk.plain;

/**
 * How fast the presenter speaks, in words a minute, 80 to 200.
 *
 * <p>130 unless changed: within 120 to 150, below the 140 that CUNY advises to aim at; learners followed 200 worse than 100 or 150
 * (Griffiths 1990). 130 words at 130 a minute take 60 seconds.
 */
public record Pace(int wordsPerMinute) {

    public static final int SLOWEST = 80;
    public static final int FASTEST = 200;
    public static final Pace USUAL = new Pace(130);

    public Pace {
        if (wordsPerMinute < SLOWEST || wordsPerMinute > FASTEST) {
            throw new IllegalArgumentException("a pace is " + SLOWEST + " to " + FASTEST + " words a minute, found " + wordsPerMinute);
        }
    }

    /** Seconds that so many words take; pauses and work at the hob come on top. */
    public double seconds(int words) {
        return words * 60.0 / wordsPerMinute;
    }

    /** Numbers a listener meets in each minute of speech; zero when nothing is said. */
    public double numbersPerMinute(int numbers, int words) {
        return words == 0 ? 0 : numbers * 60.0 / seconds(words);
    }
}
