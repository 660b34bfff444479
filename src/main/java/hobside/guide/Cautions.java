package hobside.guide;

import hobside.dish.Dish;
import hobside.dish.Plan;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** All cautions the kitchen knows, and which of them a demonstration calls for. */
public final class Cautions {

    /** For a book without cautions, as in a test of something else. */
    public static final Cautions NONE = new Cautions(List.of());

    private final List<Caution> all;

    private Cautions(List<Caution> all) {
        this.all = all;
    }

    /** Refuses two cautions of one key, and a set in which nothing is said at every demonstration. */
    public static Cautions from(List<Caution> cautions) {
        List<Caution> all = Published.distinct(cautions, Caution::published);
        if (all.stream().noneMatch(Caution::isAlways)) {
            throw new IllegalArgumentException("no caution is said always");
        }
        return new Cautions(all);
    }

    public List<Caution> all() {
        return all;
    }

    /**
     * A caution that is called for.
     *
     * @param said the words to say, with this dish's allergens filled in
     * @param because the foods, changes or allergens that call for it
     */
    public record Due(Caution caution, String said, List<String> because) {}

    /** What has to be said for a dish cooked by a plan, in the order of the stages, each once. Swapped-in foods count. */
    public List<Due> of(Dish dish, Plan plan) {
        Setting setting = Setting.of(dish, plan);
        return all.stream()
                .flatMap(caution -> due(caution, setting).stream())
                .sorted(Comparator.comparing(due -> due.caution().stage()))
                .toList();
    }

    private static List<Due> due(Caution caution, Setting setting) {
        List<String> because = caution.when().stream().flatMap(trigger -> setting.reasons(trigger).stream()).distinct().toList();
        return because.isEmpty() ? List.of() : List.of(new Due(caution, filled(caution.said(), setting.allergens()), because));
    }

    private static String filled(String said, Allergens allergens) {
        return said.replace("{allergens}", Allergens.listed(allergens.after())).replace("{added}", Allergens.listed(allergens.added()));
    }

    /** Caution keys of foods on the table for which no words are known: to be shown, never dropped in silence. */
    public Set<String> withoutWords(Dish dish, Plan plan) {
        Set<String> keys = new TreeSet<>(Setting.of(dish, plan).cautionKeys());
        all.stream().flatMap(Cautions::foodKeys).forEach(keys::remove);
        return keys;
    }

    private static Stream<String> foodKeys(Caution caution) {
        return caution.when().stream().filter(trigger -> trigger.kind() == Trigger.Kind.FOOD).map(Trigger::word);
    }
}
