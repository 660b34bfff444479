package hobside.stage.run;

import hobside.stage.run.CatchUp.Remaining;
import hobside.stage.run.CatchUp.Wait;
import java.util.Arrays;
import java.util.List;

/** How the rest of a talk goes when some of its cues are kept: each begins when the one before is over and what it waits for is ready. */
record Course(List<Remaining> remaining) {

    int size() {
        return remaining.size();
    }

    Remaining at(int place) {
        return remaining.get(place);
    }

    /** The musts, and what a must waits for. */
    boolean[] musts() {
        boolean[] musts = new boolean[size()];
        for (int i = size() - 1; i >= 0; i--) {
            musts[i] |= at(i).must();
            for (Wait wait : at(i).waits()) {
                if (musts[i] && wait.after() >= 0) {
                    musts[wait.after()] = true;
                }
            }
        }
        return musts;
    }

    /** Everything but this cue and what cannot be kept without it. */
    boolean[] without(int dropped) {
        boolean[] kept = new boolean[size()];
        Arrays.fill(kept, true);
        kept[dropped] = false;
        for (int i = dropped + 1; i < size(); i++) {
            for (Wait wait : at(i).waits()) {
                kept[i] &= wait.after() < 0 || kept[wait.after()];
            }
        }
        return kept;
    }

    int seconds(boolean[] kept) {
        int sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += kept[i] ? at(i).seconds() : 0;
        }
        return sum;
    }

    /** When the last kept cue is over. */
    int ends(boolean[] kept) {
        int[] begins = new int[size()];
        int time = 0;
        for (int i = 0; i < size(); i++) {
            if (kept[i]) {
                begins[i] = ready(i, time, begins);
                time = begins[i] + at(i).seconds();
            }
        }
        return time;
    }

    private int ready(int place, int time, int[] begins) {
        int ready = time;
        for (Wait wait : at(place).waits()) {
            ready = Math.max(ready, wait.seconds() + (wait.after() < 0 ? 0 : begins[wait.after()]));
        }
        return ready;
    }
}
