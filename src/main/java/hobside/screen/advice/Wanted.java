package hobside.screen.advice;

import hobside.advice.Aim;
import hobside.file.Goals;

/** What is asked of advice: the page, the order of ranking, the goal as it was typed, and how it is to be reached. */
record Wanted(Tab tab, Rank rank, String goal, Aim aim) {

    /** By what the next change is ranked. */
    enum Rank {
        SAVED("saves most"),
        PER_COIN("saves most for each coin"),
        PER_MINUTE("saves most for each minute");

        private final String words;

        Rank(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        Rank next() {
            return values()[(ordinal() + 1) % values().length];
        }
    }

    static final Wanted FIRST = new Wanted(Tab.NEXT, Rank.SAVED, Goals.FIRST, Aim.LEAST_DEPARTURE);

    Wanted on(Tab other) {
        return new Wanted(other, rank, goal, aim);
    }

    Wanted by(Rank other) {
        return new Wanted(tab, other, goal, aim);
    }

    Wanted reaching(String words) {
        return new Wanted(Tab.BEST, rank, words, aim);
    }

    Wanted with(Aim other) {
        return new Wanted(Tab.BEST, rank, goal, other);
    }
}
