package hobside.practice;

import hobside.Bundle;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.practice.rubric.Asked;
import hobside.practice.rubric.Feedback;
import hobside.practice.rubric.Mark;
import hobside.practice.rubric.Point;
import hobside.practice.rubric.Rubric;
import hobside.practice.rubric.Subject;
import hobside.talk.Demo;
import hobside.talk.Script;
import hobside.talk.Stand;
import hobside.talk.TalkWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How far the rubric's marks agree with those that were given by hand. "Unsure" is a mark of its own: it agrees with none. */
public final class Agreement {

    /** The columns of the tables, by point. */
    private static final Map<Point, String> COLUMNS = new EnumMap<>(Map.of(Point.WHAT, "what", Point.WHY, "why", Point.HOW_MUCH, "how-much",
            Point.NOT, "not", Point.SAFETY, "safety", Point.TRUE, "true", Point.PLAIN, "plain", Point.RESPECT, "respect", Point.LENGTH, "length"));

    private static final Map<String, Demo> DEMOS = new HashMap<>();
    private static final Map<String, Rubric> RUBRICS = new HashMap<>();

    /** Counts of one point: by hand, then by the rubric. */
    public record Counts(Point point, int[][] table) {

        private static final int MARKS = Mark.values().length;

        public int all() {
            int sum = 0;
            for (int[] row : table) {
                for (int count : row) {
                    sum += count;
                }
            }
            return sum;
        }

        public double agreed() {
            int sum = 0;
            for (int i = 0; i < MARKS; i++) {
                sum += table[i][i];
            }
            return sum / (double) all();
        }

        /** Cohen 1960: (observed − expected) / (1 − expected). Not a number where only one mark was ever given. */
        public double kappa() {
            double expected = 0;
            for (int i = 0; i < MARKS; i++) {
                expected += row(i) / (double) all() * column(i) / all();
            }
            return (agreed() - expected) / (1 - expected);
        }

        private int row(int mark) {
            int sum = 0;
            for (int count : table[mark]) {
                sum += count;
            }
            return sum;
        }

        private int column(int mark) {
            int sum = 0;
            for (int[] row : table) {
                sum += row[mark];
            }
            return sum;
        }

        /** How often always giving the commonest mark would agree. */
        public double commonest() {
            int most = 0;
            for (int i = 0; i < MARKS; i++) {
                most = Math.max(most, row(i));
            }
            return most / (double) all();
        }

        public double unsure() {
            return column(Mark.UNSURE.ordinal()) / (double) all();
        }

        /** One line: kappa, agreement, baseline, and who gave what for what. */
        public String line() {
            StringBuilder line = new StringBuilder(String.format("%-9s kappa %5.2f  agreed %3.0f %%  commonest %3.0f %%  unsure %2.0f %%  ", point.word(),
                    kappa(), 100 * agreed(), 100 * commonest(), 100 * unsure()));
            for (int i = 0; i < MARKS; i++) {
                for (int j = 0; j < MARKS; j++) {
                    if (table[i][j] > 0) {
                        line.append(Mark.values()[i].word()).append('>').append(Mark.values()[j].word()).append(' ').append(table[i][j]).append("  ");
                    }
                }
            }
            return line.append(commonest() >= 0.9 ? "(lopsided: kappa says little)" : "").toString();
        }
    }

    private Agreement() {}

    /** The counts of one table of explanations or answers, told in this language. */
    public static List<Counts> of(String table, String language) {
        Map<Point, int[][]> counts = new LinkedHashMap<>();
        for (Marked.Row row : Marked.table(table)) {
            Feedback feedback = feedback(row, language);
            COLUMNS.forEach((point, column) -> {
                if (row.fields().containsKey(column)) {
                    int[][] cells = counts.computeIfAbsent(point, fresh -> new int[Mark.values().length][Mark.values().length]);
                    cells[byHand(row.of(column)).ordinal()][feedback.of(point).mark().ordinal()]++;
                }
            });
        }
        List<Counts> all = new ArrayList<>();
        counts.forEach((point, cells) -> all.add(new Counts(point, cells)));
        return all;
    }

    /** Where the rubric differs, with the words it found: for the half that its author may read. */
    public static List<String> differences(String table, String language) {
        if (table.startsWith("apart")) {
            throw new IllegalArgumentException("the texts of " + table + " are not shown");
        }
        List<String> all = new ArrayList<>();
        for (Marked.Row row : Marked.table(table)) {
            Feedback feedback = feedback(row, language);
            COLUMNS.forEach((point, column) -> {
                if (row.fields().containsKey(column) && byHand(row.of(column)) != feedback.of(point).mark()) {
                    all.add(row.of("id") + " " + column + ": by hand " + row.of(column) + ", here " + feedback.of(point).mark().word() + " "
                            + feedback.of(point).found().stream().map(found -> found.words() + " (" + found.why() + ")").toList());
                }
            });
        }
        return all;
    }

    /** The mean and the longest time that an answer of a table takes. */
    public static double[] milliseconds(String table, String language) {
        List<Marked.Row> rows = Marked.table(table);
        rows.forEach(row -> feedback(row, language));
        long longest = 0;
        long sum = 0;
        for (Marked.Row row : rows) {
            long from = System.nanoTime();
            feedback(row, language);
            long took = System.nanoTime() - from;
            longest = Math.max(longest, took);
            sum += took;
        }
        return new double[] {sum / 1e6 / rows.size(), longest / 1e6};
    }

    static Mark byHand(String word) {
        for (Mark mark : Mark.values()) {
            if (mark.word().equals(word)) {
                return mark;
            }
        }
        throw new IllegalArgumentException("no mark " + word);
    }

    static Feedback feedback(Marked.Row row, String language) {
        return rubric(row, language).mark(row.text());
    }

    private static Rubric rubric(Marked.Row row, String language) {
        boolean question = row.fields().containsKey("question");
        String key = row.of(question ? "question" : "change");
        return RUBRICS.computeIfAbsent(language + row.of("demo") + key + (question ? row.of("asked") : ""), fresh -> {
            Demo demo = DEMOS.computeIfAbsent(row.of("demo"), name -> Kitchen.at(Path.of(".")).demo(name, Bundle.STUDY.shelf()).value().orElseThrow());
            Script script = demo.script().in(language);
            Stand stand = Scripts.stand(demo.with(script), Bundle.STUDY);
            Subject subject = question ? Subject.of(stand, asked(row, stand)) : Subject.of(stand, "change:" + key);
            return Rubric.of(subject, Bundle.STUDY.rubric(script));
        });
    }

    private static Asked asked(Marked.Row row, Stand stand) {
        String key = row.of("question");
        String prepared = TalkWriter.questions(stand).stream().filter(cue -> cue.key().equals("questions:" + key + "/answer"))
                .map(cue -> cue.words()).findFirst().orElse("");
        return new Asked(key, row.of("asked"), prepared);
    }
}
