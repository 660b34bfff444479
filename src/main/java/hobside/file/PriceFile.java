package hobside.file;

import hobside.food.PriceList;
import java.util.Optional;

/**
 * A price list and the file it stands in.
 *
 * @param version the file of the user's with what it held when it was read; empty for a list that comes with the program
 */
public record PriceFile(PriceList list, Optional<Version> version) {

    /** The name the kitchen remembers it by; a list of the program goes by its place. */
    public String name() {
        return version.isPresent() ? version.get().name() : "bundled " + SafeName.of(list.heading().place());
    }

    public boolean isOwn() {
        return version.isPresent();
    }

    /** A list that is not on the disk yet. */
    public static PriceFile fresh(PriceList list) {
        return new PriceFile(list, Optional.of(Version.fresh(list.heading().place() + " " + list.heading().date())));
    }

    public PriceFile with(PriceList other) {
        return new PriceFile(other, version);
    }
}
