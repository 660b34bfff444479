package hobside.talk;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Item;
import hobside.dish.Swap;
import hobside.food.Nutrient;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The questions that an audience is likely to ask about this dish and this plan, the most likely first, with true answers. */
final class Questions {

    /** So many are written out; the others can still be looked up. */
    static final int ASKED = 3;

    /** What an audience is likely to ask, and the figure that its answer needs. */
    private record Likely(String key, Map<String, String> gaps) {}

    private final Stand stand;
    private final Called called;
    private final Sayings sayings;

    Questions(Stand stand, Called called) {
        this.stand = stand;
        this.called = called;
        this.sayings = new Sayings(stand.words());
    }

    /** All that fit this demo: question and answer in turn. */
    List<Cue> all() {
        List<Cue> cues = new ArrayList<>();
        for (Likely likely : likely()) {
            cues.add(Cue.of("questions:" + likely.key() + "/ask", Cue.Kind.ASK, filled(likely, ".ask")).may());
            cues.add(Cue.of("questions:" + likely.key() + "/answer", Cue.Kind.SAY, filled(likely, ".answer")).may());
        }
        return cues;
    }

    private String filled(Likely likely, String part) {
        String raw = stand.words().find("questions." + likely.key() + part)
                .orElseThrow(() -> new IllegalArgumentException("no words for the question " + likely.key()));
        return stand.words().filled(raw, gap -> Optional.ofNullable(likely.gaps().get(gap)));
    }

    private List<Likely> likely() {
        List<Likely> list = new ArrayList<>();
        when(has(ChangeKind.DILUTE), "water", list);
        richest(Questions::isTropical).ifPresent(item -> list.add(new Likely("coconut", saturated(item))));
        when(richest(Questions::isTropical).isPresent(), "light", list);
        when(has(ChangeKind.POUR_OFF), "drained", list);
        when(has(ChangeKind.TRIM), "trimmed", list);
        when(swapsToOil(), "oil", list);
        saltier().ifPresent(list::add);
        when(has(ChangeKind.MORE_PEOPLE) || has(ChangeKind.BULK_OUT) || has(ChangeKind.SMALLER_SERVE), "sharing", list);
        richest(Questions::isDairyFat).ifPresent(item -> list.add(new Likely("cheese", saturated(item))));
        when(has(ChangeKind.POUR_OFF) || has(ChangeKind.SKIM), "dripping", list);
        when(true, "taste", list);
        list.add(new Likely("cost", Map.of("all-cost", sayings.cost(stand.ledger().whole()).replace("{money}", "{all-money}"))));
        when(true, "heart", list);
        when(true, "usual", list);
        return list;
    }

    private static void when(boolean so, String key, List<Likely> list) {
        if (so) {
            list.add(new Likely(key, Map.of()));
        }
    }

    private boolean has(ChangeKind kind) {
        return changes().stream().anyMatch(change -> change.kind() == kind);
    }

    private List<Change> changes() {
        return stand.demo().plan().told();
    }

    private boolean swapsToOil() {
        return changes().stream().anyMatch(change -> change instanceof Swap swap && swap.food().id().endsWith("-oil"));
    }

    private Optional<Likely> saltier() {
        double more = -Figures.salt(stand.ledger().whole()).typical();
        return more < 0.1 ? Optional.empty() : Optional.of(new Likely("salt", Map.of("figure", "{all-salt}")));
    }

    /** The food of this sort that brings the most saturated fat into the pot as it is usually cooked. */
    private Optional<Item> richest(Predicate<Item> sort) {
        return stand.pots().before().items().stream().filter(sort).filter(item -> item.food().composition().of(Nutrient.FASAT).isPresent())
                .max(Comparator.comparingDouble(item -> item.inDish().contents().known(Nutrient.FASAT)));
    }

    private Map<String, String> saturated(Item item) {
        double grams = item.food().composition().of(Nutrient.FASAT).getAsDouble();
        Speech speech = Speech.in(stand.words());
        return Map.of("food", called.the(item.food()), "figure", speech.about(speech.number((double) Math.round(grams))));
    }

    /** Plant fats that are mostly saturated (USDA SR26 and PMC6860741, Table 2). */
    private static boolean isTropical(Item item) {
        Set<String> names = Set.of("coconut-oil", "coconut-cream", "coconut-cream-tinned", "coconut-milk", "coconut-milk-tinned", "palm-oil", "palm-kernel-oil",
                "creamed-coconut", "coconut-desiccated");
        return names.contains(item.food().id()) || item.food().id().startsWith("coconut-") && mostlySaturated(item);
    }

    private static boolean isDairyFat(Item item) {
        return item.food().handling().warnings().allergens().contains("milk") && item.food().composition().of(Nutrient.FASAT).orElse(0) >= 10;
    }

    private static boolean mostlySaturated(Item item) {
        double fat = item.food().composition().of(Nutrient.FAT).orElse(0);
        return fat >= 10 && item.food().composition().of(Nutrient.FASAT).orElse(0) > fat / 2;
    }
}
