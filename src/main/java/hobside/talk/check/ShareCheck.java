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

/** Holds shares in words or per cent ("a third less", "down by 40 per cent", "a quarter is left", "halved") against the ledger. */
final class ShareCheck {

    /** Fractions in words are coarse: a third is said from a good quarter to two fifths. */
    private static final double WORD_SLACK = 0.06;
    private static final double PERCENT_SLACK = 0.03;
    private static final double HALVED_SLACK = 0.08;

    /** The share that is gone where something is halved, and where it is doubled: then there is as much again. */
    private static final double HALF = 0.5;
    private static final double DOUBLE = -1;

    private static final String HEDGE = "(?:about |some |roughly |around |nearly |almost |over |well over |more than |less than |under |at least |only |a good )*";
    private static final String OF_THE = " of (?:the |its |all the |our |your |all )?";
    private static final String NUTRIENT = "(?:saturated|fat|salt|sodium|energy|calories)";
    private static final Pattern SHARE = Pattern.compile("(?<![\\p{L}\\d.,])" + NumberWords.SHARE + "(?![\\p{L}\\d])");
    private static final Pattern HALVED = Pattern.compile("\\bhalv(?:e|es|ed|ing) (?:the |its |our |your )?(?=" + NUTRIENT + ")|(?<=" + NUTRIENT + " (?:is|has been|was|fat is|fat has been|fat was) )halved\\b"
            + "|\\bhalf as much (?=" + NUTRIENT + ")");
    private static final Pattern DOUBLED = Pattern.compile("\\b(?:twice|double) (?:as much |the )(?=" + NUTRIENT + ")|\\bdoubl(?:es|ed|ing) the (?=" + NUTRIENT + ")|(?<=" + NUTRIENT + " (?:is|has been|was|fat is|fat has been|fat was) )doubled\\b");
    private static final Pattern LESS_AFTER = Pattern.compile("^ (?:less|fewer|lower|cheaper)\\b");
    private static final Pattern LESS_BEFORE = Pattern.compile("\\b(?:by|down|cut|reduced|fallen|dropped|gone down|gone|lost) (?:by )?" + HEDGE + "$");
    private static final Pattern OF_NUTRIENT = Pattern.compile("^" + OF_THE + NUTRIENT);
    private static final Pattern OF_A_UNIT = Pattern.compile("^ of an? (?:gram|teaspoon|spoon|kilo|crown|litre)|^ (?:a|an) ");
    private static final Pattern GONE = Pattern.compile("\\b(?:gone|off|saved?|away|taken|takes?|took|cut|lost|lose|removed?|rid of|out|disappeared?)\\b");
    private static final Pattern LEFT = Pattern.compile("\\b(?:left|remains?|stays?|still there|keep|kept)\\b");
    private static final Pattern ELSEWHERE = Pattern.compile("comes? from|\\b(?:day|daily|energy of|kinds?|spoon|packet|label)\\b");
    private static final Pattern OTHER_FOOD = Pattern.compile("\\b(?:oils?|butter|dripping|lard|ghee|cream|milk|cheese|margarine|mince|yoghurt|suet|flank|skirt|sausages?|frankfurters?|nuts?|almonds)\\b");
    private static final Pattern DISH = Pattern.compile("\\b(?:plates?|serves?|servings?|pot|dish|stew|we|our|us)\\b");

    private final Meant meant;
    private final Telling telling;

    ShareCheck(Facts facts) {
        this.meant = new Meant(facts);
        this.telling = new Telling(facts);
    }

    List<Finding> check(String words, Sentence sentence, Place place) {
        List<Finding> findings = new ArrayList<>();
        String small = sentence.small();
        if (!mayTellOfShares(small) || has(ELSEWHERE, small) || has(OTHER_FOOD, small) && !has(DISH, small)) {
            return findings;
        }
        if (sentence.has("halv") || sentence.has("half as")) {
            whole(words, sentence, place, HALVED.matcher(small), HALF).ifPresent(findings::add);
        }
        if (sentence.has("doubl") || sentence.has("twice")) {
            whole(words, sentence, place, DOUBLED.matcher(small), DOUBLE).ifPresent(findings::add);
        }
        Matcher share = SHARE.matcher(small);
        while (share.find()) {
            said(small, share).flatMap(said -> judge(words, sentence, place, said)).ifPresent(findings::add);
        }
        return findings;
    }

