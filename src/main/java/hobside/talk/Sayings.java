package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Figure;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;

/** Chooses the sentences that tell what a change, or the whole plan, did. The figures stay as gaps, so that they are live. */
final class Sayings {

    private static final double WORTH_KILOCALORIES = 8;
    private static final double WORTH_MINOR_COINS = 2.5;
    private static final double WORTH_SALT = 0.1;
    private static final double WORTH_A_PINCH = 0.02;

    /** A pot that changes by less than this share of its saturated fat holds as much as before. */
    private static final double SAME_POT = 0.02;

    private final Words words;

    Sayings(Words words) {
        this.words = words;
    }

    private String raw(String key) {
        return words.find("talk." + key).orElseThrow(() -> new IllegalArgumentException("no words for talk." + key));
    }

    /** "That takes {saved} of saturated fat off each plate ..." */
    String saturated(Comparison told) {
        double saved = told.saved(Nutrient.FASAT, Basis.SERVE).typical();
        if (Math.abs(saved) < Figures.WORTH_A_NUMBER) {
            return raw("saved.same");
        }
        boolean still = Figures.plates(told).looksTheSame();
        return raw(saved > 0 ? still ? "saved.still" : "saved.takes" : still ? "saved.puts-still" : "saved.puts");
    }

    /** All that is said of a change after it has been shown. */
    String effect(Comparison told) {
        List<String> sentences = new ArrayList<>();
        sentences.add(saturated(told));
        if (isSharing(told)) {
            sentences.add(raw("saved.sharing"));
        }
        sentences.add(beside(told));
        return String.join(" ", sentences);
    }

    /** Where each plate holds less only because more share the pot, or each is given less of it. */
    static boolean isSharing(Comparison told) {
        double pot = told.before().of(Nutrient.FASAT, Basis.POT).typical();
        boolean samePot = Math.abs(told.saved(Nutrient.FASAT, Basis.POT).typical()) < pot * SAME_POT;
        return samePot && told.saved(Nutrient.FASAT, Basis.SERVE).typical() >= Figures.WORTH_A_NUMBER;
    }

    /** Energy, cost and, where it is worth a word, salt. */
    String beside(Comparison told) {
        String salt = salt(told);
        return energy(told) + " " + cost(told) + (salt.isEmpty() ? "" : " " + salt);
    }

    String energy(Comparison told) {
        double saved = told.saved(Nutrient.ENERC_KCAL, Basis.SERVE).typical();
        return raw(Math.abs(saved) < WORTH_KILOCALORIES ? "energy.same" : saved > 0 ? "energy.down" : "energy.up");
    }

    String cost(Comparison told) {
        Figure saved = told.savedCost(Basis.SERVE);
        if (saved.atLeast()) {
            return raw("cost.unknown");
        }
        return raw(Math.abs(saved.typical()) < WORTH_MINOR_COINS ? "cost.same" : saved.typical() > 0 ? "cost.down" : "cost.up");
    }

    private String salt(Comparison told) {
        double saved = Figures.salt(told).typical();
        if (Math.abs(saved) < WORTH_A_PINCH) {
            return "";
        }
        String way = saved > 0 ? "salt.down" : "salt.up";
        return raw(Math.abs(saved) < WORTH_SALT ? way + "-little" : way);
    }

    /** Whether the fat saved is worth showing by the teaspoon. */
    static boolean isWorthSpoons(Comparison told) {
        return told.saved(Nutrient.FAT, Basis.SERVE).typical() >= Speech.TEASPOON_OF_FAT / 2;
    }
}
