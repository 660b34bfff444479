package hobside.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Draws by a seed: the same seed, the same draws (the generator of {@code java.util.Random} is fixed by its description). */
final class Dice {

    private final Random random;

    private Dice(long seed) {
        this.random = new Random(seed);
    }

    /** Of the key of an exercise, so that two exercises of one seed do not draw alike. */
    static Dice of(Label label) {
        long mixed = label.origin().seed();
        for (char each : label.key().toCharArray()) {
            mixed = mixed * 1_000_003L + each;
        }
        return new Dice(mixed);
    }

    int below(int most) {
        return random.nextInt(most);
    }

    <T> T one(List<T> of) {
        return of.get(below(of.size()));
    }

    <T> List<T> shuffled(List<T> of) {
        List<T> left = new ArrayList<>(of);
        List<T> drawn = new ArrayList<>();
        while (!left.isEmpty()) {
            drawn.add(left.remove(below(left.size())));
        }
        return drawn;
    }
}
