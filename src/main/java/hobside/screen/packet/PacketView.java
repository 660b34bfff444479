package hobside.screen.packet;

import hobside.food.Doubt;
import hobside.food.PacketLabel;
import hobside.food.Printed;
import hobside.guide.Allergens;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** Draws the form: its lines, what each comes to in 100 g, and below what is hard to believe or what to write in this line. */
final class PacketView {

    private static final int LABEL = 3;
    private static final int FIELD = 21;
    private static final int NUMBER = 9;
    private static final int BELOW = 7;

    private PacketView() {}

    static void draw(PacketScreen screen, Frame frame) {
        PacketReading reading = PacketReading.of(screen.form());
        List<Doubt> doubts = reading.doubts(screen.bench().desk().study().packetRule());
        frame.put(0, 1, title(screen.form()), Style.TITLE);
        frame.putRight(0, frame.width() - 1, "Shelf", Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        int room = frame.height() - BELOW - 2;
        int first = Lines.firstShown(screen.cursor(), PacketRow.ALL.size(), room);
        for (int i = 0; i < room && first + i < PacketRow.ALL.size(); i++) {
            PacketRow row = PacketRow.ALL.get(first + i);
            row(frame.part(new Area(2 + i, 0, 1, frame.width())), screen, row, beside(row, reading, doubts));
        }
        frame.horizontal(frame.height() - BELOW, 0, frame.width() - 1);
        below(screen, reading, doubts, frame);
        Keys.line(frame, Arrays.asList(PacketScreen.Action.values()));
    }

    private static String title(PacketForm form) {
        return form.origin().old().map(old -> "Change " + old.name())
                .orElse(form.origin().label().source().table().startsWith("copied") ? "A copy as a food of your own" : "A new food from its packet");
    }

    static String allergens(PacketForm form) {
        return form.allergens().isEmpty() ? "none chosen" : Allergens.listed(List.copyOf(new TreeSet<>(form.allergens())));
    }

    /** What stands behind a line, and how it looks. */
    private record Beside(String words, Style style) {}

    private static Beside beside(PacketRow row, PacketReading reading, List<Doubt> doubts) {
        if (reading.problems().containsKey(row) && !row.equals(PacketRow.NAME)) {
            return new Beside(Glyphs.LEFT + " cannot be read", Style.WARN);
        }
        if (doubts.stream().anyMatch(doubt -> PacketRow.of(doubt.about()).equals(row))) {
            return new Beside(Glyphs.LEFT + " look again", Style.WARN);
        }
        String hundred = row.printed().map(reading::inHundredGrams).filter(OptionalDouble::isPresent)
                .map(figure -> "= " + Written.number(figure.getAsDouble()) + " in 100 g").orElse("");
        return new Beside(hundred, Style.QUIET);
    }

    private static void row(Frame line, PacketScreen screen, PacketRow row, Beside beside) {
        boolean here = screen.row().equals(row);
        line.put(0, 1, here ? String.valueOf(Glyphs.POINTER) : " ", Style.STRONG);
        line.put(0, LABEL, row.label(), here ? Style.STRONG : Style.PLAIN);
        if (row.equals(PacketRow.ALLERGENS)) {
            line.put(0, FIELD, Lines.fit(allergens(screen.form()), line.width() - FIELD - 1), Style.PLAIN);
        } else if (row.isTyped()) {
            int width = row.printed().isPresent() || row.equals(PacketRow.DENSITY) || row.equals(PacketRow.PER) ? NUMBER : Math.min(40, line.width() - FIELD - 2);
            field(line, screen, row, width);
            int at = line.put(0, FIELD + width + 1, row.unit(), Style.QUIET);
            line.put(0, Math.max(at + 2, FIELD + NUMBER + 8), Lines.fit(beside.words(), line.width() - at - 3), beside.style());
        }
    }

    private static void field(Frame line, PacketScreen screen, PacketRow row, int width) {
        if (screen.row().equals(row)) {
            screen.form().typing(row).draw(line, 0, FIELD, width);
            return;
        }
        String text = screen.form().text(row);
        line.put(0, FIELD, Lines.fit(text, width), Style.PLAIN);
        if (text.isEmpty()) {
            line.put(0, FIELD, String.valueOf(Glyphs.MIDDLE_DOT).repeat(3), Style.QUIET);
        }
    }

    private static void below(PacketScreen screen, PacketReading reading, List<Doubt> doubts, Frame frame) {
        int row = frame.height() - BELOW + 1;
        for (Beside said : sentences(screen, reading, doubts)) {
            for (String line : Lines.wrap(said.words(), frame.width() - 2)) {
                if (row < frame.height() - 1) {
                    frame.put(row++, 1, line, said.style());
                }
            }
        }
    }

    /** The last word, then this line's own trouble or hint, then the doubts about other lines. */
    private static List<Beside> sentences(PacketScreen screen, PacketReading reading, List<Doubt> doubts) {
        List<Beside> said = new ArrayList<>();
        PacketRow row = screen.row();
        if (!screen.said().isEmpty()) {
            said.add(new Beside(screen.said(), Style.STRONG));
        } else if (reading.problems().containsKey(row) && !screen.form().text(row).isEmpty()) {
            said.add(new Beside(reading.problems().get(row), Style.WARN));
        }
        List<Doubt> here = doubts.stream().filter(doubt -> PacketRow.of(doubt.about()).equals(row)).toList();
        here.forEach(doubt -> said.add(new Beside(doubt.words(), Style.WARN)));
        if (said.isEmpty()) {
            said.add(new Beside(row.hint(), Style.QUIET));
        }
        doubts.stream().filter(doubt -> !here.contains(doubt)).forEach(doubt -> said.add(new Beside(doubt.words(), Style.WARN)));
        if (doubts.isEmpty() && screen.form().hasFigure() && screen.said().isEmpty()) {
            said.add(new Beside(checked(reading), Style.QUIET));
        }
        return said;
    }

    private static String checked(PacketReading reading) {
        boolean energy = reading.label().filter(label -> isEnergyChecked(label)).isPresent();
        return energy ? "The energy agrees with what it comes from, by the EU factors."
                : "The energy is checked once energy, fat, carbohydrate and protein are there.";
    }

    private static boolean isEnergyChecked(PacketLabel label) {
        boolean energy = label.of(Printed.KILOJOULES).isPresent() || label.of(Printed.KILOCALORIES).isPresent();
        boolean carbohydrate = label.of(Printed.CARBOHYDRATE).isPresent() || label.totalCarbohydrate().isPresent();
        return energy && carbohydrate && label.of(Printed.FAT).isPresent() && label.of(Printed.PROTEIN).isPresent();
    }
}
