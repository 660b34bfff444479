package hobside.food;

import hobside.measure.Worded;
import java.util.Optional;

/**
 * The kind of flesh food, as far as it decides how readily its fat melts out.
 *
 * <p>A cut keeps its fat in its tissue; mince lets it go. Veal mince counts as beef mince; minced game as game.
 */
public enum MeltClass implements Worded {
    BEEF_CUT("beef-cut", "any-cut"),
    BEEF_MINCE("beef-mince", "any-mince"),
    VEAL_CUT("veal-cut", "any-cut"),
    PORK_CUT("pork-cut", "any-cut"),
    PORK_MINCE("pork-mince", "any-mince"),
    LAMB_CUT("lamb-cut", "any-cut"),
    LAMB_MINCE("lamb-mince", "any-mince"),
    GAME_CUT("game-cut", "any-cut"),
    POULTRY_CUT("poultry-cut", "any-cut"),
    POULTRY_MINCE("poultry-mince", "any-mince"),
    FISH("fish", "any-other"),
    SAUSAGE("sausage", "any-other"),
    BACON("bacon", "any-other"),
    TINNED_MEAT("tinned-meat", "any-other"),
    OFFAL("offal", "any-cut");

    private final String word;
    private final String family;

    MeltClass(String word, String family) {
        this.word = word;
        this.family = family;
    }

    /** The word used in files, with a hyphen: {@code beef-mince}. */
    @Override
    public String word() {
        return word;
    }

    /** The word of the wider family that stands in when a class has no figures of its own. */
    public String family() {
        return family;
    }

    /** The class with exactly this word; empty when there is none. */
    public static Optional<MeltClass> parse(String word) {
        return Worded.parse(values(), word);
    }
}
