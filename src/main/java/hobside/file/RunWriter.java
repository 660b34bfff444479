package hobside.file;

import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Writes the lines of a run's journal: the head, then one thing that happened a line. */
final class RunWriter {

    private RunWriter() {}

    static byte[] head(Run.Head head) {
        List<Row> plan = new ArrayList<>();
        for (Run.Planned planned : head.plan()) {
            plan.add(new Row().text("cue", planned.cue()).number("seconds", planned.seconds()).raw("must", Boolean.toString(planned.must()))
                    .number("wording", planned.wording()));
        }
        return line(new Row().text("hobside", RunReader.KIND).text("run", head.kind().word()).text("demo", head.demo()).number("begun", (double) head.begunAt())
                .number("slot", head.slot()).rows("plan", plan));
    }

    static byte[] happening(Happening happening) {
        return line(new Row().number("at", (double) happening.at()).text("what", happening.what().word()).textIfAny("cue", happening.cue())
                .textIfAny("text", happening.text()));
    }

    private static byte[] line(Row row) {
        return (row.written() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The same as it can be read again: a safe name, plain keys, figures within bounds. */
    static Run.Head cleaned(Run.Head head) {
        List<Run.Planned> plan = new ArrayList<>();
        for (Run.Planned planned : head.plan().subList(0, Math.min(RunReader.MOST_CUES, head.plan().size()))) {
            int seconds = Math.max(0, Math.min(RunReader.MOST_SECONDS, planned.seconds()));
            plan.add(new Run.Planned(cleaned(planned.cue(), RunReader.KEY, false), seconds, planned.must(), planned.wording()));
        }
        String demo = SafeName.isSafe(head.demo()) ? head.demo() : SafeName.of(head.demo());
        return new Run.Head(head.kind(), demo, head.begunAt(), Math.max(0, Math.min(Limits.MINUTES, head.slot())), plan);
    }

    /** The same as it can be read again: within bounds, without what a terminal could obey. */
    static Happening cleaned(Happening happening) {
        long at = Math.max(0, Math.min(RunReader.LONGEST, happening.at()));
        return new Happening(at, happening.what(), cleaned(happening.cue(), RunReader.KEY, false), cleaned(happening.text(), RunReader.TEXT, true));
    }

    private static String cleaned(String text, int most, boolean lines) {
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            clean.append(lines && each == '\n' || !Shown.isHarmful(text, i) ? each : ' ');
        }
        int end = Math.min(most, clean.length());
        boolean halved = end > 0 && end < clean.length() && Character.isHighSurrogate(clean.charAt(end - 1));
        return clean.substring(0, halved ? end - 1 : end);
    }
}
