package hobside.stage;

import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Prepared questions that the talk does not ask, to be put to the audience while a pot is waited for. */
final class Fillers {

    private final List<Blocks.Block> blocks;
    private final Scene scene;
    private final Map<String, Cue> cues = new HashMap<>();

    private Fillers(List<Blocks.Block> blocks, Scene scene) {
        this.blocks = blocks;
        this.scene = scene;
        scene.talk().cues().forEach(cue -> cues.put(cue.key(), cue));
    }

    static Fillers of(Scene scene) {
        return new Fillers(of(scene.stand(), scene.talk()), scene);
    }

    static List<Blocks.Block> of(Stand stand, Talk talk) {
        Set<String> told = talk.cues().stream().map(Cue::key).collect(Collectors.toSet());
        List<Cue> cues = TalkWriter.questions(stand).stream().filter(cue -> !told.contains(cue.key())).toList();
        Talk.Section.Head head = new Talk.Section.Head(Talk.Part.QUESTIONS, "waits", stand.words().say("talk.heading.questions"));
        return Blocks.questions(new Talk.Section(head, cues, Optional.empty(), Map.of()));
    }

    List<Blocks.Block> blocks() {
        return blocks;
    }

    /** What all of them take together. */
    int seconds() {
        return blocks.stream().mapToInt(this::seconds).sum();
    }

    int seconds(Cue cue) {
        return scene.timing().seconds(cue);
    }

    /** Seconds of a cue of the talk. */
    int seconds(String key) {
        return seconds(cues.get(key));
    }

    int seconds(Blocks.Block block) {
        return block.cues().stream().mapToInt(scene.timing()::seconds).sum();
    }

    /** Fills the silences in turn: the longest question that still fits, each asked once. What is a breath already is left alone. */
    List<Silence> fill(List<Silence> silences) {
        List<Blocks.Block> free = new ArrayList<>(blocks);
        List<Silence> filled = new ArrayList<>();
        for (Silence silence : silences) {
            List<String> keys = new ArrayList<>();
            int left = silence.until() - silence.from();
            for (Blocks.Block next = fitting(free, left); next != null; next = fitting(free, left)) {
                free.remove(next);
                keys.add(next.key());
                left -= seconds(next);
            }
            filled.add(new Silence(silence.from(), silence.until(), keys, left));
        }
        return filled;
    }

    private Blocks.Block fitting(List<Blocks.Block> free, int left) {
        Blocks.Block best = null;
        for (Blocks.Block block : free) {
            boolean fits = left > Silence.BREATH && seconds(block) <= left;
            if (fits && (best == null || seconds(block) > seconds(best))) {
                best = block;
            }
        }
        return best;
    }
}
