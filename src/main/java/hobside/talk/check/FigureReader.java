package hobside.talk.check;

import hobside.measure.Currency;
import hobside.talk.Speech;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the figures in a sentence that are about saturated fat, fat, salt, energy or cost. Times, temperatures, kitchen weights and
 * counts are none of these; where the words leave it open, nothing is found rather than something wrong.
 */
final class FigureReader {

    private static final String ADJECTIVES = "(?:level |full |whole |good |more |fewer |less |extra )?";
    private static final Pattern BARE = Pattern.compile("\\b(?:is|was|are|were|at|from|to|of|by|against|with|still) (?:about |some |roughly |around |only )?("
            + NumberWords.PATTERN + ")(?=\\s*(?:[.,;:!?]|$|to\\b|now\\b|and we\\b|before\\b|after\\b|a serve|a plate|on (?:each|every)|at the (?:end|start)))");

    /** A spoon's or another food's own figure, a price in the shop, a rule's limit. */
    private static final Pattern OTHERWISE = Pattern.compile("(?:spoon|gram) (?:of [a-z ]{1,20} )?(?:holds|has|is|carries|gives)|comes? from|\\b(?:limit|threshold|packet|label|by law|a kilo|per kilo|a pack|a tin|a litre|a pound|a bunch|at the till)\\b");
    private static final Pattern OTHER_FOOD = Pattern.compile("\\b(?:in|per) (?:100|a hundred|every 100) ?(?:g|grams)\\b");
    private static final Pattern FOODS = Pattern.compile("\\b(?:oils?|butter|dripping|lard|ghee|cream|milk|cheese|margarine|suet|yoghurt|mince|bacon|chicken|beef|lamb|pork|fish|nuts?|coconut|topside)\\b");
    private static final Pattern KITCHEN = Pattern.compile("\\b(?:trimmings?|scale|jar|weighs?|weigh|white fat|rim|fat edge|measure out|pour in|stir in|put in|buy|use|add|grease)\\b");
    private static final Pattern DISH = Pattern.compile("\\b(?:plates?|serves?|servings?|portions?|bowls?|pot|pots|dish|stew|sav(?:e|es|ed)|tak(?:e|es|en)|took|goes (?:down|up)|gone|falls?|down)\\b");
    private static final Pattern ON_THE_PLATE = Pattern.compile("\\b(?:plates?|serves?|servings?|portions?|less|fewer|down|up|saved?|holds?)\\b");
    private static final Pattern OFF_THE_PLATE = Pattern.compile("\\b(?:off|less on|fewer on|saved on|lighter on) (?:each|every|a|the|your) (?:plate|serve|serving|portion)");
    private static final Pattern SATURATED = Pattern.compile("\\bsaturated|\\bsaturates");
    private static final Pattern FAT = Pattern.compile("(?<!saturated )(?<!white )\\bfat\\b(?! edge)");
    private static final Pattern SALT = Pattern.compile("\\bsalt\\b");
    private static final Pattern SODIUM = Pattern.compile("\\bsodium\\b");
    private static final Pattern NEXT_OF = Pattern.compile("^ of (?:the |its |all |that |pure )?(?:saturated|saturates|fat\\b|salt\\b|sodium\\b|energy\\b|them\\b|it\\b)");
    private static final Pattern OF = Pattern.compile("^(?:\\)|) ?of \\p{L}");

    private final Pattern united;
    private final Pattern coin;

    FigureReader(Currency currency) {
        String money = "(?:" + Pattern.quote(small(currency.one())) + "|" + Pattern.quote(small(currency.many()))
                + (currency.sign().isBlank() ? "" : "|" + Pattern.quote(small(currency.sign()))) + ")";
        this.coin = Pattern.compile(money);
        this.united = Pattern.compile("(?<![\\p{L}\\d.,])(" + NumberWords.PATTERN + ") ?" + ADJECTIVES
                + "(grams?|g|mg|milligrams?|kilocalories|kilocalorie|kcals?|calories|kilojoules?|kj|teaspoons?|" + money + ")(?![\\p{L}\\d])");
    }