    private static final String[] HINTS = {"half", "halv", "third", "quarter", "fifth", "sixth", "eighth", "tenth", "%", "per cent", "percent", "doubl", "twice"};

    private static boolean mayTellOfShares(String small) {
        for (String hint : HINTS) {
            if (small.contains(hint)) {
                return true;
            }
        }
        return false;
    }

    private Optional<Finding> whole(String words, Sentence sentence, Place place, Matcher matcher, double gone) {
        return matcher.find() ? judge(words, sentence, place, new Said(matcher.start(), matcher.end(), gone, HALVED_SLACK)) : Optional.empty();
    }

    private record Said(int from, int to, double gone, double slack) {}

    private static Optional<Said> said(String small, Matcher share) {
        String before = small.substring(Math.max(0, share.start() - 40), share.start());
        String after = small.substring(share.end());
        double value = NumberWords.share(share.group());
        double slack = share.group().indexOf('%') >= 0 || share.group().contains("per") ? PERCENT_SLACK : WORD_SLACK;
        if (OF_A_UNIT.matcher(after).find()) {
            return Optional.empty();
        }
        boolean of = OF_NUTRIENT.matcher(after).find();
        if (of && has(LEFT, small) && !has(GONE, small)) {
            return Optional.of(new Said(share.start(), share.end(), 1 - value, slack));
        }
        boolean less = LESS_AFTER.matcher(after).find() || has(LESS_BEFORE, before) || of && has(GONE, small);
        return less ? Optional.of(new Said(share.start(), share.end(), value, slack)) : Optional.empty();
    }

    private Optional<Finding> judge(String words, Sentence sentence, Place place, Said said) {
        Set<Topic> topics = topics(sentence);
        Told.Hedge hedge = Context.hedge(sentence.small().substring(0, said.from()));
        Told told = new Told(said.from(), said.to(), said.gone(), said.slack(), topics, bases(sentence), Told.Meaning.SAVED, hedge);
        List<Known> candidates = topics.isEmpty() ? List.of() : meant.by(told, sentence, place);
        if (candidates.isEmpty() || candidates.stream().anyMatch(known -> known.open() || told.fits(known.share(), 0))) {
            return Optional.empty();
        }
        Known near = candidates.stream().min(Comparator.comparingDouble(known -> Math.abs(known.share().typical() - said.gone()))).orElseThrow();
        String reason = "The ledger says " + telling.share(near) + ".";
        return Optional.of(new Finding(Finding.Kind.NUMBER, sentence.from() + said.from(), sentence.from() + said.to(),
                words.substring(sentence.from() + said.from(), sentence.from() + said.to()), reason, telling.source(),
                "That is " + telling.share(near) + "."));
    }

    private static Set<Basis> bases(Sentence sentence) {
        Set<Basis> named = Context.bases(sentence.small());
        return named.size() == Basis.values().length ? EnumSet.of(Basis.SERVE, Basis.POT) : named;
    }

    private static Set<Topic> topics(Sentence sentence) {
        String small = sentence.small();
        boolean pronoun = small.contains("that is") || small.contains("it is") || small.contains("it's");
        if (small.contains("saturated") || small.contains("saturates") || pronoun && sentence.before().contains("saturated")) {
            return EnumSet.of(Topic.SATURATED);
        }
        return small.contains("fat") ? EnumSet.of(Topic.SATURATED, Topic.FAT)
                : small.contains("salt") || small.contains("sodium") ? EnumSet.of(Topic.SALT)
                : small.contains("energy") || small.contains("calorie") ? EnumSet.of(Topic.KILOCALORIES)
                : small.contains("cheaper") || small.contains("cost") || small.contains("price") ? EnumSet.of(Topic.COST)
                : EnumSet.noneOf(Topic.class);
    }

    private static boolean has(Pattern pattern, String text) {
        return pattern.matcher(text).find();
    }
}
