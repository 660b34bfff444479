package hobside.file.bring;

import hobside.file.InputProblem;
import hobside.food.Food;
import hobside.food.PriceList;
import java.util.List;

/**
 * What an importer found, before anything is written: what may be taken, what about it should be looked at, and what is wrong.
 *
 * @param file the name of what was read
 * @param told sentences about how it was read: letters, separator, decimal mark, columns left aside
 * @param noted what should be looked at before saying yes; at most {@link Notes#MOST}, the counts tell of all
 * @param faults what was left out, with line and remedy, the first fifty in full
 */
public record Review(String file, Goods goods, List<String> told, List<Noted> noted, List<InputProblem> faults, Counts counts) {

    public Review {
        told = List.copyOf(told);
        noted = List.copyOf(noted);
        faults = List.copyOf(faults);
    }

    /** Something to look at. The row is offered all the same, unless it is there already. */
    public record Noted(int line, String title, Mark mark, String why) {

        public String written() {
            return (line > 0 ? "line " + line + ": " : "") + title + ": " + why;
        }
    }

    /** Why something should be looked at. */
    public enum Mark {
        /** Its figures do not go together, or something had to be guessed. */
        DOUBTFUL,
        /** Another food has this name; both stand side by side. */
        SAME_NAME,
        /** Another food has this id; this one gets a new id. */
        SAME_ID,
        /** The very same is on the shelf and is not taken again. */
        ALREADY_THERE
    }

    /**
     * How many rows there were, and what became of them.
     *
     * @param read rows read; offered + already there + left out
     * @param doubtful of the offered, how many are marked doubtful
     * @param sameName of the offered, how many share a name with another food
     */
    public record Counts(int read, int offered, int doubtful, int sameName, int alreadyThere, int leftOut) {}

    /** What may be taken, and under which name it would be kept. */
    public sealed interface Goods {

        /** The name of the file it would be kept in, without folder and ending. */
        String name();

        boolean isEmpty();

        /** Foods of a small table: they become a file of foods that can be read and corrected by hand. */
        record Foods(String name, String group, List<Food> foods) implements Goods {

            public Foods {
                foods = List.copyOf(foods);
            }

            @Override
            public boolean isEmpty() {
                return foods.isEmpty();
            }
        }

        /** Foods of a large table: they become a pack, so that the start stays quick. Their ids begin with its name. */
        record Pack(String name, List<Food> foods) implements Goods {

            public Pack {
                foods = List.copyOf(foods);
            }

            @Override
            public boolean isEmpty() {
                return foods.isEmpty();
            }
        }

        record Prices(String name, PriceList list) implements Goods {

            @Override
            public boolean isEmpty() {
                return list.packs().isEmpty();
            }
        }

        record Recipe(String name, RecipeDraft draft) implements Goods {

            @Override
            public boolean isEmpty() {
                return draft.demo().dish().ingredients().isEmpty();
            }
        }
    }

    public boolean isEmpty() {
        return goods.isEmpty();
    }
}
