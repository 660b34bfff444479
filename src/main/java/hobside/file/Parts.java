package hobside.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which parts of a document can be left out without making a figure of the rest untrue, and what they are called. A change, a step of the
 * method or the words of a cue can: the ledger follows the changes that are there. An ingredient cannot.
 */
enum Parts {

    /** A saved demo. */
    DEMO("dish", Set.of("guide", "plan", "limits", "script", "hall", "note"), Map.of("plan", "changes of the plan", "dish.method", "steps of the method",
            "script.cues", "cues with words of your own", "script.names", "words used here", "hall.tasks", "tasks put by hand")),

    /** A dish in a file of its own. */
    DISH("", Set.of("plan", "note", "story"), Map.of("plan", "changes of the plan", "method", "steps of the method")),

    /** A price list: a price that is not there makes a total "at least", never less. */
    PRICES("none", Set.of("note"), Map.of("prices", "prices")),

    /** A file of foods: each record stands for itself. */
    FOODS("none", Set.of("note"), Map.of("foods", "foods"));

    /** The keys of a dish as they are written, up to its ingredients: when they stand in this order, nothing that counts stands behind. */
    private static final List<String> WRITTEN = List.of("hobside", "name", "story", "serves", "spoons", "moisture", "cookedWeight", "foods", "ingredients");
    private static final List<String> NEEDED = List.of("name", "serves", "spoons", "ingredients");

    private final String dish;
    private final Set<String> members;
    private final Map<String, String> lists;

    Parts(String dish, Set<String> members, Map<String, String> lists) {
        this.dish = dish;
        this.members = members;
        this.lists = lists;
    }

    /** A list under a heading, and no dish. */
    boolean isOfRows() {
        return this == PRICES || this == FOODS;
    }

    /** What the rows of a list are called; empty when it is no list whose rows can be left out. */
    String rows(Salvage.Path list) {
        return lists.getOrDefault(String.join(".", list.steps().stream().map(String::valueOf).toList()), "");
    }

    /** The smallest thing around this place that can be left out. */
    Optional<Salvage.Path> droppable(Salvage.Path fault, Json tree) {
        for (int size = 1; size < fault.size(); size++) {
            boolean item = fault.at(size) instanceof Integer && !rows(fault.first(size)).isEmpty();
            if (item) {
                return Optional.of(fault.first(size + 1)).filter(path -> path.in(tree) != null);
            }
        }
        return member(fault).filter(path -> path.in(tree) != null);
    }

    private Optional<Salvage.Path> member(Salvage.Path fault) {
        if (fault.size() == 0) {
            return Optional.empty();
        }
        String key = String.valueOf(fault.at(0));
        boolean inDish = this == DEMO && key.equals(dish) && fault.size() > 1;
        if (inDish) {
            String inside = String.valueOf(fault.at(1));
            return Optional.of(fault.first(2)).filter(path -> inside.equals("story") || inside.equals("method") || members.contains(inside));
        }
        boolean inParts = this == DEMO && (key.equals("script") || key.equals("hall")) && fault.size() > 1;
        boolean unknown = this == DEMO && !key.equals("hobside") && !key.equals(dish);
        boolean known = members.contains(key) || !rows(fault.first(1)).isEmpty();
        return Optional.of(fault.first(inParts ? 2 : 1)).filter(path -> unknown || known);
    }

    /**
     * Whether all that a figure is made of stands whole before the damage: what was open there must not be the dish's foods or
     * ingredients, and no key that counts may have stood behind them.
     *
     * @param open the keys of what was open where the text broke off
     */
    boolean isSoundBefore(Json.Obj tree, List<String> open) {
        if (isOfRows()) {
            // The heading says the group, the money, whether prices are invented: nothing of that may be missing.
            String rows = lists.keySet().iterator().next();
            return tree.size() > 0 && tree.entries().get(tree.size() - 1).key().equals(rows) && tree.find(rows) instanceof Json.Arr;
        }
        Json.Obj found = this == DISH ? tree : tree.find(dish) instanceof Json.Obj inside ? inside : null;
        List<String> within = this == DISH ? open : open.size() > 1 && open.get(0).equals(dish) ? open.subList(1, open.size()) : List.of();
        boolean inFigures = !within.isEmpty() && !within.get(0).equals("method") && !within.get(0).equals("plan");
        return found != null && !inFigures && isWritten(found);
    }

    private static boolean isWritten(Json.Obj dish) {
        int last = -1;
        for (Json.Entry entry : dish.entries()) {
            int place = WRITTEN.indexOf(entry.key());
            if (place >= 0 && place < last) {
                return false;
            }
            last = place >= 0 ? place : WRITTEN.size();
        }
        boolean weighed = dish.find("moisture") != null || dish.find("cookedWeight") != null;
        return weighed && NEEDED.stream().allMatch(key -> dish.find(key) != null);
    }
}
