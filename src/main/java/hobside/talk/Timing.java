package hobside.talk;

import java.util.Map;

/**
 * How long a talk takes on stage: words at the rate of speech, and hands beside them. What stands on the bench beforehand, and
 * the minutes a pot cooks by itself, are not counted.
 */
public final class Timing {

    private final int wordsPerMinute;
    private final Map<String, Integer> measured;

    private Timing(int wordsPerMinute, Map<String, Integer> measured) {
        this.wordsPerMinute = wordsPerMinute;
        this.measured = Map.copyOf(measured);
    }

    public static Timing at(Script.Pacing pacing) {
        return new Timing(pacing.wordsPerMinute(), Map.of());
    }

    /** The same, but for the cues of these keys the seconds that they were measured to take. */
    public Timing knowing(Map<String, Integer> seconds) {
        return new Timing(wordsPerMinute, seconds);
    }

    public boolean isMeasured(Cue cue) {
        return measured.containsKey(cue.key());
    }

    /** Seconds for one cue: as measured, else spoken words, then hands. */
    public int seconds(Cue cue) {
        Integer known = measured.get(cue.key());
        return known != null ? known : estimate(cue);
    }

    private int estimate(Cue cue) {
        return (int) Math.round(speaking(cue)) + cue.details().seconds();
    }

    /** Seconds that its words take; 0 for what is not spoken. */
    public double speaking(Cue cue) {
        return cue.kind().isSpoken() ? words(cue.words()) * 60.0 / wordsPerMinute : 0;
    }

    private static int words(String text) {
        return text.isBlank() ? 0 : text.strip().split("\\s+").length;
    }

    public int seconds(Talk.Section section) {
        return section.part() == Talk.Part.BENCH ? 0 : section.cues().stream().mapToInt(this::seconds).sum();
    }

    public int seconds(Talk talk) {
        return talk.sections().stream().mapToInt(this::seconds).sum();
    }

    /** What is left when every cue is dropped that may be. */
    public int secondsOfMust(Talk talk) {
        return talk.sections().stream().filter(section -> section.part() != Talk.Part.BENCH).flatMap(section -> section.cues().stream())
                .filter(cue -> cue.details().must()).mapToInt(this::seconds).sum();
    }
}
