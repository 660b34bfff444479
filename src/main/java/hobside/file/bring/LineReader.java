package hobside.file.bring;

import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.file.Limits;
import hobside.file.Nearest;
import hobside.food.Food;
import hobside.food.Measure;
import hobside.food.Weigher;
import hobside.measure.Amount;
import hobside.measure.SpoonSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads an ingredient line: amount, unit, food and what is done to it first. What it is not sure of it says. */
final class LineReader {

    /** Words around the name of a food that say how it is got ready, or nothing at all. */
    private static final Set<String> READY = Set.of("fresh", "freshly", "finely", "roughly", "coarsely", "thinly", "thickly", "chopped", "diced", "sliced",
            "minced", "grated", "crushed", "peeled", "cubed", "shredded", "melted", "softened", "washed", "rinsed", "drained", "torn", "trimmed", "halved",
            "quartered", "ripe", "cold", "warm", "hot", "boiling", "beaten", "packed", "heaped", "level", "good", "quality", "large", "medium", "small",
            "whole", "the", "some", "and", "optional", "deseeded", "seeded", "mashed", "toasted", "picked", "cleaned");
    private static final List<String> SIZES = List.of("medium", "large", "piece", "whole", "small");
    static final String FRYING = "for deep-frying";

    private final FoodNamed foods;
    private final SpoonSet spoons;

    LineReader(FoodNamed foods, SpoonSet spoons) {
        this.foods = foods;
        this.spoons = spoons;
    }

    /** What a line is taken for. */
    private record Meant(Optional<Food> food, List<Food> candidates, boolean sure, String preparation, String unit, String dropped) {

        static Meant surely(Food food, String preparation, String unit) {
            return new Meant(Optional.of(food), List.of(food), true, preparation, unit, "");
        }
    }

    RecipeDraft.Line read(String written) {
        LineAmount amount = LineAmount.of(written);
        Meant meant = meant(amount.rest(), amount.tinned());
        Optional<Amount> howMuch = amount.amount().map(known -> meant.unit().isEmpty() || !known.unit().isEmpty() ? known : Amount.of(known.count(), meant.unit()));
        Preparation preparation = preparation(meant.preparation());
        if (meant.food().isEmpty()) {
            return new RecipeDraft.Line(written, RecipeDraft.Reading.NOT_UNDERSTOOD, Optional.empty(), howMuch, Optional.empty(), preparation, List.of(),
                    "nothing on the shelf fits these words");
        }
        Food food = meant.sure() ? meant.food().get() : likeliest(meant.candidates(), howMuch);
        Optional<Amount> usable = howMuch.map(known -> countable(known, food));
        Optional<Quantity> quantity = usable.flatMap(known -> Quantity.of(known, food, spoons)).filter(known -> known.asBought().value() <= Limits.WEIGHT);
        List<String> why = new ArrayList<>();
        if (quantity.isEmpty()) {
            why.add(unweighed(howMuch, food));
        } else if (!usable.equals(howMuch)) {
            why.add("a piece is taken as " + usable.get().unit());
        }
        if (!amount.guess().isEmpty()) {
            why.add(amount.guess());
        }
        if (!meant.sure()) {
            why.add("taken for " + food.name() + (meant.dropped().isEmpty() ? "" : ", without \"" + meant.dropped() + "\"") + others(meant.candidates(), food));
        }
        RecipeDraft.Reading reading = quantity.isEmpty() ? RecipeDraft.Reading.NOT_UNDERSTOOD
                : why.isEmpty() ? RecipeDraft.Reading.UNDERSTOOD : RecipeDraft.Reading.GUESSED;
        return new RecipeDraft.Line(written, reading, meant.food(), usable, quantity, preparation, meant.candidates(), String.join("; ", why));
    }

    /** The first candidate that can be weighed in the unit of the line: who counts tins means something in tins. */
    private Food likeliest(List<Food> candidates, Optional<Amount> amount) {
        return candidates.stream().filter(food -> amount.flatMap(known -> Quantity.of(countable(known, food), food, spoons)).isPresent())
                .findFirst().orElse(candidates.get(0));
    }

    private static String others(List<Food> candidates, Food taken) {
        List<String> names = candidates.stream().filter(food -> food != taken).map(Food::name).toList();
        return names.isEmpty() ? "" : "; it could be " + String.join(" or ", names);
    }

    /** Why something cannot be weighed, in a sentence. */
    static String unweighed(Optional<Amount> amount, Food food) {
        String units = Nearest.listed(new Weigher(SpoonSet.METRIC).unitsFor(food));
        return amount.isEmpty() ? "no amount of " + food.name() : "the shelf cannot weigh \"" + amount.get().written() + "\" of " + food.name() + "; it knows " + units;
    }