    private static String small(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    /** Every figure of the sentence that can be held against the ledger. */
    List<Told> read(Sentence sentence) {
        List<Told> told = new ArrayList<>();
        Matcher matcher = united.matcher(sentence.small());
        while (matcher.find()) {
            if (!isBasis(sentence.small(), matcher)) {
                told(sentence, matcher).ifPresent(told::add);
            }
        }
        if (!told.isEmpty() || hasFigures(sentence.before())) {
            bare(sentence, told);
        }
        return told;
    }

    private boolean hasFigures(String sentence) {
        return has(SATURATED, sentence) && united.matcher(sentence).find();
    }

    /** "per 100 grams" says for how much something holds. */
    private static boolean isBasis(String small, Matcher matcher) {
        return NumberWords.value(matcher.group(1)) == 100 && matcher.group(2).startsWith("g")
                && !NEXT_OF.matcher(small.substring(matcher.end())).find();
    }

    private Optional<Told> told(Sentence sentence, Matcher matcher) {
        Set<Topic> topics = topics(sentence, matcher);
        if (topics.isEmpty() || isOtherwise(sentence.small())) {
            return Optional.empty();
        }
        boolean spoons = matcher.group(2).startsWith("teaspoon");
        double value = NumberWords.value(matcher.group(1)) * (spoons ? Speech.TEASPOON_OF_FAT : 1);
        double slack = spoons ? Speech.TEASPOON_OF_FAT / 2 : NumberWords.fineness(matcher.group(1), value);
        return Optional.of(of(sentence, matcher.start(1), matcher.end(), value, slack, topics));
    }

    private static Told of(Sentence sentence, int from, int to, double value, double slack, Set<Topic> topics) {
        String small = sentence.small();
        return new Told(from, to, value, slack, topics, Context.bases(small), Context.meaning(small, from, to),
                Context.hedge(small.substring(0, from)));
    }

    private static boolean isOtherwise(String small) {
        return has(OTHERWISE, small) || has(OTHER_FOOD, small) && has(FOODS, small);
    }

    private Set<Topic> topics(Sentence sentence, Matcher matcher) {
        String unit = matcher.group(2);
        if (unit.startsWith("kj") || unit.startsWith("kilojoule")) {
            return EnumSet.of(Topic.KILOJOULES);
        }
        if (unit.startsWith("kc") || unit.startsWith("kilocal") || unit.startsWith("cal")) {
            return EnumSet.of(Topic.KILOCALORIES);
        }
        if (unit.startsWith("m")) {
            return has(SODIUM, sentence.small()) ? EnumSet.of(Topic.SODIUM) : EnumSet.noneOf(Topic.class);
        }
        if (coin.matcher(unit).matches()) {
            return has(DISH, sentence.small()) ? EnumSet.of(Topic.COST) : EnumSet.noneOf(Topic.class);
        }
        return unit.startsWith("teaspoon") ? spoonTopics(sentence, matcher.end()) : gramTopics(sentence, matcher.end());
    }

    private static Set<Topic> spoonTopics(Sentence sentence, int end) {
        boolean other = OF.matcher(sentence.small().substring(end)).find() && !NEXT_OF.matcher(sentence.small().substring(end)).find();
        boolean fat = sentence.has("fat") && has(DISH, sentence.small()) && !has(KITCHEN, sentence.small());
        return !other && fat ? EnumSet.of(has(SATURATED, sentence.small()) ? Topic.SATURATED : Topic.FAT) : EnumSet.noneOf(Topic.class);
    }

    private static Set<Topic> gramTopics(Sentence sentence, int end) {
        String small = sentence.small();
        String rest = small.substring(end);
        boolean of = OF.matcher(rest).find();
        if (of && !NEXT_OF.matcher(rest).find()) {
            return EnumSet.noneOf(Topic.class);
        }
        if (!of && !has(DISH, small) && !sentence.has(" hold") && !sentence.has("saturated")) {
            return EnumSet.noneOf(Topic.class);
        }
        if (rest.startsWith(" of salt") && !has(ON_THE_PLATE, small)) {
            return EnumSet.noneOf(Topic.class);
        }
        return has(KITCHEN, small) && !has(SATURATED, small) ? EnumSet.noneOf(Topic.class) : named(sentence, rest);
    }

    /** What is named nearest after the figure, else anywhere in the sentence, else what the sentence before was about. */
    private static Set<Topic> named(Sentence sentence, String rest) {
        Set<Topic> next = first(rest.substring(0, Math.min(rest.length(), 40)));
        if (!next.isEmpty()) {
            return next;
        }
        Set<Topic> here = first(sentence.small());
        if (!here.isEmpty()) {
            return here;
        }
        boolean off = has(OFF_THE_PLATE, sentence.small());
        boolean before = has(SATURATED, sentence.before()) && has(DISH, sentence.small());
        return off || before ? EnumSet.of(Topic.SATURATED, Topic.FAT) : EnumSet.noneOf(Topic.class);
    }

    private static Set<Topic> first(String text) {
        Topic best = null;
        int at = Integer.MAX_VALUE;
        for (Topic topic : List.of(Topic.SATURATED, Topic.FAT, Topic.SALT, Topic.SODIUM)) {
            Matcher matcher = word(topic).matcher(text);
            if (matcher.find() && matcher.start() < at) {
                best = topic;
                at = matcher.start();
            }
        }
        return best == null || best == Topic.SODIUM ? EnumSet.noneOf(Topic.class) : EnumSet.of(best);
    }

    private static Pattern word(Topic topic) {
        return switch (topic) {
            case SATURATED -> SATURATED;
            case FAT -> FAT;
            case SODIUM -> SODIUM;
            case SALT, KILOCALORIES, KILOJOULES, COST -> SALT;
        };
    }

    /** "it was about 29, now it is about 11": figures that borrow their unit from another. */
    private void bare(Sentence sentence, List<Told> told) {
        Set<Topic> topics = told.isEmpty() ? EnumSet.of(Topic.SATURATED, Topic.FAT) : told.get(0).topics();
        Matcher matcher = BARE.matcher(sentence.small());
        while (matcher.find() && !isOtherwise(sentence.small())) {
            int from = matcher.start(1);
            double value = NumberWords.value(matcher.group(1));
            if (value > 1 && told.stream().noneMatch(each -> each.from() <= from && from < each.to())) {
                told.add(of(sentence, from, matcher.end(1), value, NumberWords.fineness(matcher.group(1), value), topics));
            }
        }
    }

    private static boolean has(Pattern pattern, String text) {
        return pattern.matcher(text).find();
    }
}
