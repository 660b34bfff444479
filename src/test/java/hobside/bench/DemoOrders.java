package hobside.bench;

import hobside.Bundle;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.stage.RunningOrder;
import hobside.talk.Demo;
import hobside.talk.Script;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** How long the whole running order of each bundled and finished demo takes, talk and choice of what is done ahead with it. */
final class DemoOrders {

    private static final List<String> NAMES = List.of("ropewalk-rib-pot", "lantern-night-pumpkin-pot", "lock-keepers-potato-bake",
            "lighter-rib-pot", "lighter-pumpkin-pot", "lighter-potato-bake");
    private static final int[] SLOTS = {0, 20, 30, 45, 60, 90};
    private static final int ROUNDS = 20;

    private DemoOrders() {}

    static void print() {
        for (String name : NAMES) {
            Demo demo = Kitchen.at(Path.of("")).demo(name, Bundle.STUDY.shelf()).value().orElseThrow();
            double[] times = new double[SLOTS.length * ROUNDS];
            int proven = 0;
            for (int i = -SLOTS.length * 3; i < times.length; i++) {
                Demo given = demo.with(demo.script().with(new Script.Pacing(Script.Pacing.USUAL, SLOTS[Math.floorMod(i, SLOTS.length)])));
                long before = System.nanoTime();
                RunningOrder order = Scripts.runningOrder(given, Bundle.STUDY, Map.of());
                if (i >= 0) {
                    times[i] = (System.nanoTime() - before) / 1e6;
                    proven += order.proof().isShortest() && order.proof().isFewest() ? 1 : 0;
                }
            }
            Samples all = Samples.of(times);
            Paper.line("%-26s slots of 0 to 90 minutes: median %.1f ms, p99 %.1f ms, worst %.1f ms; %d of %d proven shortest and fewest", name,
                    all.median(), all.percentile(99), all.percentile(100), proven, times.length);
        }
    }
}
