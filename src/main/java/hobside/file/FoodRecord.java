package hobside.file;

import hobside.food.Composition;
import hobside.food.Handling;
import hobside.food.Label;
import hobside.food.Part;
import hobside.measure.Range;
import java.util.List;
import java.util.Optional;

/**
 * A food as its file has it, before the foods it refers to are looked up: either with a composition of its own, or with a lean
 * and parts that are only named.
 *
 * @param place where it stands, for problems that come to light later
 */
record FoodRecord(Label label, Handling handling, Optional<Composition> composition, Optional<Ref> lean, List<PartRef> parts,
        Place place) {

    /** The id of another food, and where it is named. */
    record Ref(String id, Place place) {}

    /** A part that is named by its food's id. */
    record PartRef(Part.Kind kind, Ref food, Range share) {}

    /** A place in one of several files. */
    record Place(Problems problems, Where where, int line) {

        void fault(String found, Wanted wanted) {
            problems.add(where, line, found, wanted);
        }
    }

    String id() {
        return label.id();
    }
}
