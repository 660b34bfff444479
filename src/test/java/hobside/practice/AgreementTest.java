package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.practice.rubric.Point;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cohen's kappa of the rubric's marks with marks given by hand (MARKING.md), each a little below what was measured. The half
 * {@code worked} was read while the phrases were written, so its figures flatter; the half {@code apart} was marked once, at the end,
 * and its figures are the ones to believe. Points of which nine in ten marks are alike are left out: there kappa says little.
 */
class AgreementTest {

    @ParameterizedTest
    @CsvSource({"marked-en.tsv,en,WHAT,0.9", "marked-en.tsv,en,WHY,0.85", "marked-en.tsv,en,HOW_MUCH,0.9", "marked-en.tsv,en,NOT,0.9",
        "marked-en.tsv,en,SAFETY,0.9", "marked-en.tsv,en,RESPECT,0.9", "marked-en.tsv,en,LENGTH,1", "marked-es.tsv,es,WHY,0.8",
        "marked-es.tsv,es,HOW_MUCH,0.9", "marked-es.tsv,es,NOT,0.9", "marked-es.tsv,es,SAFETY,0.9", "answers-en.tsv,en,WHY,0.6", "answers-en.tsv,en,TRUE,0.7"})
    void the_rubric_agrees_with_the_half_that_was_read(String table, String language, Point point, double kappa) {
        agrees(table, language, point, kappa);
    }

    @ParameterizedTest
    @CsvSource({"apart-en.tsv,en,WHAT,0.4", "apart-en.tsv,en,WHY,0.4", "apart-en.tsv,en,HOW_MUCH,0.7", "apart-en.tsv,en,NOT,0.5",
        "apart-en.tsv,en,SAFETY,0.85", "apart-en.tsv,en,PLAIN,0.65", "apart-en.tsv,en,LENGTH,1", "apart-es.tsv,es,WHY,0.4", "apart-es.tsv,es,HOW_MUCH,0.8",
        "apart-es.tsv,es,NOT,0.8", "apart-es.tsv,es,SAFETY,0.9", "apart-answers-en.tsv,en,WHY,0.5", "apart-answers-en.tsv,en,TRUE,0.65"})
    void the_rubric_agrees_with_the_half_that_was_kept_apart(String table, String language, Point point, double kappa) {
        agrees(table, language, point, kappa);
    }

    private static void agrees(String table, String language, Point point, double kappa) {
        List<Agreement.Counts> counts = Agreement.of(table, language);
        Agreement.Counts of = counts.stream().filter(each -> each.point() == point).findFirst().orElseThrow();
        assertTrue(of.kappa() >= kappa - 1e-9, of.line());
    }
}
