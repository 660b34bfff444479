package hobside.dish;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One adaptation of a dish. Applying it returns a new pot and leaves the old one alone.
 *
 * <p>A change that cannot be made leaves the pot as it is and says why in the user's words.
 */
public sealed interface Change
        permits Add, BulkOut, CookAnotherWay, CutDown, Dilute, Drain, LeaveOut, MorePeople, PourOff, Rinse, Skim, SkinOff, SmallerServe,
                Swap, Trim {

    ChangeKind kind();

    /** The id of the ingredient that it works on; empty when it works on the whole pot. */
    String of();

    Pot applyTo(Pot pot, Kit kit);

    /** Why it cannot be made on this pot; empty when it can. */
    Optional<String> blockedOn(Pot pot);

    /** What it is in a few words, such as "trim the short ribs"; names turns an ingredient's id into its name. */
    String told(UnaryOperator<String> names);

    default Stage stage() {
        return kind().stage();
    }

    /** A plan holds one change of a slot: choosing it again means choosing it anew. */
    default String slot() {
        return kind().word() + " " + of();
    }
}
