package hobside.stage;

/** The keys of steps of the method, as the talk's cues bear them: {@code step:4}. */
final class StepKeys {

    private static final String STEP = "step:";

    private StepKeys() {}

    static String of(int number) {
        return STEP + number;
    }

    static boolean is(String key) {
        return key.startsWith(STEP);
    }

    /** The number of a step's key or of its cooking; 0 when it is none. */
    static int number(String key) {
        if (!is(key)) {
            return 0;
        }
        String rest = key.substring(STEP.length());
        String digits = rest.endsWith(Task.COOKS) ? rest.substring(0, rest.length() - Task.COOKS.length()) : rest;
        return digits.matches("\\d{1,6}") ? Integer.parseInt(digits) : 0;
    }
}
