package hobside.stage.order;

import java.util.Arrays;

/** Some statements, each saying that one side of a number is at least so much; see {@link Trail}. */
final class Atoms {

    private int[] sides = new int[16];
    private int[] values = new int[16];
    private int size;

    void clear() {
        size = 0;
    }

    Atoms add(int side, int value) {
        if (size == sides.length) {
            sides = Arrays.copyOf(sides, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        sides[size] = side;
        values[size] = value;
        size++;
        return this;
    }

    int size() {
        return size;
    }

    int side(int k) {
        return sides[k];
    }

    int value(int k) {
        return values[k];
    }

    void swap(int one, int other) {
        int side = sides[one];
        int value = values[one];
        sides[one] = sides[other];
        values[one] = values[other];
        sides[other] = side;
        values[other] = value;
    }

    int[] sides() {
        return Arrays.copyOf(sides, size);
    }

    int[] values() {
        return Arrays.copyOf(values, size);
    }
}
