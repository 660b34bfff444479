package hobside.stage;

import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The talk in the order in which it is told on stage. Each piece keeps the heading of its section; pieces of one section that
 * follow each other stand together; the board comes with the last piece of its section.
 */
final class Told {

    private final Map<String, Cue> cues = new HashMap<>();
    private final Map<String, Talk.Section> sections = new HashMap<>();
    private final List<Talk.Section> told = new ArrayList<>();

    private Told(Talk talk, List<Blocks.Block> fillers) {
        talk.sections().forEach(section -> know(section, section.cues()));
        fillers.forEach(block -> know(block.section(), block.cues()));
    }

    private void know(Talk.Section section, List<Cue> of) {
        of.forEach(cue -> {
            cues.put(cue.key(), cue);
            sections.put(cue.key(), section);
        });
    }

    static Talk of(Scene scene, Fillers fillers, List<Slotted> slots, List<Silence> silences) {
        Told told = new Told(scene.talk(), fillers.blocks());
        Map<String, List<Cue>> asked = new HashMap<>();
        fillers.blocks().forEach(block -> asked.put(block.key(), block.cues()));
        int next = 0;
        for (Slotted slot : slots) {
            for (; next < silences.size() && silences.get(next).from() < slot.start() && slot.task().isSeen(); next++) {
                silences.get(next).filled().forEach(key -> asked.get(key).forEach(told::add));
            }
            slot.task().ties().cues().forEach(key -> told.add(told.cues.get(key)));
        }
        return new Talk(scene.talk().front(), told.boarded());
    }

    private void add(Cue cue) {
        Talk.Section section = sections.get(cue.key());
        Talk.Section last = told.isEmpty() ? null : told.get(told.size() - 1);
        List<Cue> together = new ArrayList<>();
        if (last != null && last.key().equals(section.key())) {
            together.addAll(last.cues());
            told.remove(told.size() - 1);
        }
        together.add(cue);
        told.add(new Talk.Section(section.head(), together, section.board(), section.figures()));
    }

    /** A section that was told in pieces shows its board once, at its end. */
    private List<Talk.Section> boarded() {
        Map<String, Integer> last = new HashMap<>();
        for (int i = 0; i < told.size(); i++) {
            last.put(told.get(i).key(), i);
        }
        List<Talk.Section> all = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            Talk.Section each = told.get(i);
            all.add(last.get(each.key()) == i ? each : new Talk.Section(each.head(), each.cues(), Optional.empty(), each.figures()));
        }
        return all;
    }
}
