package hobside.food;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What the kitchen knows of exchanges: the book of substitutes and of things to bulk out with. */
public record Substitutes(List<Substitute> swaps, List<Substitute.Bulk> bulk) {

    public static final Substitutes NONE = new Substitutes(List.of(), List.of());

    public Substitutes {
        swaps = List.copyOf(swaps);
        bulk = List.copyOf(bulk);
    }

    public List<Substitute> of(String foodId) {
        return swaps.stream().filter(swap -> swap.pair().food().equals(foodId)).toList();
    }

    public Optional<Substitute> between(String foodId, String instead) {
        return of(foodId).stream().filter(swap -> swap.pair().instead().equals(instead)).findFirst();
    }

    /** What goes into a pot whose foods come from these groups. */
    public List<Substitute.Bulk> bulkWith(Collection<String> groups) {
        return bulk.stream()
                .filter(each -> groups.stream().anyMatch(group -> each.with().stream().anyMatch(group::contains)))
                .toList();
    }

    public Optional<Substitute.Bulk> bulkOf(String foodId) {
        return bulk.stream().filter(each -> each.food().equals(foodId)).findFirst();
    }
}
