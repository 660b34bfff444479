package hobside.measure;

/** Grams per millilitre of something that is poured, greater than 0 and at most 5 (nothing eaten is heavier). */
public record Density(double gramsPerMillilitre) {

    public Density {
        if (!(gramsPerMillilitre > 0 && gramsPerMillilitre <= 5)) {
            throw new IllegalArgumentException("not the density of a food: " + gramsPerMillilitre);
        }
    }

    public static Density of(double gramsPerMillilitre) {
        return new Density(gramsPerMillilitre);
    }

    /** 240 g coconut cream fill 236.588 mL: a density of 1.014, so 250 mL of it weigh 253.6 g. */
    public Grams times(Millilitres volume) {
        return Grams.of(gramsPerMillilitre * volume.value());
    }
}
