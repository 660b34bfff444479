package hobside.food;

/** A published way to reckon energy from what it comes from. The published factors themselves stand with the guides. */
public interface EnergyRule {

    Sum of(Sources grams);

    /** What energy comes from, in grams; carbohydrate is without fibre. */
    record Sources(double protein, double fat, double carbohydrate, double fibre, double alcohol) {}

    /** The same energy in both units, each summed by its own factors, not rounded. */
    record Sum(double kilojoules, double kilocalories) {}
}
