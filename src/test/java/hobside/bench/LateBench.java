package hobside.bench;

import hobside.stage.run.CatchUp;
import hobside.stage.run.CatchUp.Remaining;
import hobside.stage.run.CatchUp.Wait;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** How long it takes to find what to drop when a talk of 80 cues runs late, without and with pots that must be ready. Target: 5 ms warm. */
public final class LateBench {

    private static final int RUNS = 2_000;
    private static final int CUES = 80;

    private LateBench() {}

    public static void main(String[] args) {
        for (int pots : new int[] {0, 1, 2, 4, 6}) {
            measure(pots, RUNS);
            long[] times = measure(pots, RUNS);
            Arrays.sort(times);
            System.out.println(String.format(Locale.ROOT, "%d pots: median %.2f ms, 99 of 100 within %.2f ms, slowest %.2f ms", pots, times[RUNS / 2] / 1e6,
                    times[RUNS * 99 / 100] / 1e6, times[RUNS - 1] / 1e6));
        }
    }

    private static long[] measure(int pots, int runs) {
        long[] times = new long[runs];
        for (int i = 0; i < runs; i++) {
            Random random = new Random(i);
            List<Remaining> remaining = talk(pots, random);
            int all = CatchUp.of(remaining, Integer.MAX_VALUE / 2).ends();
            int left = all - random.nextInt(1 + all / 3);
            long from = System.nanoTime();
            CatchUp.of(remaining, left);
            times[i] = System.nanoTime() - from;
        }
        return times;
    }

    /** Half of the cues may be dropped; a pot is set going at a must of the first half and lifted at one of the second. */
    private static List<Remaining> talk(int pots, Random random) {
        List<List<Wait>> waits = new ArrayList<>();
        for (int i = 0; i < CUES; i++) {
            waits.add(new ArrayList<>());
        }
        for (int i = 0; i < pots; i++) {
            int from = 2 * random.nextInt(CUES / 4);
            int to = CUES / 2 + 2 * random.nextInt(CUES / 4);
            waits.get(to).add(new Wait(random.nextInt(4) == 0 ? Wait.NOW : from, (to - from) * (10 + random.nextInt(25))));
        }
        List<Remaining> remaining = new ArrayList<>();
        for (int i = 0; i < CUES; i++) {
            remaining.add(new Remaining("cue-" + i, 5 + random.nextInt(56), i % 2 == 0, 2 + random.nextInt(9), waits.get(i)));
        }
        return remaining;
    }
}
