package hobside.screen.packet;

import hobside.food.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One line of the form.
 *
 * @param label what stands in front of it
 * @param unit what stands behind it
 * @param hint what to write there
 * @param printed the figure of the panel that it holds; empty for the other lines
 */
record PacketRow(String label, String unit, String hint, Optional<Printed> printed) {

    static final PacketRow NAME = new PacketRow("name", "", "The plain name, then what tells it apart: \"oat biscuit, Quay brand\".", Optional.empty());
    static final PacketRow PER = new PacketRow("figures are for", "", "100 g, 100 ml, or the serving: 30 g, 250 ml. Figures for ml need the density below.", Optional.empty());
    static final PacketRow DENSITY = new PacketRow("density", "g per ml", "For what is poured or spooned: weigh 100 ml and divide by 100. Oil 0.92, milk 1.03. Blank: weights only.", Optional.empty());
    static final PacketRow ALLERGENS = new PacketRow("allergens", "", "Enter chooses from the list. Take them from the packet; it decides.", Optional.empty());
    static final PacketRow MEASURE = new PacketRow("one measure", "", "What one household measure weighs: \"slice 35 g\", \"tin, drained 240 g\". Blank: none.", Optional.empty());
    static final PacketRow SAVE = new PacketRow("Put it on the shelf", "", "Enter writes it down. It can be changed again.", Optional.empty());

    static final List<PacketRow> ALL = all();

    private static List<PacketRow> all() {
        List<PacketRow> rows = new ArrayList<>(List.of(NAME, PER));
        for (Printed each : Printed.values()) {
            rows.add(new PacketRow(each.label(), each.unit(), hint(each), Optional.of(each)));
        }
        rows.addAll(List.of(DENSITY, ALLERGENS, MEASURE, SAVE));
        return List.copyOf(rows);
    }

    private static String hint(Printed figure) {
        return switch (figure) {
            case KILOJOULES, KILOCALORIES -> "kJ or kcal, as printed; one of the two is enough, and both are checked against each other.";
            case FAT, SATURATES, SUGARS, PROTEIN -> "As printed. Blank means unknown, never none: write 0 when the packet says 0.";
            case CARBOHYDRATE -> "As printed in Europe, Australia and New Zealand: without fibre. For North America use the next line.";
            case TOTAL_CARBOHYDRATE -> "As printed in North America: fibre is counted in. Leave one of the two lines blank.";
            case FIBRE -> "With it, carbohydrate with its fibre is known too. Blank means unknown.";
            case SALT, SODIUM -> "Salt in g or sodium in mg; one of the two is enough (salt = sodium × 2.5).";
            case MONOUNSATURATES, POLYUNSATURATES, TRANS -> "Only if printed. Trans fat unknown means that some claims cannot be judged.";
            case CHOLESTEROL, ALCOHOL, WATER -> "Rarely printed. Blank means unknown; write 0 where there is surely none.";
        };
    }

    static PacketRow of(Printed figure) {
        return ALL.stream().filter(row -> row.printed().filter(figure::equals).isPresent()).findFirst().orElseThrow();
    }

    /** Whether something is typed into it. */
    boolean isTyped() {
        return !equals(ALLERGENS) && !equals(SAVE);
    }
}
