package hobside.practice.rubric;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.talk.Stand;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that people may call the foods of a change: as its cook calls it, by its record in the language of the talk and in English, by
 * its other names, its gloss, and by a single word of these where no other food of the dish has that word.
 */
final class Naming {

    private static final Set<String> SMALL = Set.of("the", "of", "with", "and", "in", "its", "el", "la", "los", "las", "de", "del", "con", "en", "sin", "y", "more",
            "tin", "tinned", "canned", "can", "lata", "packet", "heavy", "light", "skim", "skimmed", "non", "fat-free", "per", "cent", "for", "para", "about",
            "kind", "reduced", "raw", "lean", "fresh", "whole", "liquid", "otra", "mas", "res", "fat", "saturated");

    private final Stand stand;
    private final Subject.Told told;

    private Naming(Stand stand, Subject.Told told) {
        this.stand = stand;
        this.told = told;
    }

    static Map<String, List<String>> of(Stand stand, Subject.Told told) {
        Naming naming = new Naming(stand, told);
        String id = told.change().of();
        Ingredient ingredient = id.isEmpty() ? null : Names.ingredient(stand.demo().dish(), stand.demo().plan(), id).orElse(null);
        List<String> old = ingredient == null ? List.of() : naming.all(naming.called(ingredient), ingredient);
        if (told.change() instanceof Swap swap) {
            return Map.of("food", old, "new", naming.all(naming.called(swap.food()), null));
        }
        boolean brings = told.change() instanceof Add || told.change() instanceof BulkOut;
        return Map.of("food", old, "new", brings ? old : List.of());
    }

    private List<String> called(Ingredient ingredient) {
        List<String> names = called(ingredient.food());
        names.add(0, Names.brief(ingredient));
        names.add(0, told.section().figures().getOrDefault(ingredient.id(), ""));
        names.add(stand.demo().script().glosses().getOrDefault(ingredient.id(), ""));
        return names;
    }

    private List<String> called(Food food) {
        List<String> names = new ArrayList<>();
        names.add(Names.brief(food.name()));
        stand.words().find("foods." + food.id()).map(Names::brief).ifPresent(names::add);
        names.addAll(food.label().also());
        return names;
    }

    private List<String> all(List<String> names, Ingredient of) {
        Set<String> taken = others(of);
        Set<String> all = new LinkedHashSet<>();
        for (String name : names) {
            List<String> words = words(name);
            if (words.size() > 1) {
                all.add(String.join(" ", words));
            }
            boolean single = words.size() == 1;
            for (String word : words) {
                if (word.length() > 2 && (single || !taken.contains(bare(word)) && !SMALL.contains(word))) {
                    all.addAll(List.of(word, bare(word), bare(word) + "s"));
                }
            }
        }
        return List.copyOf(all);
    }

    private static String bare(String word) {
        return word.endsWith("s") && word.length() > 3 ? word.substring(0, word.length() - 1) : word;
    }

    /** Words of the names of the other foods of the dish: they tell nothing by themselves. */
    private Set<String> others(Ingredient of) {
        Set<String> others = new LinkedHashSet<>();
        for (Ingredient each : stand.demo().dish().ingredients()) {
            if (of == null ? !each.id().equals(told.change().of()) : !each.id().equals(of.id()) && !each.food().id().equals(of.food().id())) {
                List<String> names = new ArrayList<>(called(each.food()));
                names.add(told.section().figures().getOrDefault(each.id(), each.id()));
                names.subList(0, Math.min(2, names.size())).forEach(name -> words(name).forEach(word -> others.add(bare(word))));
                words(names.get(names.size() - 1)).forEach(word -> others.add(bare(word)));
            }
        }
        return others;
    }

    private static List<String> words(String name) {
        List<String> words = new ArrayList<>(Text.of(name).tokens().stream().map(Token::word).toList());
        while (!words.isEmpty() && Set.of("the", "el", "la", "los", "las", "more", "mas").contains(words.get(0))) {
            words.remove(0);
        }
        return words;
    }
}
