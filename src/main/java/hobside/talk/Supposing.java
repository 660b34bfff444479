package hobside.talk;

import hobside.dish.Change;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.measure.Amount;
import hobside.words.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a presenter says when somebody asks "what if?", in the language of the talk: what would be done, and what it does to a plate
 * of today's plan. Figures are rounded for the ear as in the talk; where a figure of a food is missing, that is said instead.
 */
public final class Supposing {

    private final Words words;
    private final Sayings sayings;
    private final Figures figures;
    private final Speech speech;

    private Supposing(Stand.Tongue tongue) {
        this.words = tongue.words();
        this.sayings = new Sayings(words);
        this.speech = Speech.in(words);
        this.figures = new Figures(speech, tongue.currency());
    }

    public static Supposing in(Stand.Tongue tongue) {
        return new Supposing(tongue);
    }

    /** "use rapeseed oil in place of the butter"; "do not pour off the fat of the bacon". */
    public String did(Demo demo, Change change, boolean on) {
        String title = new Called(demo, words).title(change);
        return on ? title : words.say("asked.not", Map.of("title", title));
    }

    /** "use 300 ml of evaporated milk, non-fat"; a food of the dish itself is told by its first word alone. */
    public String amount(Demo demo, Food food, Amount amount) {
        Called called = new Called(demo, words);
        boolean own = demo.dish().ingredients().stream().anyMatch(each -> each.food().id().equals(food.id()));
        String name = own ? called.brief(food) : called.whole(food);
        return words.say("asked.amount", Map.of("amount", called.amount(amount), "food", name));
    }

    /** Two or three sentences to say aloud: what all of it together does to a plate, from today's plan to the other. */
    public String said(List<String> did, Comparison told) {
        Figures.Plates plates = plates(told);
        Map<String, String> gaps = new HashMap<>(figures.of(told));
        gaps.put("did", String.join(" " + words.say("asked.and") + " ", did));
        gaps.put("saved", isFair(plates) ? plates.movesBy(speech) : speech.grams(plates.saved()));
        gaps.put("was", speech.number(plates.from()));
        gaps.put("now", plates.now(speech));
        String raw = words.find("asked." + saturated(told, plates)).orElseThrow() + " " + energy(told) + " " + sayings.cost(told);
        return words.filled(raw, gap -> Optional.ofNullable(gaps.get(gap)));
    }

    /**
     * What is on a plate before and after. Where whole grams would tell a small difference much too large or too small, half grams
     * are told: from 6.4 to 7.6 would be "6, then 8", which are 2 more and not 1.2.
     */
    private static Figures.Plates plates(Comparison told) {
        Figures.Plates whole = Figures.plates(told);
        return isFair(whole) ? whole : Figures.plates(told, HALF_A_GRAM);
    }

    private static boolean isFair(Figures.Plates plates) {
        double saved = Math.abs(plates.saved().typical());
        return Math.abs(Math.abs(plates.from() - plates.to()) - saved) <= Math.min(HALF_A_GRAM, TOO_FAR * saved);
    }

    private static final double HALF_A_GRAM = 0.5;

    /** A difference told is at most this part off, if half grams can help it: our own choice. */
    private static final double TOO_FAR = 0.25;

    /** Where the plates look the same, or their uncertainty hides the difference, the difference is told alone. */
    private static String saturated(Comparison told, Figures.Plates plates) {
        var saved = told.saved(Nutrient.FASAT, Basis.SERVE);
        if (saved.atLeast()) {
            return "unknown";
        }
        if (Math.abs(saved.typical()) < Figures.WORTH_A_NUMBER) {
            return "same";
        }
        String way = saved.typical() > 0 ? "less" : "more";
        return plates.looksTheSame() ? way + "-still" : isFair(plates) ? way : way + "-only";
    }

    private String energy(Comparison told) {
        return told.saved(Nutrient.ENERC_KCAL, Basis.SERVE).atLeast() ? words.say("asked.energy-unknown") : sayings.energy(told);
    }
}
