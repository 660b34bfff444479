package hobside.bench;

import hobside.Bundle;
import hobside.file.Scripts;
import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.talk.plain.Measured;
import hobside.talk.plain.PlainWords;
import hobside.talk.plain.Readability;
import hobside.talk.plain.Report;
import hobside.talk.plain.Rules;
import hobside.talk.plain.Sayability;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Grades the spoken words of the three bundled talks, and shows the hardest sentences. The target is a Flesch–Kincaid grade of 6
 * at most.
 *
 * <p>Argument: how many of the hardest sentences to show; may be left out.
 */
public final class WordsBench {

    private static final Set<Cue.Kind> SPOKEN = Set.of(Cue.Kind.SAY, Cue.Kind.ASK, Cue.Kind.TAKE_CARE);

    private WordsBench() {}

    public static void main(String[] args) {
        int shown = args.length == 0 ? 15 : Integer.parseInt(args[0]);
        Set<String> all = new LinkedHashSet<>();
        for (String dish : Bundle.DISHES) {
            List<String> spoken = spoken(Scripts.talk(Bundle.demo(dish), Bundle.STUDY));
            all.addAll(spoken);
            line(dish, spoken);
        }
        line("each cue once", List.copyOf(all));
        hardest(List.copyOf(all), shown);
    }

    private static List<String> spoken(Talk talk) {
        return talk.sections().stream().flatMap(section -> section.cues().stream())
                .filter(cue -> SPOKEN.contains(cue.kind())).map(Cue::words).toList();
    }

    private static Report report(List<String> spoken) {
        return Sayability.of(spoken, Rules.of("en", PlainWords.NONE));
    }

    private static void line(String name, List<String> spoken) {
        Report report = report(spoken);
        Paper.line("%-26s grade %.1f, ease %.0f, SMOG %.1f, fog %.1f; %d words in %d sentences, longest %d, over the limit %d; "
                + "%d numbers, %.1f a minute; %.0f s", name, by(report, Readability.FLESCH_KINCAID), by(report, Readability.READING_EASE),
                by(report, Readability.SMOG), by(report, Readability.FOG), report.words(), report.sentences().size(), report.longest(),
                report.tooLong().size(), report.numbers(), report.numbersPerMinute(), report.seconds());
    }

    private static double by(Report report, Readability formula) {
        return report.grades().by(formula).orElseThrow();
    }

    private static void hardest(List<String> spoken, int shown) {
        report(spoken).sentences().stream().sorted(Comparator.comparingDouble(WordsBench::grade).reversed()).limit(shown)
                .forEach(sentence -> Paper.line("%5.1f  %2d words  %s", grade(sentence), sentence.words(), sentence.sentence()));
    }

    private static double grade(Measured sentence) {
        return sentence.grades().by(Readability.FLESCH_KINCAID).orElseThrow();
    }
}
