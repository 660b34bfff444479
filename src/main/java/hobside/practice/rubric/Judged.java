package hobside.practice.rubric;

import java.util.List;
import java.util.Optional;

/**
 * How one point was judged.
 *
 * @param found the words of the answer that counted
 * @param missing what would have been looked for, in sentences
 * @param how one sentence on how it was judged
 * @param certainty from 0 to 1: how often such a mark is that of a person who marks by hand; a guess, not a measured share
 * @param overruled the mark that a person set instead; empty when nobody did
 */
public record Judged(Point point, Mark mark, List<Found> found, List<String> missing, String how, double certainty, Optional<Mark> overruled) {

    public Judged {
        found = List.copyOf(found);
        missing = List.copyOf(missing);
        if (!(certainty >= 0 && certainty <= 1)) {
            throw new IllegalArgumentException("certainty goes from 0 to 1, found " + certainty);
        }
    }

    /** The mark that holds: a person's, where there is one. */
    public Mark holds() {
        return overruled.orElse(mark);
    }

    Judged overruledBy(Mark other) {
        return new Judged(point, mark, found, missing, how, certainty, Optional.of(other));
    }
}
