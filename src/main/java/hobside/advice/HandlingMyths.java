package hobside.advice;

import hobside.dish.Add;
import hobside.dish.Change;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Ingredient;
import hobside.dish.Item;
import hobside.dish.PourOff;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.Taken;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.food.Part;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.measure.Amount;
import hobside.measure.Millilitres;
import hobside.measure.SpoonSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Myths about doing something with what is in the pot already, or putting more into it. */
final class HandlingMyths {

    /** A pourable food with at least this much saturated fat per 100 g is one that people thin. */
    private static final double RICH = 2.0;

    private static final List<String> VEGETABLES = List.of("carrot", "cabbage", "onion", "pumpkin");

    /** Grams of more vegetables for each serve: about half a helping (our own choice). */
    private static final double HELPING = 60;

    private static final Set<CookingMethod> IN_A_PAN = Set.of(CookingMethod.PAN_BROWNED, CookingMethod.PAN_FRIED);

    private final Trial trial;
    private final MythWords words;
    private final Pantry pantry;

    HandlingMyths(Trial trial, MythWords words, Pantry pantry) {
        this.trial = trial;
        this.words = words;
        this.pantry = pantry;
    }

    void of(Item item, List<Myth> myths) {
        water(item).ifPresent(myths::add);
        rinsing(item).ifPresent(myths::add);
        pouring(item).ifPresent(myths::add);
    }

    void ofPot(List<Myth> myths) {
        skimming().ifPresent(myths::add);
        vegetables().ifPresent(myths::add);
    }

    /** A third of its own volume of water, and every drop of the mixture goes in. */
    private Optional<Myth> water(Item item) {
        double volume = Dilute.volume(item);
        boolean pours = item.food().handling().density().isPresent() && item.food().per100g(Nutrient.WATER) > 40;
        Dilute all = new Dilute(item.id(), Millilitres.of(volume / 3), Millilitres.of(volume + volume / 3));
        return pours && item.food().per100g(Nutrient.FASAT) >= RICH ? tried("water-all", all, Map.of("food", words.the(item))) : Optional.empty();
    }

    private Optional<Myth> tried(String key, Change change, Map<String, String> gaps) {
        return trial.isBlocked(change) ? Optional.empty() : told(key, change, gaps);
    }

    private Optional<Myth> told(String key, Change change, Map<String, String> gaps) {
        Comparison effect = trial.effect(change);
        return trial.isThere(change) || !Trial.isLittle(effect) ? Optional.empty() : Optional.of(words.of(key, change, effect, gaps));
    }

    private Optional<Myth> rinsing(Item item) {
        if (item.food().part(Part.Kind.LIQUID).isEmpty()) {
            return Optional.empty();
        }
        Rinse rinse = new Rinse(item.id());
        double sodium = trial.effect(rinse).saved(Nutrient.NA, Basis.SERVE).typical();
        return tried("rinse-fat", rinse, Map.of("food", words.the(item), "salt", words.milligrams(sodium)));
    }

    /** Told where little has run out of the meat, be there enough to tip the pan or not. */
    private Optional<Myth> pouring(Item item) {
        boolean browned = !item.cook().isEmpty() && IN_A_PAN.contains(item.cook().get(0)) && item.food().handling().melts().isPresent();
        double each = trial.pot().serveSize() / trial.pot().serves();
        boolean dry = item.ran().contents().known(Nutrient.FASAT) * each < Trial.LITTLE;
        return browned && dry ? told("pour-lean", new PourOff(item.id(), Taken.TYPICAL), Map.of("food", words.the(item))) : Optional.empty();
    }

    private Optional<Myth> skimming() {
        double free = Skim.freeFat(trial.pot());
        Map<String, String> gaps = Map.of("free", words.coarse(free));
        return trial.pot().dish().simmers() ? told("skim-lean", new Skim(Taken.TYPICAL), gaps) : Optional.empty();
    }

    private Optional<Myth> vegetables() {
        Set<String> inside = trial.pot().items().stream().map(item -> item.food().id()).collect(Collectors.toSet());
        return VEGETABLES.stream().filter(id -> !inside.contains(id)).map(pantry::food).flatMap(Optional::stream).findFirst().flatMap(this::adding);
    }

    private Optional<Myth> adding(Food food) {
        Dish dish = trial.pot().dish();
        double grams = Math.max(100, Math.round(HELPING * trial.pot().serves() / 100) * 100);
        Set<String> taken = trial.plan().changes().stream().map(row -> row.change().of()).collect(Collectors.toSet());
        return Quantity.of(Amount.grams(grams), food, SpoonSet.METRIC)
                .map(quantity -> new Add(new Ingredient(dish.freshId(food.id(), taken), food, quantity, Preparation.NONE)))
                .flatMap(add -> tried("vegetables", add, Map.of("other", words.bare(food), "amount", words.wholeGrams(grams))));
    }
}
