package hobside.practice.rubric;

import hobside.talk.check.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import hobside.words.Words;

/** One answer as its judges see it. */
record Sight(Subject subject, Spotter spotter, Heard heard, List<Finding> truth) {

    /** How sure the rubric is of a mark, from what it rests on. From memory of marking by hand; not measured. */
    static final double COUNTED = 1;
    static final double CLEAR = 0.9;
    static final double LIKELY = 0.75;
    static final double THIN = 0.5;

    Words words() {
        return subject.stand().words();
    }

    String say(String key) {
        return words().say("practice." + key);
    }

    String say(String key, Map<String, String> gaps) {
        return words().say("practice." + key, gaps);
    }

    boolean has(String key) {
        return spotter.has(key, heard);
    }

    /** The words that stand for a concept, with the reason why they count. */
    Optional<Found> found(String key, String why) {
        return spotter.first(key, heard).map(span -> heard.text().found(span[0], span[1], say("found." + why)));
    }

    List<Found> all(String key, String why) {
        return spotter.all(key, heard).stream().map(span -> heard.text().found(span[0], span[1], say("found." + why))).toList();
    }

    /** The first of these concepts that is there. */
    Optional<Found> firstOf(List<String> keys, String why) {
        return keys.stream().map(key -> found(key, why)).flatMap(Optional::stream).findFirst();
    }

    boolean hasGroup(String group) {
        return heard.has(spotter.slot("@" + group));
    }

    /** Whether it is about fat, salt, energy or cost at all. */
    boolean isTopical() {
        return hasGroup("fat") || hasGroup("salt") || hasGroup("energy");
    }

    Judged judged(Point point, Mark mark, Ground ground) {
        boolean full = mark == Mark.YES || mark == Mark.NONE;
        List<String> missing = full ? List.of() : ground.missing();
        return new Judged(point, mark, ground.found(), missing, say("how." + ground.how()), ground.certainty(), Optional.empty());
    }

    /** What a mark rests on. */
    record Ground(List<Found> found, List<String> missing, String how, double certainty) {

        static Ground of(List<Found> found, String how, double certainty) {
            return new Ground(found, List.of(), how, certainty);
        }

        Ground missing(String sentence) {
            List<String> more = new ArrayList<>(missing);
            more.add(sentence);
            return new Ground(found, more, how, certainty);
        }
    }
}
