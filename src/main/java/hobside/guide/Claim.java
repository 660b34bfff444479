package hobside.guide;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A word such as "low fat" with the numbers that one country's rules put behind it.
 *
 * <p>These rules govern labels and advertisements, not speech in a class. So a check says "meets the number for", never "is".
 * What is uncertain counts: a figure whose spread straddles a limit gives "cannot say". Comparisons use the typical figures.
 */
public record Claim(Published published, ClaimKind kind, Per per, List<Condition> conditions) {

    /** To be said wherever a check is shown. */
    public static final String LABELS_NOT_CLASSES =
            "These rules are for labels and advertisements. In a class, say the figure and whose number it meets, and make no claim.";

    public Claim {
        conditions = List.copyOf(conditions);
        if (conditions.isEmpty()) {
            throw new IllegalArgumentException("a claim without conditions: " + published.key());
        }
    }

    /** The answer, and for each condition the figures it rests on. */
    public record Finding(Claim claim, Verdict verdict, List<Condition.Point> points) {

        public Finding {
            points = List.copyOf(points);
        }

        /** 'Meets the number for "low fat" under Regulation ... (European Union): fat 2.4 g per 100 g (at most 3 g).' */
        public String sentence() {
            Published published = claim.published();
            String figures = points.stream().map(Condition.Point::words).collect(Collectors.joining("; "));
            return verdict.words() + " for \"" + published.name() + "\" under " + published.citation().source() + " (" + published.place()
                    + "): " + figures + "." + published.citation().warning();
        }
    }

    /** Whether the dish after the changes meets the numbers; the dish before is its reference food where the rule compares. */
    public Finding check(Sample before, Sample after) {
        if (!after.fits(per) || !before.fits(per)) {
            String other = "this row is for " + per.word() + " of something " + (per == Per.HUNDRED_GRAMS ? "solid" : "liquid");
            return new Finding(this, Verdict.CANNOT_SAY, List.of(new Condition.Point(Verdict.CANNOT_SAY, other)));
        }
        Condition.Compared pair = new Condition.Compared(before, after, per);
        List<Condition.Point> points = conditions.stream().map(condition -> condition.judge(pair)).toList();
        return new Finding(this, points.stream().map(Condition.Point::verdict).reduce(Verdict.MEETS, Verdict::and), points);
    }
}
