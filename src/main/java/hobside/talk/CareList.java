package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Stage;
import hobside.guide.Allergens;
import hobside.guide.Caution;
import hobside.guide.Cautions;
import hobside.guide.Trigger;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The cautions of a demo, handed out once each at the place in the talk where they are needed. What is left over comes at the table. */
final class CareList {

    private final List<Cautions.Due> waiting;
    private final Allergens allergens;
    private final Words words;

    CareList(Stand stand) {
        this.waiting = new ArrayList<>(stand.beside().cautions().of(stand.demo().dish(), stand.demo().plan()));
        this.allergens = Allergens.of(stand.demo().dish(), stand.demo().plan());
        this.words = stand.words();
    }

    /** What belongs to any demonstration and is said before anything is touched. */
    List<Cue> atTheStart(String section) {
        return take(section, due -> due.caution().stage() == Stage.PREPARE
                && (due.caution().isAlways() || isOf(due.caution(), Trigger.Kind.ALLERGEN_ADDED)));
    }

    /** What belongs to the raw foods on the bench. */
    List<Cue> atTheBench(String section) {
        return take(section, due -> due.caution().stage() == Stage.PREPARE && !isOf(due.caution(), Trigger.Kind.CHANGE));
    }

    List<Cue> ofChange(String section, Change change) {
        return take(section, due -> due.caution().when().stream().anyMatch(trigger -> trigger.kind() == Trigger.Kind.CHANGE
                && trigger.word().equals(change.kind().word())));
    }

    List<Cue> atTheHob(String section) {
        return take(section, due -> due.caution().stage() != Stage.SERVE && !isOf(due.caution(), Trigger.Kind.CHANGE));
    }

    /** Everything that has not been said yet: no caution is lost. */
    List<Cue> atTheTable(String section) {
        return take(section, due -> true);
    }

    private static boolean isOf(Caution caution, Trigger.Kind kind) {
        return caution.when().stream().anyMatch(trigger -> trigger.kind() == kind);
    }

    private List<Cue> take(String section, Predicate<Cautions.Due> which) {
        List<Cue> cues = new ArrayList<>();
        waiting.removeIf(due -> {
            boolean now = which.test(due);
            if (now) {
                cues.add(Cue.care(section, due.caution().key(), said(due)));
            }
            return now;
        });
        return cues;
    }

    /** In the words of the guide book, or in those of another language where it has them. */
    private String said(Cautions.Due due) {
        String key = "cautions." + due.caution().key();
        return words.find(key + ".say").map(say -> listed(say) + figures(due.caution())).orElse(due.said());
    }

    /** The same without the published temperatures. */
    String brief(Caution caution) {
        return listed(words.find("cautions." + caution.key() + ".say").orElse(caution.advice().say()));
    }

    private String listed(String say) {
        return words.filled(say, gap -> switch (gap) {
            case "allergens" -> Optional.of(list(allergens.after()));
            case "added" -> Optional.of(list(allergens.added()));
            default -> Optional.empty();
        });
    }

    /** "milk and wheat (gluten)". */
    String list(List<String> keys) {
        if (keys.isEmpty()) {
            return words.find("allergens.none").orElseGet(() -> Allergens.listed(keys));
        }
        List<String> names = keys.stream().map(key -> words.find("allergens." + key).orElseGet(() -> Allergens.words(key))).toList();
        String and = words.find("allergens.and").orElse("and");
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " " + and + " " + names.get(last);
    }

    /** The lowest and the highest of the published temperatures, each with its country. */
    private String figures(Caution caution) {
        List<String> ends = ends(caution);
        if (ends.isEmpty()) {
            return "";
        }
        return " " + (ends.size() == 1 ? words.say("talk.care.figure", Map.of("low", ends.get(0)))
                : words.say("talk.care.figures", Map.of("low", ends.get(0), "high", ends.get(1))));
    }

    /** The lowest and the highest published temperature, or the only one; nothing where there is none. */
    List<String> ends(Caution caution) {
        String key = "cautions." + caution.key();
        List<Caution.Advised> all = caution.advice().figures();
        List<Caution.Advised> known = all.stream().filter(figure -> figure.celsius().isPresent())
                .sorted(Comparator.comparingDouble(figure -> figure.celsius().getAsDouble())).toList();
        if (known.isEmpty()) {
            return List.of();
        }
        Caution.Advised low = known.get(0);
        Caution.Advised high = known.get(known.size() - 1);
        String lowest = advised(low, key, all.indexOf(low));
        return low.celsius().equals(high.celsius()) ? List.of(lowest) : List.of(lowest, advised(high, key, all.indexOf(high)));
    }

    private String advised(Caution.Advised figure, String key, int index) {
        String place = figure.place().toLowerCase(Locale.ROOT).replace(' ', '-');
        return words.say("talk.care.advised", Map.of("text", words.find(key + ".figure." + (index + 1) + ".text").orElse(figure.text()),
                "place", words.find("places." + place).orElse(figure.place())));
    }
}
