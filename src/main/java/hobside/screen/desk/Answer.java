package hobside.screen.desk;

import hobside.file.Practices;
import hobside.file.PriceFile;
import hobside.file.Slates;
import hobside.file.Study;
import hobside.food.Food;
import hobside.practice.Entry;
import hobside.stage.run.Happening;
import hobside.stage.run.Run;
import hobside.talk.Demo;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What comes back from the disk. */
public sealed interface Answer {

    /** Something that can be opened: a saved demo of the kitchen folder, or a dish. */
    record Choice(Kind kind, String name, String title) {}

    /** What sort of file a choice is. */
    enum Kind {
        DEMO,
        OWN_DISH,
        BUNDLED_DISH
    }

    /** It is on disk now. */
    record Stored(Desk.Kept kept, String words) implements Answer {}

    /** What can be opened, newest demos first; and the kitchen folder, fit to be shown. */
    record Choices(List<Choice> choices, String kitchen) implements Answer {}

    /**
     * A demo that has been opened.
     *
     * @param missing what of a damaged file could not be read, a sentence each; none for a sound one
     */
    record Opened(Demo demo, Desk.Kept kept, String words, List<String> missing) implements Answer {

        public Opened {
            missing = List.copyOf(missing);
        }

        public Opened(Demo demo, Desk.Kept kept, String words) {
            this(demo, kept, words, List.of());
        }
    }

    /** Something was being typed when the program was stopped; when, as it is written. */
    record Left(Slates.Left left, String when) implements Answer {}

    /** A step could not be put away: the work is in the program only, until it can be. */
    record NotKept(String words) implements Answer {}

    /**
     * The shelf has changed: what the program knows from now on. An own food that was changed comes with its old and its new
     * record, a new one with its record alone, a deleted one with the old alone.
     */
    record Shelved(Study study, Optional<Food> old, Optional<Food> fresh, String words) implements Answer {}

    /** The prices have changed: what the program knows from now on, and the list that was written, if it was one. */
    record Priced(Study study, Optional<PriceFile> list, String words) implements Answer {}

    /** It did not work; nothing on disk has changed. The sentence says what to do. */
    record Failed(String words) implements Answer {}

    /**
     * A run goes on from here: what has happened so far, and its zero in milliseconds since 1970, so that the time of a run at
     * {@code Woken.now} is {@code now.toEpochMilli() - zero}.
     *
     * @param troubles why it is not on the disk, or what of its journal could not be read; none when all is well
     */
    record Begun(Run run, long zero, List<String> troubles) implements Answer {

        public Begun {
            troubles = List.copyOf(troubles);
        }
    }

    /** It happened, with its time; and why it is only in memory, if it is. */
    record Happened(Happening happening, Optional<String> trouble) implements Answer {}

    /** The runs of a demo, the oldest first, and sentences about what could not be read. */
    record Runs(String demo, List<Run> runs, List<String> troubles) implements Answer {

        public Runs {
            runs = List.copyOf(runs);
            troubles = List.copyOf(troubles);
        }
    }

    /** The live run that was broken off; empty when there is none. */
    record BrokenOff(Optional<Run> run) implements Answer {}

    /**
     * What there is to practise with.
     *
     * @param demos the dishes and saved demos, by the names of their files
     */
    record Practised(Practices.Found found, Map<String, Demo> demos, List<Practices.Prepared> sets, Told told) implements Answer {

        /**
         * When it was looked at, and what there is to say.
         *
         * @param now milliseconds since 1970
         * @param words what was done, or what could not be read; empty when there is nothing to say
         */
        public record Told(long now, String words) {}

        public Practised {
            demos = Collections.unmodifiableMap(new LinkedHashMap<>(demos));
            sets = List.copyOf(sets);
        }
    }

    /** A line of practice that was logged; and why it is only in memory, if it is. */
    record Logged(Entry entry, Optional<String> trouble) implements Answer {}
}
