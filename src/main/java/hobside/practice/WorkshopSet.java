package hobside.practice;

import java.util.List;

/**
 * What a trainer has prepared for a group.
 *
 * @param minutes how long it is meant to take for each; 0 when that is left open
 * @param language the code of the language it is done in
 */
public record WorkshopSet(String title, Wanted wanted, int minutes, String language) {

    /**
     * What is practised; an empty list leaves it open.
     *
     * @param dishes the names of their files
     * @param level 1 to 5; 0 to follow each trainee
     */
    public record Wanted(List<Kind> kinds, List<String> topics, List<String> dishes, int level) {

        public static final Wanted ANYTHING = new Wanted(List.of(), List.of(), List.of(), 0);

        public Wanted {
            kinds = List.copyOf(kinds);
            topics = List.copyOf(topics);
            dishes = List.copyOf(dishes);
            if (level < 0 || level > Label.HARDEST) {
                throw new IllegalArgumentException("no level: " + level);
            }
        }

        public boolean allows(Card card) {
            return (kinds.isEmpty() || kinds.contains(card.kind())) && (topics.isEmpty() || topics.contains(card.topic()));
        }

        public boolean allowsDish(String dish) {
            return dishes.isEmpty() || dishes.contains(dish);
        }
    }

    public WorkshopSet {
        if (minutes < 0) {
            throw new IllegalArgumentException("no length: " + minutes + " minutes");
        }
    }
}
