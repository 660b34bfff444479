package hobside.food;

import hobside.measure.Range;
import java.util.List;
import java.util.Optional;

/**
 * One food of the shelf: a composition per 100 g edible portion, with its measures, parts, source and warnings.
 *
 * <p>A cut or a tin is put together from what stays and what comes off: its composition is the mix (1−s)·lean + s·part. A food
 * without parts has its composition from the table.
 */
public final class Food {

    private final Label label;
    private final Food lean;
    private final List<Part> parts;
    private final Composition composition;
    private final Handling handling;

    private Food(Label label, Food lean, List<Part> parts, Composition composition, Handling handling) {
        this.label = label;
        this.lean = lean == null ? this : lean;
        this.parts = List.copyOf(parts);
        this.composition = composition;
        this.handling = handling;
    }

    public static Food whole(Label label, Composition composition, Handling handling) {
        return new Food(label, null, List.of(), composition, handling);
    }

    /** A cut from what is left when all parts are off, and the parts. Lean and parts have no parts of their own. */
    public static Food cut(Label label, Food lean, List<Part> parts, Handling handling) {
        double off = 0;
        for (Part part : parts) {
            off += part.share().high();
        }
        if (off >= 1 || parts.isEmpty()) {
            throw new IllegalArgumentException("the parts of " + label.id() + " must leave something: " + off);
        }
        return new Food(label, lean, parts, mix(lean, parts), handling);
    }

    private static Composition mix(Food lean, List<Part> parts) {
        Composition mixed = lean.composition;
        double off = 0;
        for (Part part : parts) {
            off += part.share().typical();
        }
        double soFar = 1 - off;
        for (Part part : parts) {
            double share = part.share().typical();
            mixed = Composition.mixed(mixed, share / (soFar + share), part.food().composition);
            soFar += share;
        }
        return mixed;
    }

    public String id() {
        return label.id();
    }

    public String name() {
        return label.name();
    }

    public Label label() {
        return label;
    }

    /** What is left when every part is off; the food itself when it has none. */
    public Food lean() {
        return lean;
    }

    public List<Part> parts() {
        return parts;
    }

    public Optional<Part> part(Part.Kind kind) {
        return parts.stream().filter(part -> part.kind() == kind).findFirst();
    }

    public Composition composition() {
        return composition;
    }

    public Handling handling() {
        return handling;
    }

    public double per100g(Nutrient nutrient) {
        return composition.orZero(nutrient);
    }

    /** The same cut with another share of one kind of part, as when the user has weighed it. Itself when it has no such part. */
    public Food withShare(Part.Kind kind, Range share) {
        if (part(kind).isEmpty()) {
            return this;
        }
        List<Part> others = parts.stream().map(part -> part.kind() == kind ? new Part(kind, part.food(), share) : part).toList();
        return cut(label, lean, others, handling);
    }

    /** True for oils, lard, ghee and the like, whose fat lies free in the pot. */
    public boolean isPureFat() {
        return per100g(Nutrient.FAT) >= 90;
    }

    /** Foods are alike when label, figures, parts and handling are: a food read again from its file is the same food. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Food food && isLike(food);
    }

    private boolean isLike(Food other) {
        boolean sameBase = lean == this ? other.lean == other : other.lean != other && lean.equals(other.lean);
        return sameBase && label.equals(other.label) && composition.equals(other.composition)
                && parts.equals(other.parts) && handling.equals(other.handling);
    }

    @Override
    public int hashCode() {
        return id().hashCode();
    }

    @Override
    public String toString() {
        return "food " + id();
    }
}
