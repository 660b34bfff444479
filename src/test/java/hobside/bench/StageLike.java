package hobside.bench;

import hobside.stage.order.Job;
import hobside.stage.order.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Invented demos: pots, each a chain of steps by hand and of cooking that needs nobody, and sections of talk between them. Resources
 * are presenter, voice, helper, hobs and oven. Durations are common practice, no source.
 */
final class StageLike {

    private static final List<Integer> HOB = List.of(0, 0, 0, 1, 0);
    private static final List<Integer> OVEN = List.of(0, 0, 0, 0, 1);
    private static final List<Integer> HELPER = List.of(0, 0, 1, 0, 0);
    private static final List<Integer> SHOWN = List.of(1, 1, 0, 0, 0);
    private static final List<Integer> BY_HAND = List.of(1, 0, 0, 0, 0);
    private static final List<Integer> AT_THE_HOB = List.of(1, 0, 0, 1, 0);

    private final Random random;
    private final int count;
    private final List<Job> jobs = new ArrayList<>();
    private int lastTalk = -1;

    private StageLike(int count, long seed) {
        this.random = new Random(seed);
        this.count = count;
    }

    static Problem of(int count, long seed) {
        StageLike stage = new StageLike(count, seed);
        int hobs = 2 + stage.random.nextInt(3);
        while (stage.jobs.size() < count) {
            stage.talk(stage.pot());
        }
        return new Problem(stage.jobs, List.of(1, 1, 1, hobs, 1));
    }

    private int pot() {
        int steps = 3 + random.nextInt(4);
        int last = -1;
        for (int k = 0; k < steps && jobs.size() < count; k++) {
            List<Integer> after = last < 0 ? List.of() : List.of(last);
            last = jobs.size();
            jobs.add(k % 2 == 1 && random.nextInt(10) < 6 ? cooking(after) : work(after));
        }
        return last;
    }

    private Job cooking(List<Integer> after) {
        return Job.of(60 * (4 + random.nextInt(20)), random.nextInt(4) == 0 ? OVEN : HOB, after);
    }

    private Job work(List<Integer> after) {
        int kind = random.nextInt(10);
        List<Integer> takes = kind < 3 ? HELPER : kind < 6 ? SHOWN : kind < 8 ? BY_HAND : AT_THE_HOB;
        return Job.of(30 * (1 + random.nextInt(8)), takes, after);
    }

    private void talk(int pot) {
        if (jobs.size() < count) {
            List<Integer> after = new ArrayList<>();
            if (lastTalk >= 0) {
                after.add(lastTalk);
            }
            if (random.nextBoolean()) {
                after.add(pot);
            }
            lastTalk = jobs.size();
            jobs.add(Job.of(15 * (2 + random.nextInt(8)), random.nextInt(3) == 0 ? SHOWN : List.of(0, 1, 0, 0, 0), after));
        }
    }
}
