package hobside.dish;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Works out the pot that a dish and a set of changes end in.
 *
 * <p>The changes are made in the order of the kitchen – by stage, then by kind, then by ingredient – so the order of telling
 * cannot matter. A change that is blocked leaves the pot as it is and its reason is kept.
 */
public final class Working {

    private static final Comparator<Change> KITCHEN_ORDER = new KitchenOrder();

    /** Written out: a chain of comparators is put together while the program starts, and every start works out a pot. */
    private static final class KitchenOrder implements Comparator<Change> {

        @Override
        public int compare(Change one, Change other) {
            int stages = one.stage().compareTo(other.stage());
            int kinds = stages != 0 ? stages : one.kind().compareTo(other.kind());
            return kinds != 0 ? kinds : one.of().compareTo(other.of());
        }
    }

    private Working() {}

    /** The finished pot, and the changes that could not be made with the reason of each. */
    public record Outcome(Pot pot, Map<Change, String> blocked) {}

    public static Outcome of(Dish dish, Collection<Change> changes, Kit kit) {
        List<Change> ordered = new ArrayList<>(changes);
        ordered.sort(KITCHEN_ORDER);
        Map<Change, String> blocked = new LinkedHashMap<>();
        Pot pot = Pot.of(dish, kit);
        for (Stage stage : STAGES) {
            pot = heat(pot, stage, kit);
            pot = make(pot, stage, ordered, kit, blocked);
        }
        return new Outcome(pot, blocked);
    }

    private static final Stage[] STAGES = Stage.values();

    private static Pot heat(Pot pot, Stage stage, Kit kit) {
        return switch (stage) {
            case BROWN -> Heat.apply(pot, 0, kit);
            case SIMMER -> Heat.apply(pot, 1, kit);
            case PREPARE, FINISH, SERVE -> pot;
        };
    }

    private static Pot make(Pot before, Stage stage, List<Change> ordered, Kit kit, Map<Change, String> blocked) {
        Pot pot = before;
        for (Change change : ordered) {
            if (change.stage() == stage) {
                var reason = change.blockedOn(pot);
                reason.ifPresent(why -> blocked.put(change, why));
                pot = reason.isPresent() ? pot : change.applyTo(pot, kit);
            }
        }
        return pot;
    }
}
