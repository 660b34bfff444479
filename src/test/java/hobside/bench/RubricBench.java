package hobside.bench;

import hobside.practice.Agreement;
import java.util.Arrays;

/**
 * How far the rubric's marks agree with marks given by hand, as Cohen's kappa per point beside always giving the commonest mark.
 *
 * <p>Arguments: {@code worked}, and {@code differences} for the rows where they differ; or {@code apart} for the half that judges the
 * rubric: of this one only figures are shown; {@code speed} for the time that an answer takes.
 */
public final class RubricBench {

    private RubricBench() {}

    public static void main(String[] args) {
        if (Arrays.asList(args).contains("speed")) {
            for (int i = 0; i < 5; i++) {
                double[] times = Agreement.milliseconds("marked-en.tsv", "en");
                Paper.line("marked-en.tsv: %.2f ms an answer, the slowest %.2f ms", times[0], times[1]);
            }
            return;
        }
        boolean apart = Arrays.asList(args).contains("apart");
        String[][] tables = apart ? new String[][] {{"apart-en.tsv", "en"}, {"apart-es.tsv", "es"}, {"apart-answers-en.tsv", "en"}}
                : new String[][] {{"marked-en.tsv", "en"}, {"marked-es.tsv", "es"}, {"answers-en.tsv", "en"}};
        for (String[] table : tables) {
            Paper.title(table[0]);
            Agreement.of(table[0], table[1]).forEach(counts -> System.out.println(counts.line()));
            if (Arrays.asList(args).contains("differences")) {
                Agreement.differences(table[0], table[1]).forEach(System.out::println);
            }
        }
    }
}
