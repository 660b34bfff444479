package hobside.talk;

import hobside.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lays what was done by hand over a talk as the program writes it, then fills the live figures in. An edit whose cue is away waits;
 * one's own cue whose section is away waits too.
 */
final class Edited {

    private final Script script;
    private final Words words;

    private Edited(Script script, Words words) {
        this.script = script;
        this.words = words;
    }

    static Talk of(Talk written, Script script, Words words) {
        Edited edited = new Edited(script, words);
        List<Talk.Section> sections = script.edits().isEmpty() ? written.sections() : edited.laidOver(written.sections());
        return written.with(sections.stream().map(edited::filled).toList());
    }

    private List<Talk.Section> laidOver(List<Talk.Section> written) {
        Map<String, List<Cue>> cues = new HashMap<>();
        written.forEach(section -> cues.put(section.key(), new ArrayList<>(section.cues().stream().map(this::changed).toList())));
        script.edits().stream().filter(Edit::isOwn).filter(edit -> cues.containsKey(edit.place().orElseThrow().section()))
                .forEach(edit -> cues.get(edit.place().orElseThrow().section()).add(changed(own(edit))));
        script.edits().stream().filter(edit -> edit.place().isPresent()).forEach(edit -> placed(edit, cues));
        script.edits().stream().filter(edit -> edit.traits().out()).forEach(edit -> cues.values().forEach(all -> all.removeIf(cue -> isOut(cue, edit))));
        return written.stream().map(section -> section.with(cues.get(section.key()))).toList();
    }

    /** A caution can be put in other words and elsewhere; it cannot be left out. */
    private static boolean isOut(Cue cue, Edit edit) {
        return cue.key().equals(edit.cue()) && !cue.isCaution();
    }

    private Cue own(Edit edit) {
        return Cue.of(edit.cue(), edit.traits().kind().orElse(Cue.Kind.SAY), inThisLanguage(edit).orElseThrow());
    }

    private Cue changed(Cue cue) {
        return script.edit(cue.key()).map(edit -> changed(cue, edit)).orElse(cue);
    }

    private Cue changed(Cue cue, Edit edit) {
        String raw = inThisLanguage(edit).orElse(cue.raw());
        Cue.Kind kind = cue.isCaution() ? cue.kind() : edit.traits().kind().orElse(cue.kind());
        return new Cue(cue.key(), kind, Cue.Text.of(raw), edit.traits().details().orElse(cue.details()));
    }

    /** Words in the language of the talk; a cue of one's own is better told in another than not at all. */
    private Optional<String> inThisLanguage(Edit edit) {
        Optional<String> typed = Optional.ofNullable(edit.words().get(words.language().code()));
        return typed.isPresent() || !edit.isOwn() ? typed : edit.words().values().stream().findFirst();
    }

    private static void placed(Edit edit, Map<String, List<Cue>> cues) {
        Edit.Place place = edit.place().orElseThrow();
        Optional<List<Cue>> home = cues.values().stream().filter(all -> index(all, edit.cue()) >= 0).findFirst();
        List<Cue> target = cues.get(place.section());
        if (home.isEmpty() || target == null || !place.after().isEmpty() && index(target, place.after()) < 0) {
            return;
        }
        Cue cue = home.get().remove(index(home.get(), edit.cue()));
        target.add(place.after().isEmpty() ? 0 : index(target, place.after()) + 1, cue);
    }

    private static int index(List<Cue> cues, String key) {
        for (int i = 0; i < cues.size(); i++) {
            if (cues.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private Talk.Section filled(Talk.Section section) {
        return section.with(section.cues().stream()
                .map(cue -> cue.said(words.filled(cue.raw(), gap -> Optional.ofNullable(section.figures().get(gap))))).toList());
    }
}
