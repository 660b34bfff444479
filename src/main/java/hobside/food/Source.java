package hobside.food;

import java.util.List;
import java.util.Optional;

/**
 * Where the figures of a record come from: a table with its release, and the number of the row; or the panel of a packet.
 *
 * @param packet the panel as it was printed, when the figures of 100 g are worked out from it
 * @param overruled the checks that the user overruled, each with the reason
 */
public record Source(String table, String number, Optional<PacketLabel> packet, List<Doubt.Overruled> overruled) {

    public static final Source OWN = new Source("own record", "");

    /** The table of what is written down from packets. */
    public static final String PACKET = "packet label";

    public Source {
        overruled = List.copyOf(overruled);
    }

    public Source(String table, String number) {
        this(table, number, Optional.empty(), List.of());
    }

    /** The same source with the panel it was read from. */
    public Source with(PacketLabel label, List<Doubt.Overruled> reasons) {
        return new Source(table, number, Optional.of(label), reasons);
    }

    public String written() {
        return number.isEmpty() ? table : table + " no. " + number;
    }
}
