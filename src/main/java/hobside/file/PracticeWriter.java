package hobside.file;

import hobside.practice.Attempt;
import hobside.practice.Entry;
import hobside.practice.Erased;
import hobside.practice.Ruling;
import hobside.practice.WorkshopSet;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Writes the lines of a log of practice, and the sets that a trainer has prepared. */
final class PracticeWriter {

    private PracticeWriter() {}

    static byte[] line(Entry entry) {
        Row row = new Row().text("id", entry.id()).text("trainee", entry.trainee()).number("at", (double) entry.at());
        if (entry instanceof Attempt attempt) {
            attempt(attempt, row);
        } else if (entry instanceof Ruling ruling) {
            row.text("ruled", ruling.attempt()).text("point", ruling.marked().point()).text("mark", ruling.marked().mark()).text("by", ruling.marked().by().word());
        } else if (entry instanceof Erased) {
            row.raw("erased", "true");
        }
        return (row.written() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static void attempt(Attempt attempt, Row row) {
        row.text("exercise", attempt.label().key()).number("score", attempt.result().score()).textIfAny("mistake", attempt.result().mistake());
        Row points = new Row();
        for (Map.Entry<String, String> each : attempt.result().points().entrySet()) {
            points.text(each.getKey(), each.getValue());
        }
        if (!points.isEmpty()) {
            row.row("points", points);
        }
        row.textIfAny("words", attempt.result().words());
    }

    static byte[] set(WorkshopSet set) {
        WorkshopSet.Wanted wanted = set.wanted();
        Row row = new Row().text("hobside", PracticeReader.SET).text("title", set.title())
                .texts("kinds", wanted.kinds().stream().map(kind -> kind.word()).toList()).texts("topics", wanted.topics())
                .texts("dishes", wanted.dishes()).number("level", wanted.level()).number("minutes", set.minutes()).text("language", set.language());
        return (row.written() + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
