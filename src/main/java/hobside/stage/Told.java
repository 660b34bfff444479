package hobside.stage;

import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The talk in the order in which it is told on stage. Each piece keeps the heading of its section; pieces of one section that
 * follow each other stand together; the board comes with the last piece of its section.
 */
final class Told {

    private final Map<String, Cue> cues = new LinkedHashMap<>();
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


    /** The cues of these keys in this order; keys that the talk does not have are passed over. */
    static Talk arranged(Talk talk, List<Blocks.Block> fillers, List<String> keys) {
        Told told = new Told(talk, fillers);
        keys.stream().map(told.cues::get).filter(cue -> cue != null).forEach(told::add);
        return new Talk(talk.front(), told.boarded());
    }

    /**
     * The keys with those that the talk has won since: each comes after the cue it follows in the talk as it is written. Steps and
     * things on the bench are left alone, because they may be away on purpose.
     */
    static List<String> withNew(Talk talk, List<String> keys) {
        List<String> all = new ArrayList<>(keys);
        Set<String> known = new HashSet<>(keys);
        String before = "";
        for (Talk.Section section : talk.sections()) {
            for (Cue cue : section.cues()) {
                boolean told = section.part() == Talk.Part.BENCH ? cue.isCaution() : !StepKeys.is(cue.key());
                if (told && known.add(cue.key())) {
                    all.add(all.indexOf(before) + 1, cue.key());
                }
                before = known.contains(cue.key()) ? cue.key() : before;
            }
        }
        return all;
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
