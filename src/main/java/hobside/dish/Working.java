package hobside.dish;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Works out the pot that a dish and a set of changes end in.
 *
 * <p>The changes are made in the order of the kitchen – by stage, then by kind, then by ingredient – so the order of telling
 * cannot matter. A change that is blocked leaves the pot as it is and its reason is kept. A working can be looked at again with one
 * uncertain factor moved; it is then taken up where that factor first has a say.
 */
public final class Working {

    /** Changes of these kinds look at their own ingredient and at nothing else in the pot, and change nothing else. */
    private static final Set<ChangeKind> TO_ONE_ITEM = EnumSet.of(ChangeKind.SWAP, ChangeKind.CUT_DOWN, ChangeKind.DRAIN, ChangeKind.RINSE,
            ChangeKind.SKIN_OFF, ChangeKind.TRIM, ChangeKind.DILUTE, ChangeKind.POUR_OFF);

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

    private static final Stage[] STAGES = Stage.values();

    /** One thing that is done. Written out as classes, as the order above and for the same reason. */
    private interface Task {
        Pot on(Pot pot, Kit kit);
    }

    private record Filling() implements Task {
        @Override
        public Pot on(Pot pot, Kit kit) {
            return pot.filled(kit);
        }
    }

    /** Food is cooked in its first way (turn 0) as the browning begins, and in its second as the simmering does. */
    private record Fire(int turn) implements Task {
        @Override
        public Pot on(Pot pot, Kit kit) {
            return Heat.apply(pot, turn, kit);
        }
    }

    private final class Making implements Task {
        private final Change change;

        Making(Change change) {
            this.change = change;
        }

        @Override
        public Pot on(Pot pot, Kit with) {
            return make(change, pot, with);
        }
    }

    private final Kit kit;
    private final List<Task> tasks = new ArrayList<>();
    private final Map<Change, String> blocked = new LinkedHashMap<>();
    private final Map<String, Integer> firstAsked = new LinkedHashMap<>();

    /** The pot before each task, and at the end. */
    private final List<Pot> pots = new ArrayList<>();

    private Working(Kit kit) {
        this.kit = kit;
    }

    /** Works the dish out with all factors at the levels of the kit. */
    public static Working of(Dish dish, Collection<Change> changes, Kit kit) {
        Working working = new Working(kit.noting());
        working.plan(dish, changes);
        working.carryOut();
        return working;
    }

    /** The finished pot. */
    public Pot pot() {
        return pots.get(tasks.size());
    }

    /** The changes that could not be made, with the reason of each. */
    public Map<Change, String> blocked() {
        return Collections.unmodifiableMap(blocked);
    }

    /** The uncertain factors that had a say, in the order in which they were asked for. */
    public Set<String> factors() {
        return Collections.unmodifiableSet(firstAsked.keySet());
    }

    /** The finished pot when one factor stands at one of its ends. */
    public Pot potWith(Levels.Moved moved) {
        Kit other = kit.at(Levels.with(moved));
        int from = firstAsked.getOrDefault(moved.factor(), tasks.size());
        Pot pot = pots.get(from);
        for (int i = from; i < tasks.size(); i++) {
            pot = tasks.get(i).on(pot, other);
        }
        return pot;
    }

    private void plan(Dish dish, Collection<Change> changes) {
        List<Change> ordered = new ArrayList<>(changes);
        ordered.sort(KITCHEN_ORDER);
        pots.add(Pot.empty(dish));
        int next = 0;
        for (Stage stage : STAGES) {
            tasks.addAll(beginning(stage));
            for (; next < ordered.size() && ordered.get(next).stage() == stage; next++) {
                tasks.add(new Making(ordered.get(next)));
            }
        }
    }

    /** What happens at the beginning of a stage, change or no change. */
    private static List<Task> beginning(Stage stage) {
        return switch (stage) {
            case PREPARE -> List.of(new Filling());
            case BROWN -> List.of(new Fire(0));
            case SIMMER -> List.of(new Fire(1));
            case FINISH, SERVE -> List.of();
        };
    }

    private void carryOut() {
        for (int i = 0; i < tasks.size(); i++) {
            pots.add(tasks.get(i).on(pots.get(i), kit));
            noteFactors(i);
        }
    }

    private void noteFactors(int task) {
        if (kit.levels().met().size() > firstAsked.size()) {
            for (String factor : kit.levels().met()) {
                firstAsked.putIfAbsent(factor, task);
            }
        }
    }

    private Pot make(Change change, Pot pot, Kit with) {
        Item item = with.memory().keeps() && TO_ONE_ITEM.contains(change.kind()) ? pot.item(change.of()).orElse(null) : null;
        if (item == null) {
            Optional<String> reason = change.blockedOn(pot);
            note(change, reason, with);
            return reason.isPresent() ? pot : change.applyTo(pot, with);
        }
        Memory.Became known = with.memory().known(item, change, with.levels());
        Memory.Became became = known != null ? known
                : with.memory().keep(item, change, with.levels(), madeAlone(change, pot.alone(item), with.noting()));
        note(change, became.blocked(), with);
        return pot.after(item, became);
    }

    /** What a moved factor blocks is not told: the plan is as it typically is. */
    private void note(Change change, Optional<String> reason, Kit with) {
        if (reason.isPresent() && with == kit) {
            blocked.put(change, reason.get());
        }
    }

    private static Memory.Became madeAlone(Change change, Pot alone, Kit kit) {
        Optional<String> reason = change.blockedOn(alone);
        return Memory.Became.of(reason.isPresent() ? alone : change.applyTo(alone, kit), reason, kit);
    }
}
