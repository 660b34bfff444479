package hobside.stage;

import hobside.dish.Change;
import hobside.dish.Stage;
import hobside.dish.Station;
import hobside.stage.order.Window;
import hobside.talk.Cue;
import hobside.talk.Setting;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The tasks of a demonstration. The welcome comes first and the table last. Changes are told in the order of the plan, each before
 * the steps that cook what it has changed and after the steps that it needs behind it; questions fit in anywhere after the first
 * change; the recap comes after the last.
 */
final class Tasks {

    /** Bringing in a pot that has been through a step: common practice, no source. */
    static final int SWAP_SECONDS = 20;

    private final Scene scene;
    private final List<Way> ways;
    private final Map<String, Task> tasks = new LinkedHashMap<>();

    private Tasks(Scene scene, List<Way> ways) {
        this.scene = scene;
        this.ways = ways;
    }

    /** @param ways one for each step of {@link Scene#steps} */
    static List<Task> of(Scene scene, List<Way> ways) {
        Tasks tasks = new Tasks(scene, ways);
        tasks.steps();
        tasks.talk();
        tasks.kitchenFirst();
        return List.copyOf(tasks.tasks.values());
    }

    private void steps() {
        for (int i = 0; i < ways.size(); i++) {
            if (ways.get(i) != Way.AHEAD) {
                step(i, scene.steps().get(i));
            }
        }
    }

    private void step(int index, Cooking.Stepped step) {
        boolean begun = ways.get(index) == Way.BEGUN;
        Setting.Wanted wanted = scene.wanted(step.key());
        int hands = scene.handsOf(step) + (begun ? SWAP_SECONDS : 0);
        int cooks = begun ? 0 : step.cooksSeconds();
        Station on = step.step().on();
        Set<String> after = new HashSet<>(before(index));
        scene.blocks().stream().filter(block -> comesBefore(block, step)).forEach(block -> after.add(block.key()));
        String last = step.key();
        if (hands > 0 || cooks == 0) {
            boolean helper = scene.isHelped(step);
            Task.Body body = helper ? Task.Body.NOTHING : wanted.talkedOver() ? Task.Body.HANDS : Task.Body.BOTH;
            add(new Task(step.key(), Task.Kind.HANDS, scene.label(step), new Task.Load(hands, body, helper, on),
                    new Task.Ties(List.copyOf(after), window(wanted, cooks == 0), cue(step.key()))));
        }
        if (cooks > 0) {
            last = step.key() + Task.COOKS;
            List<String> behind = hands > 0 ? List.of(step.key()) : List.copyOf(after);
            add(new Task(last, Task.Kind.COOKS, scene.label(step), new Task.Load(cooks, Task.Body.NOTHING, false, on),
                    new Task.Ties(behind, window(wanted, true), hands > 0 ? List.of() : cue(step.key()))));
        }
    }

    private List<String> cue(String key) {
        return scene.place(key).isPresent() ? List.of(key) : List.of();
    }

    private static Window window(Setting.Wanted wanted, boolean ends) {
        int latest = ends && wanted.latest() > 0 ? wanted.latest() * 60 : Integer.MAX_VALUE;
        return new Window(Math.min(wanted.earliest() * 60, latest), latest);
    }

    private void add(Task task) {
        tasks.put(task.key(), task);
    }

    /** The tasks that end the steps before this one; a step that is done ahead hands on what was before it. */
    private Set<String> before(int index) {
        Set<String> keys = new HashSet<>();
        for (int earlier : scene.steps().get(index).after()) {
            keys.addAll(end(earlier));
        }
        return keys;
    }

    private Set<String> end(int index) {
        String key = scene.steps().get(index).key();
        if (ways.get(index) == Way.AHEAD) {
            return before(index);
        }
        return Set.of(tasks.containsKey(key + Task.COOKS) ? key + Task.COOKS : key);
    }

    /** The welcome and the cautions told at the hob before it come before a step; so does every change that works on what it cooks. */
    private boolean comesBefore(Blocks.Block block, Cooking.Stepped step) {
        if (block.part() == Talk.Part.WELCOME || block.part() == Talk.Part.BENCH) {
            return true;
        }
        if (block.part() == Talk.Part.WAIT) {
            return !step.prepares() && scene.place(step.key()).map(place -> scene.place(block.cues().get(0).key()).orElseThrow() < place).orElse(false);
        }
        return !step.prepares() && scene.change(block).filter(change -> isToldBefore(block, change, step)
                && change.stage().compareTo(step.step().stage()) <= 0).isPresent();
    }

