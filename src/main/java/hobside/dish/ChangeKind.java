package hobside.dish;

import hobside.measure.Worded;
import java.util.Optional;

/**
 * The kinds of change, in the order in which a kitchen carries them out: this order, not the order of telling, decides the
 * outcome. Each has its word in files and the stage at which it is done.
 */
public enum ChangeKind implements Worded {
    ADD("add", Stage.PREPARE),
    BULK_OUT("bulk-out", Stage.PREPARE),
    LEAVE_OUT("leave-out", Stage.PREPARE),
    SWAP("swap", Stage.PREPARE),
    CUT_DOWN("cut-down", Stage.PREPARE),
    DRAIN("drain", Stage.PREPARE),
    RINSE("rinse", Stage.PREPARE),
    SKIN_OFF("skin-off", Stage.PREPARE),
    TRIM("trim", Stage.PREPARE),
    DILUTE("dilute", Stage.PREPARE),
    COOK_ANOTHER_WAY("cook-another-way", Stage.PREPARE),
    POUR_OFF("pour-off", Stage.BROWN),
    SKIM("skim", Stage.FINISH),
    SMALLER_SERVE("smaller-serve", Stage.SERVE),
    MORE_PEOPLE("more-people", Stage.SERVE);

    private final String word;
    private final Stage stage;

    ChangeKind(String word, Stage stage) {
        this.word = word;
        this.stage = stage;
    }

    @Override
    public String word() {
        return word;
    }

    public Stage stage() {
        return stage;
    }

    public static Optional<ChangeKind> parse(String word) {
        return Worded.parse(values(), word);
    }
}
