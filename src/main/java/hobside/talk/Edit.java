package hobside.talk;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was done by hand to one cue: other words, another kind, other details, another place, or that it is left out. What is not
 * given stays as the program writes it. A cue of one's own has a key that begins with {@link #OWN}, and always a place.
 *
 * @param words the words in each language that they were typed in, with live figures as gaps
 * @param place where it stands now, if not where the program puts it
 */
public record Edit(String cue, Map<String, String> words, Traits traits, Optional<Place> place) {

    /** How the keys of one's own cues begin. */
    public static final String OWN = "own-";

    /** The section a cue stands in and the cue it comes after; no cue when it comes first. */
    public record Place(String section, String after) {}

    /** Kind, details and whether it is left out; empty where the program decides. */
    public record Traits(Optional<Cue.Kind> kind, Optional<Cue.Details> details, boolean out) {

        public static final Traits NONE = new Traits(Optional.empty(), Optional.empty(), false);

        public Traits with(Cue.Kind other) {
            return new Traits(Optional.of(other), details, out);
        }

        public Traits with(Cue.Details other) {
            return new Traits(kind, Optional.of(other), out);
        }

        public Traits out(boolean yes) {
            return new Traits(kind, details, yes);
        }
    }

    public Edit {
        words = Collections.unmodifiableMap(new TreeMap<>(words));
        if (isOwn(cue) && (place.isEmpty() || words.isEmpty())) {
            throw new IllegalArgumentException("a cue of one's own needs words and a place: " + cue);
        }
    }

    public static Edit of(String cue) {
        return new Edit(cue, Map.of(), Traits.NONE, Optional.empty());
    }

    /** A new cue. */
    public static Edit own(String key, Place place, Cue.Kind kind, Map<String, String> words) {
        return new Edit(key, words, Traits.NONE.with(kind), Optional.of(place));
    }

    public static boolean isOwn(String cue) {
        return cue.startsWith(OWN);
    }

    public boolean isOwn() {
        return isOwn(cue);
    }

    boolean isNothing() {
        return words.isEmpty() && traits.equals(Traits.NONE) && place.isEmpty();
    }

    public Edit saying(String language, String text) {
        Map<String, String> more = new TreeMap<>(words);
        more.put(language, text);
        return new Edit(cue, more, traits, place);
    }

    public Edit with(Traits other) {
        return new Edit(cue, words, other, place);
    }

    public Edit at(Place other) {
        return new Edit(cue, words, traits, Optional.of(other));
    }
}