    /** A step that the talk does not tell, such as the night in the cold, comes after whatever is done earlier in the kitchen. */
    private boolean isToldBefore(Blocks.Block block, Change change, Cooking.Stepped step) {
        Optional<Integer> place = scene.place(step.key());
        return place.isEmpty() ? change.stage().compareTo(step.step().stage()) < 0
                : scene.place(block.cues().get(0).key()).orElseThrow() < place.get();
    }

    private void talk() {
        Optional<String> chain = Optional.empty();
        List<String> changed = new ArrayList<>();
        for (Blocks.Block block : scene.blocks()) {
            Set<String> after = new HashSet<>();
            switch (block.part()) {
                case WELCOME -> {}
                case BENCH -> part(Talk.Part.WELCOME).ifPresent(after::add);
                case WAIT -> opening().ifPresent(after::add);
                case CHANGE, ASIDE -> {
                    (scene.isAnyOrder() ? opening() : chain.or(this::opening)).ifPresent(after::add);
                    changed.add(block.key());
                    chain = Optional.of(block.key());
                }
                case QUESTIONS -> after.addAll(changed.isEmpty() ? opening().stream().toList() : changed.subList(0, 1));
                case RECAP -> after.addAll(changed.isEmpty() ? opening().stream().toList() : changed);
                case TABLE -> {
                    after.addAll(tasks.keySet());
                    scene.blocks().stream().map(Blocks.Block::key).filter(key -> !key.equals(block.key())).forEach(after::add);
                }
            }
            after.remove(block.key());
            add(told(block, after));
        }
    }

    /** What is told before anything else may begin: the cautions about what stands on the bench, else the welcome. */
    private Optional<String> opening() {
        return part(Talk.Part.BENCH).or(() -> part(Talk.Part.WELCOME));
    }

    private Optional<String> part(Talk.Part part) {
        return scene.blocks().stream().filter(block -> block.part() == part).map(Blocks.Block::key).findFirst();
    }

    /**
     * A change waits for the steps that must be over before it can be made on the pot; but not for one that itself waits for the change,
     * or for what is told later, as cues and steps may that were moved by hand: then the order of telling holds.
     */
    private void kitchenFirst() {
        for (Blocks.Block block : scene.blocks()) {
            for (String step : behind(block)) {
                if (!waits(step, block.key(), new HashSet<>())) {
                    tasks.put(block.key(), tasks.get(block.key()).after(step));
                }
            }
        }
    }

    /** Whether a task waits for another one, by way of others or not. */
    private boolean waits(String task, String other, Set<String> seen) {
        return task.equals(other) || seen.add(task) && tasks.containsKey(task) && tasks.get(task).ties().after().stream().anyMatch(before -> waits(before, other, seen));
    }

    /** The steps that must be over before a change can be made on the pot, in the order of the kitchen. */
    private Set<String> behind(Blocks.Block block) {
        Set<String> keys = new LinkedHashSet<>();
        Optional<Change> change = scene.change(block);
        for (int i = 0; change.isPresent() && i < ways.size(); i++) {
            Cooking.Stepped step = scene.steps().get(i);
            if (!step.prepares() && needs(change.get(), step.step().stage()) && !comesBefore(block, step)) {
                keys.addAll(end(i));
            }
        }
        return keys;
    }

    /** What was browned is poured off afterwards, and a finished pot is skimmed; everything else is done as its stage begins. */
    private static boolean needs(Change change, Stage stage) {
        int order = stage.compareTo(change.stage());
        return order < 0 || order == 0 && (stage == Stage.BROWN || stage == Stage.FINISH);
    }

    private Task told(Blocks.Block block, Set<String> after) {
        boolean hands = block.cues().stream().anyMatch(cue -> !cue.kind().isSpoken() || cue.details().seconds() > 0);
        Task.Load load = new Task.Load(scene.secondsOf(block), hands ? Task.Body.BOTH : Task.Body.VOICE, false, Station.BENCH);
        Setting.Wanted wanted = scene.wanted(block.key());
        return new Task(block.key(), Task.Kind.TALK, Scene.label(block), load,
                new Task.Ties(List.copyOf(after), window(wanted, true), block.cues().stream().map(Cue::key).toList()));
    }
}
