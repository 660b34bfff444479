package hobside.talk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was done to the talk by hand. The talk itself is written anew from dish and plan whenever one of them changes; the edits
 * hang on the keys of its cues, wait while their cue is away, and are there again when it comes back.
 *
 * @param language the code of the language it is told in, such as {@code en}
 * @param glosses what an ingredient, given by its id, is called here; shown beside the usual name
 * @param edits at most one for each cue
 */
public record Script(String language, Pacing pacing, Map<String, String> glosses, List<Edit> edits) {

    /** How fast one speaks, in words a minute, and how long the slot is, in minutes; 0 when no slot is given. */
    public record Pacing(int wordsPerMinute, int slot) {

        /** The usual rate of speech to an audience that listens and watches: 120 to 150 words a minute (CUNY aims at about 140). */
        public static final int USUAL = 130;

        public static final Pacing FIRST = new Pacing(USUAL, 0);
        public static final int SLOWEST = 60;
        public static final int FASTEST = 240;

        public Pacing {
            if (wordsPerMinute < SLOWEST || wordsPerMinute > FASTEST || slot < 0) {
                throw new IllegalArgumentException("no pace: " + wordsPerMinute + " words a minute, a slot of " + slot);
            }
        }
    }

    public static final String FIRST_LANGUAGE = "en";

    public static final Script UNTOUCHED = new Script(FIRST_LANGUAGE, Pacing.FIRST, Map.of(), List.of());

    public Script {
        glosses = Collections.unmodifiableMap(new TreeMap<>(glosses));
        edits = List.copyOf(edits);
    }

    public Optional<Edit> edit(String cue) {
        return edits.stream().filter(edit -> edit.cue().equals(cue)).findFirst();
    }

    /** With this edit in place of an older one of the same cue; an edit that changes nothing is taken out. */
    public Script with(Edit edit) {
        List<Edit> others = new ArrayList<>(edits);
        int at = others.indexOf(edit(edit.cue()).orElse(null));
        if (at >= 0) {
            others.remove(at);
        }
        if (!edit.isNothing()) {
            others.add(at >= 0 ? at : others.size(), edit);
        }
        return new Script(language, pacing, glosses, others);
    }

    /** With whatever was done to this cue undone; a cue of one's own is gone. */
    public Script without(String cue) {
        return new Script(language, pacing, glosses, edits.stream().filter(edit -> !edit.cue().equals(cue)).toList());
    }

    public Script in(String code) {
        return new Script(code, pacing, glosses, edits);
    }

    public Script with(Pacing other) {
        return new Script(language, other, glosses, edits);
    }

    /** What an ingredient is called here; no words take the gloss away. */
    public Script withGloss(String ingredient, String words) {
        Map<String, String> more = new TreeMap<>(glosses);
        if (words.isBlank()) {
            more.remove(ingredient);
        } else {
            more.put(ingredient, words.strip());
        }
        return new Script(language, pacing, more, edits);
    }

    /** A key for a cue of one's own that no edit has yet: own-1, own-2 ... */
    public String freshKey() {
        int number = 1;
        while (edit(Edit.OWN + number).isPresent()) {
            number++;
        }
        return Edit.OWN + number;
    }
}
