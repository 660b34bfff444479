package hobside.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrontTest {

    private static State state(Random random, int holds) {
        return new State(random.longs(2, 0, 5).toArray(), random.longs(holds, 0, 6).toArray(), null, Option.NOTHING);
    }

    /** As good by its key and holding no more, of each sum: worked out one by one, apart from the stairs that are tested. */
    private static boolean outdoes(State one, State other) {
        boolean less = one.key()[0] < other.key()[0] || one.key()[0] == other.key()[0] && one.key()[1] <= other.key()[1];
        for (int i = 0; i < one.holds().length; i++) {
            less &= one.holds()[i] <= other.holds()[i];
        }
        return less;
    }

    private static String figures(State state) {
        return Arrays.toString(state.key()) + Arrays.toString(state.holds());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void what_is_left_is_outdone_by_none_and_all_else_is_outdone(int holds) {
        for (int seed = 0; seed < 25; seed++) {
            Random random = new Random(seed);
            List<State> all = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                all.add(state(random, holds));
            }
            List<State> left = Front.of(all);
            Set<String> expected = new HashSet<>();
            all.stream().filter(each -> all.stream().noneMatch(other -> outdoes(other, each) && !outdoes(each, other))).forEach(each -> expected.add(figures(each)));
            assertEquals(expected, new HashSet<>(left.stream().map(FrontTest::figures).toList()), "seed " + seed);
            assertEquals(expected.size(), left.size(), "one of those that are the same");
            for (int i = 1; i < left.size(); i++) {
                assertTrue(State.compare(left.get(i - 1).key(), left.get(i).key()) <= 0, "the best first");
            }
        }
    }
}