    /** A bare count takes the first size of the food that there is: 2 onions are 2 medium ones. */
    private Amount countable(Amount amount, Food food) {
        if (!amount.unit().isEmpty() || Quantity.of(amount, food, spoons).isPresent()) {
            return amount;
        }
        for (String size : SIZES) {
            for (Measure measure : food.handling().measures()) {
                if (measure.name().equals(size)) {
                    return Amount.of(amount.count(), size);
                }
            }
        }
        String own = FoodNamed.plain(food.name()).replaceAll(".* ", "");
        return food.handling().measures().stream().map(Measure::name).filter(name -> name.equals(own)).findFirst()
                .map(name -> Amount.of(amount.count(), name)).orElse(amount);
    }

    private static Preparation preparation(String words) {
        boolean frying = words.contains(FRYING);
        String kept = words.replace(FRYING, "").replaceAll("^[\\s,;]+|[\\s,;]+$", "");
        return new Preparation(kept.length() <= Limits.WORDS ? kept : kept.substring(0, Limits.WORDS).strip(), List.of(), frying);
    }

    /** First the longest beginning up to a comma that is the name of a food; then without words that only get it ready; then the search. */
    private Meant meant(String rest, boolean tinned) {
        String text = rest.replaceAll("\\s*\\(([^)]*)\\)", ", $1").replaceAll("\\s+-\\s+", ", ").strip();
        List<String> pieces = List.of(text.split("\\s*[,;]\\s*"));
        for (int count = pieces.size(); count > 0; count--) {
            Optional<Food> food = foods.exactly(String.join(", ", pieces.subList(0, count)));
            if (food.isPresent()) {
                return Meant.surely(food.get(), String.join(", ", pieces.subList(count, pieces.size())), "");
            }
        }
        List<String> words = new ArrayList<>(List.of(pieces.get(0).split("\\s+")));
        List<String> ready = new ArrayList<>();
        strip(words, ready);
        String preparation = joined(ready, pieces.subList(1, pieces.size()));
        Optional<Food> food = tinned ? Optional.empty() : foods.exactly(String.join(" ", words));
        return food.map(known -> Meant.surely(known, preparation, "")).or(() -> unitBehind(words, preparation)).orElseGet(() -> near(words, preparation, tinned));
    }

    private static String joined(List<String> ready, List<String> pieces) {
        String first = String.join(" ", ready);
        String others = String.join(", ", pieces);
        return first.isEmpty() || others.isEmpty() ? first + others : first + ", " + others;
    }

    private static void strip(List<String> words, List<String> ready) {
        while (words.size() > 1 && READY.contains(words.get(0).toLowerCase(Locale.ROOT))) {
            ready.add(words.remove(0));
        }
        int from = ready.size();
        while (words.size() > 1 && READY.contains(words.get(words.size() - 1).toLowerCase(Locale.ROOT))) {
            ready.add(from, words.remove(words.size() - 1));
        }
    }

    /** "3 garlic cloves": the unit stands behind the food. */
    private Optional<Meant> unitBehind(List<String> words, String preparation) {
        if (words.size() < 2) {
            return Optional.empty();
        }
        String last = words.get(words.size() - 1);
        Optional<Food> food = foods.exactly(String.join(" ", words.subList(0, words.size() - 1)));
        return food.flatMap(known -> LineAmount.unitOf(last).map(unit -> Meant.surely(known, preparation, unit)));
    }

    /**
     * All words with what is said behind them ("chickpeas, tinned"), then the words alone, then fewer: first without those in
     * front, which describe, then without those behind; a food that bears the rest as its name comes before one that only fits.
     * Slips of the finger are forgiven only while all words are there.
     */
    private Meant near(List<String> words, String preparation, boolean tinned) {
        String all = String.join(" ", words);
        for (String tried : List.of(tinned ? all + " tinned" : all + " " + preparation, all + " " + preparation, all)) {
            List<Food> found = foods.near(tried);
            if (!found.isEmpty()) {
                return new Meant(Optional.of(found.get(0)), found, false, preparation, "", "");
            }
        }
        return fewer(words, preparation, foods::exactlyListed).or(() -> fewer(words, preparation, this::sharing))
                .orElseGet(() -> new Meant(Optional.empty(), List.of(), false, preparation, "", ""));
    }

    private List<Food> sharing(String words) {
        return foods.near(words).stream().filter(food -> FoodNamed.shares(food, words)).toList();
    }

    /** The longest run of the words with which something is found. */
    private static Optional<Meant> fewer(List<String> words, String preparation, Function<String, List<Food>> search) {
        for (int gone = 1; gone < words.size(); gone++) {
            for (int front = gone; front >= 0; front--) {
                List<Food> found = search.apply(String.join(" ", words.subList(front, words.size() - (gone - front))));
                if (!found.isEmpty()) {
                    return Optional.of(new Meant(Optional.of(found.get(0)), found, false, preparation, "", dropped(words, front, gone - front)));
                }
            }
        }
        return Optional.empty();
    }

    private static String dropped(List<String> words, int front, int back) {
        List<String> dropped = new ArrayList<>(words.subList(0, front));
        dropped.addAll(words.subList(words.size() - back, words.size()));
        return String.join(" ", dropped);
    }
}
