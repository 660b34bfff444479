package hobside.stage;

import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The talk in pieces that are told without a break: its sections, each question with its answer by itself, and the steps of the
 * method taken out. What stands on the bench is set out beforehand; of it only the cautions are told.
 */
final class Blocks {

    /** A piece of the talk. */
    record Block(String key, Talk.Section section, List<Cue> cues) {

        Block {
            cues = List.copyOf(cues);
        }

        Talk.Part part() {
            return section.part();
        }
    }

    /** How the keys of questions begin: {@code questions:salt/ask}. */
    private static final String QUESTION = "questions:";

    private Blocks() {}

    static List<Block> of(Talk talk) {
        List<Block> blocks = new ArrayList<>();
        for (Talk.Section section : talk.sections()) {
            if (section.part() == Talk.Part.QUESTIONS) {
                blocks.addAll(questions(section));
            } else {
                List<Cue> told = section.cues().stream().filter(cue -> isTold(section, cue)).toList();
                if (!told.isEmpty()) {
                    blocks.add(new Block(section.key(), section, told));
                }
            }
        }
        return blocks;
    }

    private static boolean isTold(Talk.Section section, Cue cue) {
        return section.part() == Talk.Part.BENCH ? cue.isCaution() : !StepKeys.is(cue.key());
    }

    /** A cue that is no question of its own, such as one that was written or moved here by hand, goes with the one before it. */
    static List<Block> questions(Talk.Section section) {
        Map<String, List<Cue>> grouped = new LinkedHashMap<>();
        String last = section.key();
        for (Cue cue : section.cues()) {
            last = cue.key().startsWith(QUESTION) && cue.key().contains("/") ? cue.key().substring(0, cue.key().lastIndexOf('/')) : last;
            if (isTold(section, cue)) {
                grouped.computeIfAbsent(last, each -> new ArrayList<>()).add(cue);
            }
        }
        return grouped.entrySet().stream().map(each -> new Block(each.getKey(), section, each.getValue())).toList();
    }
}
