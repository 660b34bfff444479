package hobside.dish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The changes in the order told, each on or off, each with a note of the presenter's. One change of a slot at a time. */
public record Plan(List<Planned> changes) {

    public static final Plan EMPTY = new Plan(List.of());

    /** One line of the plan. */
    public record Planned(Change change, boolean on, String note) {

        public static Planned of(Change change) {
            return new Planned(change, true, "");
        }

        public Planned toggled() {
            return new Planned(change, !on, note);
        }

        public Planned withNote(String other) {
            return new Planned(change, on, other);
        }

        public Planned with(Change other) {
            return new Planned(other, on, note);
        }
    }

    public Plan {
        changes = List.copyOf(changes);
    }

    public static Plan of(Change... changes) {
        Plan plan = EMPTY;
        for (Change change : changes) {
            plan = plan.with(change);
        }
        return plan;
    }

    public int size() {
        return changes.size();
    }

    /** The changes that are switched on, in the order told. */
    public List<Change> told() {
        List<Change> told = new ArrayList<>();
        for (Planned each : changes) {
            if (each.on()) {
                told.add(each.change());
            }
        }
        return List.copyOf(told);
    }

    /** The plan with a change at the end, or in place of the one that holds its slot. */
    public Plan with(Change change) {
        List<Planned> others = new ArrayList<>(changes);
        Optional<Integer> at = slot(change.slot());
        if (at.isPresent()) {
            others.set(at.get(), others.get(at.get()).with(change));
        } else {
            others.add(Planned.of(change));
        }
        return new Plan(others);
    }

    /** Where in the plan a slot is held. */
    public Optional<Integer> slot(String slot) {
        for (int i = 0; i < changes.size(); i++) {
            if (changes.get(i).change().slot().equals(slot)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    public Plan without(int index) {
        List<Planned> others = new ArrayList<>(changes);
        others.remove(index);
        return new Plan(others);
    }

    public Plan edited(int index, UnaryOperator<Planned> edit) {
        List<Planned> others = new ArrayList<>(changes);
        others.set(index, edit.apply(others.get(index)));
        return new Plan(others);
    }

    /** The plan with one line moved; it stays where it is when there is no room that way. */
    public Plan moved(int index, int by) {
        int to = index + by;
        if (to < 0 || to >= changes.size()) {
            return this;
        }
        List<Planned> others = new ArrayList<>(changes);
        others.add(to, others.remove(index));
        return new Plan(others);
    }

    /** The plan without any change of an ingredient that is taken out of the dish. */
    public Plan withoutChangesOf(String id) {
        return new Plan(changes.stream().filter(each -> !each.change().of().equals(id)).toList());
    }
}
