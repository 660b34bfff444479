package hobside.stage;

import hobside.dish.Change;
import hobside.ledger.Step;
import hobside.talk.Cue;
import hobside.talk.Setting;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.talk.Timing;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a running order is made from: what the talk is written from, the talk, how long its cues take, and the steps of the method.
 * What is looked up again and again is worked out once.
 */
final class Scene {

    /** A step for which no minutes are given still takes as long as its cue. */
    private static final int LEAST_SECONDS = 20;

    private final Stand stand;
    private final Talk talk;
    private final Timing timing;
    private final boolean anyOrder;
    private final List<Cooking.Stepped> steps;
    private final List<Blocks.Block> blocks;
    private final Map<String, Change> changes = new HashMap<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, String> words = new HashMap<>();
    private final Map<String, Integer> seconds = new HashMap<>();

    private Scene(Stand stand, Talk talk, Timing timing, boolean anyOrder) {
        this.stand = stand;
        this.talk = talk;
        this.timing = timing;
        this.anyOrder = anyOrder;
        this.steps = Cooking.of(stand);
        this.blocks = Blocks.of(talk);
        for (Step step : stand.ledger().steps()) {
            changes.put(TalkWriter.key(step.planned().change()), step.planned().change());
        }
        for (Cue cue : talk.cues()) {
            words.put(cue.key(), cue.words());
            places.put(cue.key(), places.size());
        }
        blocks.forEach(block -> seconds.put(block.key(), block.cues().stream().mapToInt(timing::seconds).sum()));
    }

    static Scene of(RunningOrder.Given given) {
        return new Scene(given.stand(), given.talk(), given.timing(), false);
    }

    /** The same, but the changes may be told in any order that the kitchen allows. */
    Scene inAnyOrder() {
        return new Scene(stand, talk, timing, true);
    }

    Stand stand() {
        return stand;
    }

    Talk talk() {
        return talk;
    }

    Timing timing() {
        return timing;
    }

    boolean isAnyOrder() {
        return anyOrder;
    }

    List<Cooking.Stepped> steps() {
        return steps;
    }

    List<Blocks.Block> blocks() {
        return blocks;
    }

    /** The change that a piece of the talk is about. */
    Optional<Change> change(Blocks.Block block) {
        return Optional.ofNullable(changes.get(block.key()));
    }

    /** Where a cue stands in the talk as it is written; empty for what the talk does not tell. */
    Optional<Integer> place(String cue) {
        return Optional.ofNullable(places.get(cue));
    }

    Setting.Hall hall() {
        return stand.demo().setting().hall();
    }

    Setting.Wanted wanted(String task) {
        return stand.demo().setting().of(task);
    }

    /** Seconds of the whole slot; 0 when none is given. */
    int slotSeconds() {
        return stand.demo().script().pacing().slot() * 60;
    }

    int secondsOf(Blocks.Block block) {
        return seconds.get(block.key());
    }

    /** Measured on stage where the presenter has done it there, else as the dish says. */
    int handsOf(Cooking.Stepped step) {
        Optional<Integer> measured = isHelped(step) ? Optional.empty() : timing.measured(step.key());
        return measured.orElseGet(() -> step.step().minutes() == 0 ? LEAST_SECONDS : step.handsSeconds());
    }

    /** Whoever was chosen; else the helper where there is one, so that the presenter can speak. What is served is shown by the presenter. */
    boolean isHelped(Cooking.Stepped step) {
        boolean helper = wanted(step.key()).who().map(who -> who == Cue.Who.HELPER).orElse(!step.serves());
        return helper && hall().helper();
    }

    String label(Cooking.Stepped step) {
        return step.key().equals(Cooking.CHILL) ? "Chill the pot overnight." : words.getOrDefault(step.key(), step.step().words());
    }

    static String label(Blocks.Block block) {
        return block.part() == Talk.Part.QUESTIONS ? block.cues().get(0).words() : block.section().heading();
    }
}
