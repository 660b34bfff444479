package hobside.food;

import java.util.OptionalDouble;

/**
 * What a pack costs for a kilogram as bought, for a litre where it is sold by volume, and for 100 g of what is eaten; minor units
 * of money, not rounded. Worked figure: short ribs at 14.80 a kg with an edible share of 0.73 cost 2.03 for 100 g eaten.
 */
public record UnitPrice(double kilogram, OptionalDouble litre, double hundredEaten) {

    private static final double MILLILITRES = 1000;

    public static UnitPrice of(PriceList.Pack pack, Food food) {
        double perGram = pack.price().minor() / pack.asBought().value();
        return new UnitPrice(perGram * 1000, litre(pack), perGram * 100 / food.handling().edible());
    }

    private static OptionalDouble litre(PriceList.Pack pack) {
        double count = pack.size().count();
        return switch (pack.size().unit()) {
            case "l" -> OptionalDouble.of(pack.price().minor() / count);
            case "ml" -> OptionalDouble.of(pack.price().minor() * MILLILITRES / count);
            default -> OptionalDouble.empty();
        };
    }
}
