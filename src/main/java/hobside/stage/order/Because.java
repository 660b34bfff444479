package hobside.stage.order;

/** A reason written down when it was found. */
final class Because implements Reason {

    private final int[] sides;
    private final int[] values;

    Because(Atoms atoms) {
        this.sides = atoms.sides();
        this.values = atoms.values();
    }

    @Override
    public void because(int side, int value, Atoms out) {
        for (int k = 0; k < sides.length; k++) {
            out.add(sides[k], values[k]);
        }
    }
}
