package hobside.screen.clock;

import hobside.dish.Plan;
import hobside.file.Scripts;
import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.stage.RunningOrder;
import hobside.stage.run.Measured;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import hobside.talk.Setting;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The running order over the Bench in one state: the order, and the row under the cursor. It is worked out once for each state. */
public final class ClockScreen implements Screen {

    private final Bench bench;
    private final Worked worked;
    private final List<Entry> entries;
    private final int cursor;
    private final String said;

    private ClockScreen(Bench bench, Worked worked, int cursor, String said) {
        this.bench = bench;
        this.worked = worked;
        this.entries = Entry.of(worked.order());
        this.cursor = Math.max(0, Math.min(cursor, entries.size() - 1));
        this.said = said;
    }

    /** The running order, and an order of telling that takes less time, if there is one. */
    private record Worked(RunningOrder order, Optional<Plan> sooner, List<Run> runs) {

        static Worked out(Bench bench, List<Run> runs) {
            Demo demo = bench.demo();
            Map<String, Integer> measured = Measured.of(runs).seconds(Scripts.talk(demo, bench.desk().study()));
            RunningOrder order = Scripts.runningOrder(demo, bench.desk().study(), measured);
            return new Worked(order, Scripts.sooner(demo, bench.desk().study(), order, measured), runs);
        }
    }

    /** The order with estimated times at once, and with those measured in rehearsals as soon as the disk has told of them. */
    public static Next of(Bench bench) {
        ClockScreen clock = new ClockScreen(bench, Worked.out(bench, List.of()), 0, "");
        String name = bench.desk().kept().name();
        return name.isEmpty() ? Next.to(clock) : Next.doing(clock, new Work.Runs(name));
    }

    /** How many runs its times were measured in. */
    int runs() {
        return worked.runs().size();
    }

    Bench bench() {
        return bench;
    }

    Demo demo() {
        return bench.demo();
    }

    Setting setting() {
        return bench.demo().setting();
    }

    RunningOrder order() {
        return worked.order();
    }

    Optional<Plan> sooner() {
        return worked.sooner();
    }

    List<Entry> entries() {
        return entries;
    }

    int cursor() {
        return cursor;
    }

    Optional<Entry> here() {
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(cursor));
    }

    String said() {
        return said;
    }

    ClockScreen saying(String words) {
        return new ClockScreen(bench, worked, cursor, words);
    }

    private ClockScreen to(int row) {
        return new ClockScreen(bench, worked, row, "");
    }

    /** The Bench goes on underneath; this screen stays on top, with the cursor on the same task wherever that has gone. */
    Next over(Next next, String words) {
        String key = here().map(Entry::key).orElse("");
        return new Next(next.screen().map(each -> each instanceof Bench changed ? found(changed, key, words) : each), next.effects());
    }

    private Screen found(Bench changed, String key, String words) {
        Worked fresh = Worked.out(changed, worked.runs());
        List<Entry> rows = Entry.of(fresh.order());
        for (int i = 0; i < rows.size(); i++) {
            if (!key.isEmpty() && rows.get(i).key().equals(key)) {
                return new ClockScreen(changed, fresh, i, words);
            }
        }
        return new ClockScreen(changed, fresh, cursor, words);
    }

    Next changed(Demo other, String words) {
        return over(bench.changed(other, ""), words);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return ClockUpdate.of(this, pressed.key()).orElseGet(() -> Next.to(to(Cursor.after(pressed.key(), cursor, Math.max(1, entries.size())))));
        }
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Runs runs) {
            return Next.to(new ClockScreen(bench, Worked.out(bench, runs.runs()), cursor, said));
        }
        return message instanceof Message.Told
                ? bench.below(message, changed -> new ClockScreen(changed, worked, cursor, changed.said().isEmpty() ? said : changed.said()))
                : Next.to(this);
    }

    @Override
    public void view(Frame frame) {
        ClockView.draw(this, frame);
    }
}
