package hobside.bench;

import hobside.Bundle;
import hobside.advice.Offer;
import hobside.talk.Demo;
import hobside.dish.Ingredient;
import hobside.file.Scripts;
import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.talk.plain.HardWord;
import hobside.talk.plain.Language;
import hobside.talk.plain.Measured;
import hobside.talk.plain.PlainWords;
import hobside.talk.plain.Readability;
import hobside.talk.plain.Report;
import hobside.talk.plain.Rules;
import hobside.talk.plain.Sayability;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;

/**
 * Grades the spoken words of the three bundled talks, as they are and with the first change offered for each ingredient and for the
 * pot, and shows the hardest sentences. The target is a Flesch–Kincaid grade of 6 at most.
 *
 * <p>Argument: how many of the hardest sentences to show; may be left out.
 */
public final class WordsBench {

    private static final Set<Cue.Kind> SPOKEN = Set.of(Cue.Kind.SAY, Cue.Kind.ASK, Cue.Kind.TAKE_CARE);

    private WordsBench() {}

    public static void main(String[] args) throws IOException {
        int shown = args.length == 0 ? 15 : Integer.parseInt(args[0]);
        Rules rules = Rules.of("en", PlainWords.of(bundled(), Language.ENGLISH));
        Set<String> all = new LinkedHashSet<>();
        for (String dish : Bundle.DISHES) {
            List<String> plain = spoken(Bundle.demo(dish));
            List<String> changed = spoken(changed(Bundle.demo(dish)));
            line(dish, Sayability.of(plain, rules));
            line("  with changes", Sayability.of(changed, rules));
            all.addAll(plain);
            all.addAll(changed);
        }
        Report report = Sayability.of(List.copyOf(all), rules);
        line("each cue once", report);
        hardest(report, shown);
        hardWords(report);
    }

    private static Map<String, String> bundled() throws IOException {
        Properties rows = new Properties();
        try (Reader reader = new InputStreamReader(
                WordsBench.class.getResourceAsStream("/foods/words/en/plain-words.properties"), StandardCharsets.UTF_8)) {
            rows.load(reader);
        }
        Map<String, String> words = new TreeMap<>();
        rows.stringPropertyNames().forEach(hard -> words.put(hard, rows.getProperty(hard)));
        return words;
    }

    private static Demo changed(Demo demo) {
        Demo changed = demo;
        for (Ingredient ingredient : demo.dish().ingredients()) {
            changed = withFirst(changed, Bundle.STUDY.offers().forIngredient(demo.dish(), changed.plan(), ingredient.id()));
        }
        return withFirst(changed, Bundle.STUDY.offers().forPot(demo.dish(), changed.plan()));
    }

    private static Demo withFirst(Demo demo, List<Offer> offers) {
        Optional<Offer> first = offers.stream().filter(offer -> offer.blocked().isEmpty()).findFirst();
        return first.map(offer -> demo.with(demo.plan().with(offer.change()))).orElse(demo);
    }

    private static List<String> spoken(Demo demo) {
        Talk talk = Scripts.talk(demo, Bundle.STUDY);
        return talk.sections().stream().flatMap(section -> section.cues().stream())
                .filter(cue -> SPOKEN.contains(cue.kind())).map(Cue::words).toList();
    }

    private static void line(String name, Report report) {
        Paper.line("%-26s grade %.1f, ease %.0f, SMOG %.1f, fog %.1f; %d words in %d sentences, longest %d, over the limit %d; "
                + "%d numbers, %.1f a minute; %.0f s", name, by(report, Readability.FLESCH_KINCAID), by(report, Readability.READING_EASE),
                by(report, Readability.SMOG), by(report, Readability.FOG), report.words(), report.sentences().size(), report.longest(),
                report.tooLong().size(), report.numbers(), report.numbersPerMinute(), report.seconds());
    }

    private static double by(Report report, Readability formula) {
        return report.grades().by(formula).orElseThrow();
    }

    private static void hardest(Report report, int shown) {
        Set<String> seen = new LinkedHashSet<>();
        report.sentences().stream().filter(sentence -> seen.add(sentence.sentence()))
                .sorted(Comparator.comparingDouble(WordsBench::grade).reversed()).limit(shown)
                .forEach(sentence -> Paper.line("%5.1f  %2d words  %s", grade(sentence), sentence.words(), sentence.sentence()));
    }

    private static double grade(Measured sentence) {
        return sentence.grades().by(Readability.FLESCH_KINCAID).orElseThrow();
    }

    private static void hardWords(Report report) {
        Map<String, Integer> found = new TreeMap<>();
        for (HardWord hard : report.hardWords()) {
            found.merge(hard.found().toLowerCase(Locale.ROOT) + " = " + hard.plain(), 1, Integer::sum);
        }
        found.forEach((hard, times) -> Paper.line("%d × %s", times, hard));
    }
}
