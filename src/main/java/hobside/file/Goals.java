package hobside.file;

import hobside.advice.Goal;
import hobside.guide.Claim;
import hobside.guide.ClaimKind;
import hobside.guide.Component;
import hobside.guide.Condition;
import hobside.guide.Guide;
import hobside.guide.Per;
import hobside.ledger.Ledger;
import hobside.ledger.Outcome;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Goals as a presenter types them: "6 g" a serve, "a third less", "30 % less", "10 % of energy", "1.5 g per 100 g", or a claim's
 * published threshold, "low in saturated fat" or "reduced saturated fat", of the country whose guide the demo is held against.
 */
public final class Goals {

    /** The goal that is asked first. */
    public static final String FIRST = "a third less";

    /** What may be typed. */
    public static final String EXAMPLES = "6 g (a serve), a third less, 30 % less, 10 % of energy, 1.5 g per 100 g, low in saturated fat, reduced saturated fat";

    private static final String DEFAULT_PLACE = "European Union";
    private static final Pattern GRAMS = Pattern.compile("(?:at most )?(\\d{1,3}(?:[.,]\\d{1,2})?) ?g(?:rams?)?(?: (?:a|per) serve)?");
    private static final Pattern PER_100 = Pattern.compile("(?:at most )?(\\d{1,3}(?:[.,]\\d{1,2})?) ?g(?:rams?)? (?:per|in|a) 100 ?g");
    private static final Pattern ENERGY = Pattern.compile("(?:at most )?(\\d{1,2}(?:[.,]\\d)?) ?(?:%|per cent) of (?:the )?energy");
    private static final Pattern LESS = Pattern.compile("(\\d{1,2}(?:[.,]\\d)?) ?(?:%|per cent)(?: ?less)?");
    private static final Map<String, Double> PARTS = Map.of("half", 0.5, "a half", 0.5, "a third", 1 / 3.0, "third", 1 / 3.0, "a quarter", 0.25, "quarter", 0.25,
            "two thirds", 2 / 3.0, "three quarters", 0.75, "a fifth", 0.2);

    private Goals() {}

    /** The goal, or why the text is none. */
    public record Parsed(Optional<Goal> value, String problem) {}

    public static Parsed parse(String text, Demo demo, Study study) {
        String words = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Optional<Goal> goal = figure(words, Ledger.outcome(demo.dish(), List.of(), study.books())).or(() -> claim(words, demo, study));
        return new Parsed(goal, goal.isPresent() ? "" : "\"" + text.strip() + "\" is no goal that can be reckoned. Such as: " + EXAMPLES + ".");
    }

    private static Optional<Goal> figure(String words, Outcome start) {
        Double part = PARTS.get(words.replace(" less", ""));
        if (part != null) {
            return Optional.of(Goal.lessBy(part, start));
        }
        Optional<Double> per100 = number(PER_100, words);
        Optional<Double> energy = number(ENERGY, words);
        if (per100.isPresent() || energy.isPresent()) {
            return per100.isPresent() ? per100.map(Goal::per100) : energy.map(percent -> Goal.shareOfEnergy(percent / 100));
        }
        Optional<Double> less = number(LESS, words);
        return less.isPresent() ? less.map(percent -> Goal.lessBy(percent / 100, start)) : number(GRAMS, words).map(Goal::atMost);
    }

    private static Optional<Double> number(Pattern pattern, String words) {
        Matcher matcher = pattern.matcher(words);
        return matcher.matches() ? Optional.of(Double.parseDouble(matcher.group(1).replace(',', '.'))) : Optional.empty();
    }

    private static Optional<Goal> claim(String words, Demo demo, Study study) {
        Optional<ClaimKind> kind = ClaimKind.parse(words).filter(known -> known == ClaimKind.LOW_SATURATED || known == ClaimKind.REDUCED_SATURATED);
        return kind.flatMap(known -> row(known, demo, study)).flatMap(claim -> goal(claim, Ledger.outcome(demo.dish(), List.of(), study.books())));
    }

    /** The row of the guide's own country, else that of the European Union. */
    private static Optional<Claim> row(ClaimKind kind, Demo demo, Study study) {
        String place = study.guide(demo.guide()).map(Guide::published).map(published -> published.place()).orElse(DEFAULT_PLACE);
        List<Claim> rows = study.published().claims().stream().filter(claim -> claim.kind() == kind && claim.per() == Per.HUNDRED_GRAMS).toList();
        return rows.stream().filter(claim -> claim.published().place().equals(place)).findFirst()
                .or(() -> rows.stream().filter(claim -> claim.published().place().equals(DEFAULT_PLACE)).findFirst());
    }

    private static Optional<Goal> goal(Claim claim, Outcome start) {
        List<Goal> goals = new ArrayList<>();
        for (Condition condition : claim.conditions()) {
            if (condition.of() == Component.SATURATED || condition.of() == Component.SATURATED_AND_TRANS) {
                goal(condition, start).ifPresent(goals::add);
            }
        }
        String told = "the number for \"" + claim.published().name() + "\" (" + claim.published().place() + "; trans fat is not reckoned)";
        return goals.isEmpty() ? Optional.empty()
                : Optional.of(new Goal(told, goals.stream().flatMap(each -> each.conditions().stream()).toList()));
    }

    private static Optional<Goal> goal(Condition condition, Outcome start) {
        return switch (condition.rule()) {
            case AT_MOST, BELOW -> Optional.of(condition.unit().isShareOfEnergy() ? Goal.shareOfEnergy(condition.figure() / 100) : Goal.per100(condition.figure()));
            case LESS_BY -> Optional.of(Goal.lessBy(condition.figure() / 100, start));
            case BEFORE_ABOVE, BEFORE_BELOW, RISES_BY_AT_MOST -> Optional.empty();
        };
    }
}
