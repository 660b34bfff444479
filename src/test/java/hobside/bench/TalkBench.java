package hobside.bench;

import hobside.Bundle;
import hobside.dish.Plan;
import hobside.file.Reviewed;
import hobside.file.Scripts;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Editing;
import hobside.talk.Talk;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntConsumer;

/** How long it takes to write a talk anew after a change of its plan, ledger and pot included, and to look it through. Target: 5 ms warm. */
public final class TalkBench {

    private static final int RUNS = 300;

    private TalkBench() {}

    public static void main(String[] args) {
        for (String name : Bundle.DISHES) {
            Demo demo = edited(withChanges(name));
            Talk talk = Scripts.talk(demo, Bundle.STUDY);
            System.out.println(name + ": " + demo.plan().size() + " changes, " + talk.cues().size() + " cues, " + demo.script().edits().size() + " of them edited by hand");
            measure("  written anew after a change", i -> Scripts.talk(toggled(demo, i), Bundle.STUDY));
            Demo spanish = demo.with(demo.script().in("es"));
            measure("  the same in Spanish", i -> Scripts.talk(toggled(spanish, i), Bundle.STUDY));
            measure("  looked through whole", i -> Reviewed.of(demo, Bundle.STUDY));
        }
    }

    private static Demo withChanges(String name) {
        Demo demo = Bundle.demo(name);
        for (var ingredient : demo.dish().ingredients()) {
            var offers = Bundle.STUDY.offers().forIngredient(demo.dish(), demo.plan(), ingredient.id());
            demo = offers.isEmpty() || demo.plan().size() >= 4 ? demo : demo.with(demo.plan().with(offers.get(0).change()));
        }
        return demo;
    }

    private static Demo edited(Demo demo) {
        Demo edited = demo;
        for (Cue cue : Scripts.talk(demo, Bundle.STUDY).cues().subList(0, 8)) {
            edited = edited.with(new Editing(Scripts.talk(edited, Bundle.STUDY), edited.script()).worded(cue, cue.raw() + " In my words: {all-saved}.").script());
        }
        return edited;
    }

    private static Demo toggled(Demo demo, int run) {
        return demo.with(demo.plan().edited(run % demo.plan().size(), Plan.Planned::toggled));
    }

    private static void measure(String what, IntConsumer work) {
        for (int i = 0; i < RUNS; i++) {
            work.accept(i);
        }
        double[] times = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long start = System.nanoTime();
            work.accept(i);
            times[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(times);
        System.out.printf(Locale.ROOT, "%-34s median %.2f ms, p99 %.2f ms%n", what, times[RUNS / 2], times[RUNS * 99 / 100]);
    }
}
