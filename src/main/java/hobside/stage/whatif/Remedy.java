package hobside.stage.whatif;

import hobside.ledger.Comparison;
import java.util.List;
import java.util.Optional;

/**
 * One way out when an ingredient is missing or spoilt, with what it does to the plan as it stands.
 *
 * @param label what is done, in a few words
 * @param place whether it is at hand
 * @param role whether it does the work of what is missing
 * @param effect from the planned dish to this one
 * @param allergens keys of allergens that it adds
 */
public record Remedy(Notion notion, String label, Place place, Role role, Comparison effect, List<String> allergens) {

    /** Where its food is: nothing else can be fetched in the middle of a demonstration. */
    public enum Place {
        NONE_NEEDED("needs nothing"),
        ON_THE_BENCH("on the bench"),
        NOT_ON_THE_BENCH("not on the bench");

        private final String words;

        Place(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public boolean isAtHand() {
            return this != NOT_ON_THE_BENCH;
        }
    }

    /**
     * Whether it does the work of the food in the dish, as far as the book of swaps knows.
     *
     * @param part the work, such as "frying fat"; empty when the book does not know
     * @param handling what changes in taste and handling; empty when the book does not know
     */
    public record Role(Kept kept, Optional<String> part, String handling) {

        static final Role UNKNOWN = new Role(Kept.UNKNOWN, Optional.empty(), "");

        /** "does its work: frying fat". */
        public String words() {
            return switch (kept) {
                case KEPT -> "does its work: " + part.orElse("");
                case UNKNOWN -> "the book does not know whether it does its work";
                case LOST -> part.map(work -> "its work is left undone: " + work).orElse("nothing takes its place");
            };
        }
    }

    /** The answer, best first. */
    public enum Kept {
        KEPT, UNKNOWN, LOST
    }

    /** How far it leads away from the dish: 1 with a food in its place, 2 without. */
    public int departure() {
        return role.kept() == Kept.LOST ? 2 : 1;
    }

    public Remedy {
        allergens = List.copyOf(allergens);
    }
}
