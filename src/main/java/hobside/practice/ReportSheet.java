package hobside.practice;

import hobside.talk.paper.Block;
import hobside.talk.paper.Sheet;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The report of a workshop as a sheet to print, and as a table of comma-separated values. */
public final class ReportSheet {

    /** More misunderstandings than this are not listed. */
    private static final int MOST = 5;

    private final Report report;
    private final Words words;

    private ReportSheet(Report report, Words words) {
        this.report = report;
        this.words = words;
    }

    public static Sheet of(Report report, Words words) {
        ReportSheet sheet = new ReportSheet(report, words);
        Sheet.Front front = new Sheet.Front(sheet.say("report.title"), words.language().code(), Sheet.Look.LARGE);
        return new Sheet(front, sheet.blocks());
    }

    private String say(String key) {
        return words.say("exercise." + key);
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (report.trainees().isEmpty()) {
            blocks.add(new Block.Paragraph(say("report.none")));
            return blocks;
        }
        String number = Integer.toString(report.trainees().size());
        blocks.add(new Block.Paragraph(words.count("exercise.report.people", number, Map.of("n", number, "m", Integer.toString(report.answers())))));
        kinds(blocks);
        points(blocks);
        common(blocks);
        next(blocks);
        notes(blocks);
        return blocks;
    }

    private void kinds(List<Block> blocks) {
        List<String> head = new ArrayList<>(List.of(say("report.trainee"), say("report.answers")));
        report.kinds().forEach(kind -> head.add(say("kind." + kind.word())));
        List<List<String>> rows = new ArrayList<>();
        for (String trainee : report.trainees()) {
            List<String> row = new ArrayList<>(List.of(trainee, Integer.toString(report.answers(trainee))));
            report.kinds().forEach(kind -> row.add(percent(report.share(trainee, kind))));
            rows.add(row);
        }
        blocks.add(new Block.Heading(say("report.kinds")));
        blocks.add(new Block.Paragraph(say("report.kinds.note")));
        blocks.add(new Block.Table(head, rows, head.size() - 1));
    }

    private void points(List<Block> blocks) {
        if (report.points().isEmpty()) {
            return;
        }
        List<String> head = new ArrayList<>(List.of(say("report.trainee")));
        report.points().forEach(point -> head.add(point(point, words)));
        List<List<String>> rows = new ArrayList<>();
        for (String trainee : report.trainees()) {
            List<String> row = new ArrayList<>(List.of(trainee));
            report.points().forEach(point -> row.add(percent(report.share(trainee, point))));
            rows.add(row);
        }
        blocks.add(new Block.Heading(say("report.points")));
        blocks.add(new Block.Paragraph(say("report.points.note")));
        blocks.add(new Block.Table(head, rows, head.size() - 1));
    }

    private static String percent(Optional<Double> share) {
        return share.map(each -> Math.round(each * 100) + " %").orElse("-");
    }

    private void common(List<Block> blocks) {
        List<String> lines = report.common().stream().filter(each -> each.trainees() > 1).limit(MOST).map(this::common).toList();
        blocks.add(new Block.Heading(say("report.common")));
        blocks.add(lines.isEmpty() ? new Block.Paragraph(say("report.common.none")) : new Block.Lines(lines));
    }

    private String common(Report.Common common) {
        String number = Integer.toString(common.trainees());
        return words.count("exercise.report.common.line", number,
                Map.of("mistake", mistake(common.mistake(), words), "n", number, "m", Integer.toString(common.times())));
    }

    private void next(List<Block> blocks) {
        List<String> lines = new ArrayList<>();
        report.common().stream().findFirst()
                .ifPresent(most -> lines.add(words.say("exercise.report.next.mistake", Map.of("mistake", mistake(most.mistake(), words)))));
        report.weakest().ifPresent(weak -> lines.add(words.say("exercise.report.next.line",
                Map.of("what", card(weak.card(), words), "share", percent(Optional.of(weak.share()))))));
        blocks.add(new Block.Heading(say("report.next")));
        blocks.add(lines.isEmpty() ? new Block.Paragraph(say("report.next.none")) : new Block.Lines(lines));
    }

    private void notes(List<Block> blocks) {
        for (String trainee : report.trainees()) {
            if (report.machines(trainee) > 1) {
                blocks.add(new Block.Paragraph(words.say("exercise.report.machines",
                        Map.of("trainee", trainee, "n", Integer.toString(report.machines(trainee))))));
            }
        }
        if (!report.clashes().isEmpty()) {
            blocks.add(new Block.Box(say("report.clash"), report.clashes(), false));
        }
    }

    /** "guess: trimming". */
    public static String card(Card card, Words words) {
        return words.say("exercise.kind." + card.kind().word()) + ": " + topic(card.topic(), words);
    }

    /** A topic in words; one that these words do not know is told as it is written in the log. */
    public static String topic(String topic, Words words) {
        int colon = topic.indexOf(':');
        if (colon > 0) {
            return words.find("exercise.topic." + topic.substring(0, colon))
                    .map(known -> words.filled(known, gap -> Optional.of(topic.substring(colon + 1)))).orElse(topic);
        }
        return words.find("exercise.topic." + topic).orElse(topic);
    }

    /** A misunderstanding in words. */
    public static String mistake(String mistake, Words words) {
        if (mistake.startsWith(Points.MISSING)) {
            return words.say("exercise.mistake.point", Map.of("point", point(mistake.substring(Points.MISSING.length()), words)));
        }
        return words.find("exercise.mistake." + mistake).orElse(mistake);
    }

    /** A point in words. */
    public static String point(String point, Words words) {
        return words.find("practice.point." + point).orElse(point);
    }

    /**
     * A row for each trainee: answers, kinds, points. Fields are quoted as RFC 4180 has it; one that a spreadsheet would take for a
     * formula gets an apostrophe in front.
     */
    public static String csv(Report report, Words words) {
        List<String> head = new ArrayList<>(List.of(words.say("exercise.report.trainee"), words.say("exercise.report.answers")));
        report.kinds().forEach(kind -> head.add(words.say("exercise.kind." + kind.word())));
        report.points().forEach(point -> head.add(point(point, words)));
        StringBuilder text = new StringBuilder();
        row(head, text);
        for (String trainee : report.trainees()) {
            List<String> row = new ArrayList<>(List.of(trainee, Integer.toString(report.answers(trainee))));
            report.kinds().forEach(kind -> row.add(digits(report.share(trainee, kind))));
            report.points().forEach(point -> row.add(digits(report.share(trainee, point))));
            row(row, text);
        }
        return text.toString();
    }

    private static String digits(Optional<Double> share) {
        return share.map(each -> Long.toString(Math.round(each * 100))).orElse("");
    }

    private static void row(List<String> fields, StringBuilder text) {
        for (int i = 0; i < fields.size(); i++) {
            text.append(i == 0 ? "" : ",").append(field(fields.get(i)));
        }
        text.append("\r\n");
    }

    static String field(String written) {
        boolean formula = !written.isEmpty() && "=+-@\t\r".indexOf(written.charAt(0)) >= 0;
        String safe = formula ? "'" + written : written;
        boolean plain = safe.chars().noneMatch(each -> each == ',' || each == '"' || each == '\n' || each == '\r');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }
}
