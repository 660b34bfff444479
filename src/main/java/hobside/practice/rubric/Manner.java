package hobside.practice.rubric;

import hobside.practice.rubric.Sight.Ground;
import hobside.talk.check.Finding;
import hobside.talk.plain.Report;
import hobside.talk.plain.Sayability;
import java.util.ArrayList;
import java.util.List;

/** How it is said: plain, kind, and neither too short nor too long. */
final class Manner {

    /** A sentence of more words counts against plainness (MARKING.md of the marked answers; common practice, no source). */
    private static final int LONG_SENTENCE = 40;

    private static final int MANY_HARD = 5;

    private Manner() {}

    static Judged plain(Sight sight, Rules rules) {
        List<Found> found = new ArrayList<>(sight.all("jargon", "jargon"));
        Report report = Sayability.of(sight.heard().text().answer(), rules.plain());
        report.sentences().stream().filter(sentence -> sentence.words() > LONG_SENTENCE).limit(1)
                .forEach(sentence -> found.add(new Found(sentence.place().from(), sentence.place().to(), sentence.sentence(), sight.say("found.long-sentence"))));
        List<Found> bookish = sight.all("bookish", "bookish");
        boolean stiff = report.longest() <= LONG_SENTENCE && bookish.size() >= 2 || report.hardWords().size() >= MANY_HARD;
        if (stiff) {
            found.addAll(bookish);
        }
        int faults = found.size() - (stiff ? bookish.size() : 0) + (stiff ? 1 : 0);
        Mark mark = faults == 0 ? Mark.YES : faults == 1 ? Mark.PART : Mark.NO;
        String how = mark == Mark.YES ? "plain-yes" : "plain-part";
        return sight.judged(Point.PLAIN, mark, Ground.of(found, how, Sight.LIKELY).missing(sight.say("look.plain")));
    }

    static Judged respect(Sight sight) {
        List<Found> found = new ArrayList<>(sight.all("shame", "shame"));
        sight.truth().stream().filter(finding -> finding.kind() == Finding.Kind.SHAME)
                .forEach(finding -> found.add(new Found(finding.from(), finding.to(), finding.found(), sight.say("found.shame"))));
        List<Found> orders = sight.all("order", "order");
        if (!found.isEmpty()) {
            return sight.judged(Point.RESPECT, Mark.NO, Ground.of(found, "shame", Sight.LIKELY).missing(sight.say("look.respect")));
        }
        return orders.isEmpty() ? sight.judged(Point.RESPECT, Mark.YES, Ground.of(List.of(), "respect-yes", Sight.LIKELY))
                : sight.judged(Point.RESPECT, Mark.PART, Ground.of(orders, "order", Sight.LIKELY).missing(sight.say("look.respect")));
    }

    /** Bounds of length in words: yes from the first to the second, part from the third to the fourth. */
    private static final int[] EXPLAINED = {25, 120, 15, 180};
    private static final int[] ANSWERED = {12, 80, 6, 120};

    static Judged length(Sight sight) {
        int[] bounds = sight.subject().told().isPresent() ? EXPLAINED : ANSWERED;
        int words = Text.words(sight.heard().text().answer());
        Mark mark = words >= bounds[0] && words <= bounds[1] ? Mark.YES : words >= bounds[2] && words <= bounds[3] ? Mark.PART : Mark.NO;
        String how = mark == Mark.YES ? "length-yes" : words < bounds[0] ? "length-short" : "length-long";
        String look = sight.say("look.length", java.util.Map.of("words", Integer.toString(words), "least", Integer.toString(bounds[0]),
                "most", Integer.toString(bounds[1])));
        return sight.judged(Point.LENGTH, mark, Ground.of(List.of(), how, Sight.COUNTED).missing(look));
    }
}
