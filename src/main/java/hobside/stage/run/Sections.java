package hobside.stage.run;

import hobside.talk.Edit;
import hobside.talk.Talk;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which section a cue belongs to: as the talk has it, else as its key says; a cue of one's own belongs to the one before it. */
final class Sections {

    private final Map<String, String> known = new HashMap<>();

    private Sections() {}

    static Sections none() {
        return new Sections();
    }

    static Sections of(Talk talk) {
        Sections sections = new Sections();
        talk.sections().forEach(section -> section.cues().forEach(cue -> sections.known.putIfAbsent(cue.key(), section.key())));
        return sections;
    }

    /** The section of each cue of a plan. */
    Map<String, String> of(List<Run.Planned> plan) {
        Map<String, String> all = new LinkedHashMap<>();
        String before = "";
        for (Run.Planned planned : plan) {
            String key = planned.cue();
            before = known.containsKey(key) ? known.get(key) : Edit.isOwn(key) ? before : named(key);
            all.put(key, before);
        }
        return all;
    }

    /** {@code change:trim:ribs/why} stands in {@code change:trim:ribs}, {@code questions:salt/ask} in {@code questions}. */
    private static String named(String key) {
        int slash = key.indexOf('/');
        String section = slash < 0 ? key : key.substring(0, slash);
        return section.startsWith("questions:") ? "questions" : section;
    }
}
