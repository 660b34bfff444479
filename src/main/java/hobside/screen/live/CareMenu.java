package hobside.screen.live;

import hobside.guide.Caution;
import hobside.screen.Next;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import java.util.ArrayList;
import java.util.List;

/** Cautions that can be said to be seen to now. It always asks: what is written down with the time may be looked up later. */
final class CareMenu {

    private CareMenu() {}

    /** What is written down, and how it is called in the menu. */
    private record Step(What what, String caution, Menu.Row row) {

        Next from(LiveScreen live) {
            return live.happening(what, caution, row.label() + (what == What.OUT ? "" : ": " + row.right()));
        }
    }

    static Next of(LiveScreen live) {
        List<Step> steps = steps(live.playing());
        if (steps.isEmpty()) {
            return Next.to(live.saying("No caution of this talk has to be seen to by the clock."));
        }
        return Next.to(MenuScreen.of(live, new Menu("Seen to", "What has been seen to now? It is written down with the time.", steps.stream().map(Step::row).toList(),
                index -> steps.get(index).from(live)), 0));
    }

    private static List<Step> steps(Playing playing) {
        List<Happening> happened = playing.run().happenings();
        List<Step> steps = new ArrayList<>();
        for (Caution caution : playing.care().unseen(happened)) {
            steps.add(new Step(What.CARE_DONE, caution.key(), new Menu.Row("Core temperature reached", caution.published().name(), caution.said())));
        }
        playing.care().samples().ifPresent(samples -> steps.add(playing.care().minutesOut(happened, playing.now())
                .map(minutes -> new Step(What.CARE_DONE, samples, new Menu.Row("Samples are gone", "out for " + minutes + " min", "Eaten, chilled or thrown away: they stand out no longer.")))
                .orElseGet(() -> new Step(What.OUT, "", new Menu.Row("Samples are out now", "", "From now on it is watched how long they stand out.")))));
        return steps;
    }
}
