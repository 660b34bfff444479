package hobside.talk.check;

import hobside.ledger.Basis;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds "less", "more", "up", "down", "cheaper" said of plate, pot or dish where the ledger goes the other way or nowhere. */
final class DirectionCheck {

    /** Less than this share of what was there is no movement worth a word. */
    private static final double NOTHING = 0.002;

    private static final String TOPIC = "(saturated fat|saturates|salt|sodium|energy|cost)";
    private static final Pattern MOVES = Pattern.compile("\\b" + TOPIC + "\\b(?: [a-z]+){0,4}? (?:(?:goes|go|has gone|have gone|went|comes|came|is|are) (?:back |right )?(?:(up|higher)|(?:down|lower))"
            + "|(rises|rose|climbs|increases)|falls|fell|drops|dropped|decreases)\\b");
    private static final Pattern COMPARED = Pattern.compile("\\b(?:less|fewer|lower in|(more|higher in)) (saturated fat|saturates|fat|salt|sodium|energy|calories|kilocalories)\\b");
    private static final Pattern PRICED = Pattern.compile("\\b(?:cheaper|costs? (?:you |us )?less|saves? (?:you |us )?money|(dearer|more expensive|costs? (?:you |us )?more))\\b");
    private static final Pattern DISH = Pattern.compile("\\b(?:plates?|serves?|servings?|portions?|bowls?|pot|dish|stew|version)\\b");
    private static final Pattern SUPPOSED = Pattern.compile("^(?: )?(?:if|when|suppose|would|could|who|what|why|which|how)\\b|\\bwould\\b|\\?$");
    private static final Pattern COUNTED = Pattern.compile("(?:grams?|\\bg|kilocalories|kcal|kj|kilojoules|thirds?|quarters?|half|tenths?|fifths?|per cent|%|crowns?) $");

    private final Meant meant;
    private final Telling telling;

    DirectionCheck(Facts facts) {
        this.meant = new Meant(facts);
        this.telling = new Telling(facts);
    }

    private record Claimed(int from, int to, Topic topic, boolean more) {}

    List<Finding> check(String words, Sentence sentence, Place place) {
        List<Finding> findings = new ArrayList<>();
        if (SUPPOSED.matcher(sentence.small()).find()) {
            return findings;
        }
        for (Claimed claimed : claimed(sentence)) {
            if (!Negation.in(sentence.clauseBefore(claimed.from()))) {
                judge(words, sentence, place, claimed).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static List<Claimed> claimed(Sentence sentence) {
        List<Claimed> all = new ArrayList<>();
        String small = sentence.small();
        Matcher moves = MOVES.matcher(small);
        while (moves.find()) {
            all.add(new Claimed(moves.start(), moves.end(), topic(moves.group(1)), moves.group(2) != null || moves.group(3) != null));
        }
        boolean dish = DISH.matcher(small).find();
        Matcher compared = COMPARED.matcher(small);
        while (dish && compared.find()) {
            if (!COUNTED.matcher(small.substring(0, compared.start())).find()) {
                all.add(new Claimed(compared.start(), compared.end(), topic(compared.group(2)), compared.group(1) != null));
            }
        }
        Matcher priced = PRICED.matcher(small);
        while (dish && priced.find()) {
            all.add(new Claimed(priced.start(), priced.end(), Topic.COST, priced.group(1) != null));
        }
        return all;
    }

    private static Topic topic(String word) {
        return switch (word) {
            case "saturated fat", "saturates" -> Topic.SATURATED;
            case "fat" -> Topic.FAT;
            case "salt", "sodium" -> Topic.SALT;
            case "cost" -> Topic.COST;
            default -> Topic.KILOCALORIES;
        };
    }

    private Optional<Finding> judge(String words, Sentence sentence, Place place, Claimed claimed) {
        Set<Topic> topics = EnumSet.of(claimed.topic());
        List<Known> all = meant.by(topics, bases(sentence), Told.Meaning.SAVED, sentence, place);
        if (all.isEmpty() || all.stream().anyMatch(known -> known.open() || moves(known, claimed.more()))) {
            return Optional.empty();
        }
        Known near = all.stream().max(Comparator.comparingInt(Known::step)).orElseThrow();
        int from = sentence.from() + claimed.from();
        int to = sentence.from() + claimed.to();
        return Optional.of(new Finding(Finding.Kind.BASIS, from, to, words.substring(from, to), "The ledger says " + telling.share(near) + ".",
                telling.source(), "There is " + telling.share(near) + "."));
    }

    /** Where neither plate nor pot is named, either may be meant; per 100 g is never meant unless it is said. */
    private static Set<Basis> bases(Sentence sentence) {
        Set<Basis> named = Context.bases(sentence.small());
        return named.size() == Basis.values().length ? EnumSet.of(Basis.SERVE, Basis.POT) : named;
    }

    private static boolean moves(Known known, boolean more) {
        double share = known.share().typical();
        return more ? share < -NOTHING || known.range().typical() < 0 && share == 0 : share > NOTHING;
    }
}
