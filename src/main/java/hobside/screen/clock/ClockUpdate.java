package hobside.screen.clock;

import hobside.dish.MethodStep;
import hobside.dish.Stage;
import hobside.dish.Station;
import hobside.file.Scripts;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Next;
import hobside.screen.desk.Work;
import hobside.screen.live.Starting;
import hobside.screen.read.ReadScreen;
import hobside.talk.Cue;
import hobside.talk.Demo;
import hobside.talk.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What each key does on the Clock screen. */
final class ClockUpdate {

    private static final String NO_STEP = "That is for steps of the method; this row is none.";

    private ClockUpdate() {}

    static Optional<Next> of(ClockScreen clock, Key key) {
        return Keys.action(ClockAction.values(), key).map(action -> act(clock, action));
    }

    private static Next act(ClockScreen clock, ClockAction action) {
        return switch (action) {
            case SLOT -> ClockQuestions.slot(clock);
            case HALL -> ClockQuestions.hall(clock);
            case SHOWN -> shown(clock);
            case WHO -> wished(clock, wanted -> wanted.by(next(wanted.who())), true);
            case MINUTES -> clock.here().flatMap(Entry::methodIndex).map(index -> ClockQuestions.minutes(clock, index)).orElseGet(() -> Next.to(clock.saying(NO_STEP)));
            case PLACE -> stepped(clock, step -> step.with(step.course().on(next(step.on()))));
            case MEANWHILE -> stepped(clock, step -> step.with(step.course().meanwhile(!step.course().meanwhile())));
            case OVER -> wished(clock, wanted -> wanted.talkedOver(!wanted.talkedOver()), true);
            case EARLIEST -> ClockQuestions.earliest(clock);
            case LATEST -> ClockQuestions.latest(clock);
            case RETOLD -> clock.sooner().map(plan -> clock.changed(clock.demo().with(plan), "The changes are told in the order that takes less time."))
                    .orElseGet(() -> Next.to(clock.saying("No other order of telling was found that takes less time.")));
            case OPEN -> wished(clock, wanted -> Setting.Wanted.NOTHING, false);
            case PRINT -> Next.to(ReadScreen.page(clock, "The running order", width -> List.of(Scripts.orderText(clock.order(), clock.demo(), clock.bench().desk().study(), width).split("\n"))));
            case REHEARSE -> Starting.rehearsal(clock.bench());
            case LIVE -> Starting.live(clock.bench());
            case UNDO -> clock.bench().undone().map(next -> clock.over(next, "Taken back.")).orElseGet(() -> Next.to(clock.saying("There is nothing to take back.")));
            case REDO -> clock.bench().redone().map(next -> clock.over(next, "Done again.")).orElseGet(() -> Next.to(clock.saying("There is nothing to do again.")));
            case SAVE -> Next.doing(clock.saying("Saving..."), new Work.Save(clock.demo(), clock.bench().desk().kept().name()));
            case HELP -> Next.to(ReadScreen.help(clock, "The Clock", List.of(ClockAction.values())));
            case BACK -> Next.to(clock.bench());
        };
    }

    private static Next shown(ClockScreen clock) {
        Optional<MethodStep> step = step(clock);
        return step.isEmpty() ? Next.to(clock.saying(NO_STEP)) : wished(clock, wanted -> wanted.with(next(wanted.shown(), step.get())), true);
    }

    static Optional<MethodStep> step(ClockScreen clock) {
        return clock.here().flatMap(Entry::methodIndex).map(clock.demo().dish().method()::get);
    }

    /** What is served is never done ahead, and what does not cook by itself cannot be begun only. */
    private static Setting.Shown next(Setting.Shown shown, MethodStep step) {
        boolean cooks = step.minutes() > step.hands();
        return switch (shown) {
            case OPEN -> Setting.Shown.WHOLE;
            case WHOLE -> cooks ? Setting.Shown.BEGUN : next(Setting.Shown.BEGUN, step);
            case BEGUN -> step.stage() == Stage.SERVE ? Setting.Shown.OPEN : Setting.Shown.AHEAD;
            case AHEAD -> Setting.Shown.OPEN;
        };
    }

    private static Optional<Cue.Who> next(Optional<Cue.Who> who) {
        return who.isEmpty() ? Optional.of(Cue.Who.HELPER) : who.get() == Cue.Who.HELPER ? Optional.of(Cue.Who.PRESENTER) : Optional.empty();
    }

    private static Station next(Station station) {
        return Station.values()[(station.ordinal() + 1) % Station.values().length];
    }

    /** Writes a wish down for the task under the cursor. */
    static Next wished(ClockScreen clock, UnaryOperator<Setting.Wanted> wish, boolean stepsOnly) {
        Optional<Entry> here = clock.here().filter(entry -> !entry.key().isEmpty());
        if (here.isEmpty() || stepsOnly && here.get().step().isEmpty()) {
            return Next.to(clock.saying(here.isEmpty() ? "There is no task on this row." : NO_STEP));
        }
        String key = here.get().wishKey();
        return clock.changed(clock.demo().with(clock.setting().with(key, wish.apply(clock.setting().of(key)))), "");
    }

    /** Changes the step of the method under the cursor. */
    static Next stepped(ClockScreen clock, UnaryOperator<MethodStep> change) {
        Optional<Integer> index = clock.here().flatMap(Entry::methodIndex);
        if (index.isEmpty()) {
            return Next.to(clock.saying(NO_STEP));
        }
        Demo demo = clock.demo();
        List<MethodStep> method = new ArrayList<>(demo.dish().method());
        method.set(index.get(), change.apply(method.get(index.get())));
        return clock.changed(demo.with(demo.dish().withMethod(method)), "");
    }
}
