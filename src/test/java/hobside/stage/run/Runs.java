package hobside.stage.run;

import hobside.stage.run.Happening.What;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Made-up runs for tests. */
public final class Runs {

    private Runs() {}

    /** Cues of these keys, ten seconds each, all of them musts. */
    public static Run.Head head(Run.Kind kind, String... keys) {
        List<Run.Planned> plan = new ArrayList<>();
        for (String key : keys) {
            plan.add(new Run.Planned(key, 10, true, key.hashCode()));
        }
        return new Run.Head(kind, "rib-pot", 1_700_000_000_000L, 30, plan);
    }

    /** Anything may happen, at any time and to any cue, also to such as there are not. */
    public static Run wild(long seed) {
        Random random = new Random(seed);
        String[] keys = new String[1 + random.nextInt(12)];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = "change:trim:ribs" + i + (random.nextInt(5) == 0 ? "/care:hot-oil" : "/why");
        }
        Run.Head head = head(random.nextBoolean() ? Run.Kind.LIVE : Run.Kind.REHEARSAL, keys);
        List<Happening> all = new ArrayList<>();
        long at = 0;
        for (int i = random.nextInt(60); i > 0; i--) {
            at += random.nextInt(20_000);
            What what = What.values()[random.nextInt(random.nextInt(4) == 0 ? What.values().length - 1 : 5)];
            String cue = random.nextInt(4) == 0 ? "gone" : random.nextInt(3) == 0 ? "" : keys[random.nextInt(keys.length)];
            all.add(new Happening(random.nextInt(20) == 0 ? at / 2 : at, what, cue, text(what, keys, random)));
        }
        return new Run(head, all);
    }

    private static String text(What what, String[] keys, Random random) {
        return switch (what) {
            case DROPPED, TAKEN_BACK -> Happening.text(List.of(keys[random.nextInt(keys.length)], keys[random.nextInt(keys.length)]));
            case CLOCK -> random.nextInt(3) == 0 ? "soon" : Integer.toString(random.nextInt(1_000_000));
            case NOTE, ASKED -> "Is it “lighter”,\nor less? \\ \"yes\" ½ 🍲";
            case ON, BACK, JUMP, SKIP, ALREADY, PAUSE, GO_ON, STUMBLED, TOO_LONG, KEPT, CARE_ASKED, CARE_DONE, OUT, RESUMED, OVER -> "";
        };
    }
}
