package hobside.stage.run;

/**
 * A clock in a run.
 *
 * @param stops whether it stands still in a pause: a rehearsal is timed without pauses, a hall clock runs on
 * @param counted milliseconds on it at {@code from}
 */
record RunClock(boolean stops, long counted, long from, boolean paused) {

    static RunClock started(boolean stops, long at) {
        return new RunClock(stops, 0, at, false);
    }

    long read(long at) {
        return counted + (stops && paused ? 0 : Math.max(0, at - from));
    }

    RunClock pausing(long at, boolean yes) {
        return new RunClock(stops, read(at), at, yes);
    }

    RunClock set(long at, long to) {
        return new RunClock(stops, to, at, paused);
    }
}
