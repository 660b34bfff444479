package hobside.food;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Two price lists, food by food. Sums of different money are shown beside each other and never subtracted. */
public record PriceComparison(PriceList one, PriceList other) {

    /** One food with its pack on either list; on at least one of the two there is one. */
    public record Row(String foodId, Optional<PriceList.Pack> one, Optional<PriceList.Pack> other) {

        /** How much dearer the other list is by weight, as a share: 0.25 for a quarter dearer. Empty when a price is missing or nothing. */
        OptionalDouble dearer() {
            if (one.isEmpty() || other.isEmpty() || one.get().price().minor() == 0) {
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(perGram(other.get()) / perGram(one.get()) - 1);
        }

        private static double perGram(PriceList.Pack pack) {
            return pack.price().minor() / pack.asBought().value();
        }
    }

    /** Foods of the first list in its order, then those of the other list alone. */
    public List<Row> rows() {
        Set<String> ids = new LinkedHashSet<>();
        one.packs().forEach(pack -> ids.add(pack.foodId()));
        other.packs().forEach(pack -> ids.add(pack.foodId()));
        List<Row> rows = new ArrayList<>();
        for (String id : ids) {
            rows.add(new Row(id, one.packOf(id), other.packOf(id)));
        }
        return rows;
    }

    public boolean isSameMoney() {
        return one.currency().code().equals(other.currency().code()) && one.currency().minorDigits() == other.currency().minorDigits();
    }

    /** How much dearer a food is on the other list; empty when that cannot be said. */
    public OptionalDouble dearer(Row row) {
        return isSameMoney() ? row.dearer() : OptionalDouble.empty();
    }
}
