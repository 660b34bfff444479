package hobside.talk.check;

import hobside.guide.Claim;
import hobside.guide.ClaimKind;
import hobside.guide.Sample;
import hobside.guide.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holds words of labels ("low fat", "light", "95 % fat free") against the chosen country's published numbers, for the dish as it
 * is at that place of the talk. What is not known well enough, such as trans fat, gives "cannot say" and is told so.
 *
 * <p>Only words about the dish itself count: "a low-fat spread" is the name of a food, and its packet answers for it.
 */
final class ClaimCheck {

    private static final Pattern DISH_NOUN = Pattern.compile("^(?:,? (?:and|but) [a-z]+)? ?(?:version |sort of )?(?:dish|stew|pot|meal|supper|dinner|lunch|plate|serve|serving|version|recipe|soup|bake|food|cooking|kind of (?:dish|food|meal))\\b");
    private static final Pattern ENDS = Pattern.compile("^(?:[.,;:!?]|$| (?:now|and|as well|too|at last|by now|today|for|so|dish|because|after|in)\\b)");
    private static final Pattern SUBJECT = Pattern.compile("\\b(?:it|it's|this|that|dish|stew|pot|plate|plates|serve|version|ours|we|meal|supper|you)\\b");
    private static final Pattern IS = Pattern.compile("\\b(?:is|it's|that's|are|becomes?|make|makes|made|call|calls|called|have|has|remains?|stays?|be|now|comes out)\\b");
    private static final Pattern SPOKEN_OF = Pattern.compile("\\b(?:label|labels|packet|law|laws|rules?|number|word|words|claim|claims|would be|flame|heat|gas|fire|lamp|over the hob)\\b");
    private static final Pattern PERCENT_FREE = Pattern.compile("(?<![\\d.])(\\d+(?:\\.\\d+)?|[a-z-]+) ?(?:%|per ?cent) (?:of )?(?:saturated )?(?:fat[- ]free|free (?:of|from) fat)");
    private static final String LEAN = "\\blean(?:er)? (?:dish|stew|pot|meal|supper|version|plate)\\b";
    private static final Pattern LEAN_DISH = Pattern.compile(LEAN);

    private final Facts facts;
    private final Telling telling;

    ClaimCheck(Facts facts) {
        this.facts = facts;
        this.telling = new Telling(facts);
    }

    List<Finding> check(String words, Sentence sentence, Place place) {
        List<Finding> findings = new ArrayList<>();
        if (!mayClaim(sentence.small()) || SPOKEN_OF.matcher(sentence.small()).find()) {
            return findings;
        }
        Matcher percent = PERCENT_FREE.matcher(sentence.small());
        if (percent.find() && !Negation.in(sentence.clauseBefore(percent.start()))) {
            percentFree(words, sentence, place, percent).ifPresent(findings::add);
            return findings;
        }
        lean(words, sentence, place).ifPresent(findings::add);
        for (ClaimWords.Row row : ClaimWords.ROWS) {
            Matcher matcher = row.words().matcher(sentence.small());
            while (matcher.find()) {
                if (isOfDish(sentence, matcher, row.kind())) {
                    judge(words, sentence, place, matcher, row.kind()).ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    /** Every row of the table holds one of these, so most sentences are done at once. */
    private static boolean mayClaim(String small) {
        return small.contains("low") || small.contains("free") || small.contains("reduced") || small.contains("lite") || small.contains("light")
                || small.contains("lean") || small.contains("fat");
    }

    private static boolean isOfDish(Sentence sentence, Matcher matcher, ClaimKind kind) {
        String small = sentence.small();
        String after = small.substring(matcher.end());
        String before = small.substring(0, matcher.start());
        if (Negation.in(sentence.clauseBefore(matcher.start())) || small.endsWith("?")) {
            return false;
        }
        if (DISH_NOUN.matcher(after).find()) {
            return true;
        }
        boolean named = SUBJECT.matcher(before).find() && IS.matcher(before).find();
        return named && ENDS.matcher(after).find() && (kind != ClaimKind.LIGHT || before.matches(".*\\b(?:is|it's|now|becomes?|makes? it|made it|call it) (?:very |quite |really )?"));
    }

    private Optional<Finding> judge(String words, Sentence sentence, Place place, Matcher matcher, ClaimKind kind) {
        Sample before = Sample.of(facts.start());
        Sample after = Sample.of(facts.at(place));
        List<Claim.Finding> checked = facts.claims(kind).stream().map(claim -> claim.check(before, after)).toList();
        if (checked.stream().anyMatch(each -> each.verdict() == Verdict.MEETS)) {
            return Optional.empty();
        }
        String reason = checked.isEmpty()
                ? "Nobody can say: there is no number for \"" + kind.word() + "\" among the rules we hold (" + facts.country() + ")."
                : String.join(" ", checked.stream().map(Claim.Finding::sentence).toList());
        String source = checked.isEmpty() ? "the rules of " + facts.country() : checked.get(0).claim().published().citation().written();
        return Optional.of(finding(words, sentence, matcher, reason, source, place));
    }

    private Finding finding(String words, Sentence sentence, Matcher matcher, String reason, String source, Place place) {
        int from = sentence.from() + matcher.start();
        int to = sentence.from() + matcher.end();
        return new Finding(Finding.Kind.CLAIM, from, to, words.substring(from, to), reason + " " + Claim.LABELS_NOT_CLASSES, source, telling.now(place));
    }

    /** "95 % fat free": the European Union forbids these words; elsewhere the dish must be low in fat. */
    private Optional<Finding> percentFree(String words, Sentence sentence, Place place, Matcher matcher) {
        if (!facts.country().equals("European Union") && !facts.country().equals("Codex Alimentarius")) {
            return judge(words, sentence, place, matcher, ClaimKind.LOW_FAT);
        }
        return Optional.of(finding(words, sentence, matcher, "\"So much per cent fat free\" is not allowed on labels in the European Union, however little fat there is.",
                "Regulation (EC) No 1924/2006, Annex (second-hand)", place));
    }

    private Optional<Finding> lean(String words, Sentence sentence, Place place) {
        Matcher matcher = LEAN_DISH.matcher(sentence.small());
        boolean found = matcher.find() && !Negation.in(sentence.clauseBefore(matcher.start()));
        return found ? Optional.of(finding(words, sentence, matcher, "\"Lean\" is a word of labels for meat: in the United States below 10 g of fat and at most 4.5 g of saturated"
                + " fat per 100 g and per serving. Trimmed is what was done; lean is what it would have to be.", "21 CFR 101.62 (second-hand)", place)) : Optional.empty();
    }
}
