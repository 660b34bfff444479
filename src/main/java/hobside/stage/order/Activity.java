package hobside.stage.order;

/**
 * Which numbers have had to do with clashes of late.
 *
 * <p>Variable state independent decaying sum: M. Moskewicz and others, "Chaff", Design Automation Conference 2001, 530-535.
 */
final class Activity {

    private static final double MUCH = 1e100;
    private static final double FADING = 1 / 0.95;

    private final double[] of;
    private double step = 1;

    Activity(int numbers) {
        this.of = new double[numbers];
    }

    double of(int number) {
        return of[number];
    }

    void bump(int number) {
        of[number] += step;
    }

    /** Makes what comes count more than what was. */
    void fade() {
        step *= FADING;
        if (step > MUCH) {
            for (int k = 0; k < of.length; k++) {
                of[k] /= MUCH;
            }
            step /= MUCH;
        }
    }
}
