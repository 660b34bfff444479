package hobside.stage.order;

/** Statements of which at least one is true in every plan still of interest: learned from something that went wrong. */
final class Clause implements Reason {

    final int[] sides;
    final int[] values;
    /** In how many levels its statements were made false: few is good. */
    final int spread;
    /** When it last had to do with a clash, counted in clashes. */
    int used;
    boolean gone;

    Clause(Atoms atoms, int spread) {
        this.sides = atoms.sides();
        this.values = atoms.values();
        this.spread = spread;
    }

    @Override
    public void because(int side, int value, Atoms out) {
        for (int k = 0; k < sides.length; k++) {
            if (sides[k] != side) {
                out.add(sides[k] ^ 1, 1 - values[k]);
            }
        }
    }

    void swap(int one, int other) {
        int side = sides[one];
        int value = values[one];
        sides[one] = sides[other];
        values[one] = values[other];
        sides[other] = side;
        values[other] = value;
    }
}
