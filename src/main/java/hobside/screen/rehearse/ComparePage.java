package hobside.screen.rehearse;

import hobside.screen.Lines;
import hobside.screen.Screen;
import hobside.screen.TextWidth;
import hobside.screen.live.Minutes;
import hobside.screen.read.ReadScreen;
import hobside.stage.run.Compared;
import hobside.stage.run.Run;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** The runs of a talk side by side: a row a part, a column a run, and how far they lie apart. */
final class ComparePage {

    private static final int COLUMN = 7;
    private static final int LABEL_LEAST = 24;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final Compared compared;
    private final int width;
    private final int first;

    private ComparePage(Compared compared, int width) {
        this.compared = compared;
        this.width = width;
        int shown = Math.max(1, (width - LABEL_LEAST) / COLUMN - 2);
        this.first = Math.max(0, compared.runs().size() - shown);
    }

    static Screen of(Screen back, Compared compared) {
        return ReadScreen.page(back, "Runs side by side", width -> new ComparePage(compared, width).lines());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        List<String> heads = new ArrayList<>(List.of("PLAN"));
        for (int i = first; i < compared.runs().size(); i++) {
            heads.add("RUN " + (i + 1));
        }
        heads.add("SPREAD");
        lines.add(row("PART", heads));
        compared.rows().forEach(row -> lines.add(row(row)));
        lines.add("");
        if (first > 0) {
            lines.add("The last " + (compared.runs().size() - first) + " of " + compared.runs().size() + " runs are shown.");
        }
        for (int i = first; i < compared.runs().size(); i++) {
            lines.add("Run " + (i + 1) + ": " + when(compared.runs().get(i)));
        }
        lines.addAll(Lines.wrap("A dash: that part was not reached. Spread: from the shortest to the longest time.", width));
        return lines;
    }

    private static String when(Run.Head head) {
        return (head.isLive() ? "live, " : "rehearsal, ") + DAY.format(Instant.ofEpochMilli(head.begunAt()).atZone(ZoneId.systemDefault()));
    }

    private String row(Compared.Row row) {
        List<String> cells = new ArrayList<>(List.of(clock(row.planned())));
        for (OptionalInt taken : row.taken().subList(first, row.taken().size())) {
            cells.add(taken.isPresent() ? clock(taken.getAsInt()) : "-");
        }
        cells.add(row.spread() == 0 ? "" : clock(row.spread()));
        return row(row.heading(), cells);
    }

    private static String clock(int seconds) {
        return Minutes.of(seconds * 1_000L);
    }

    private String row(String label, List<String> cells) {
        int room = width - cells.size() * COLUMN;
        StringBuilder line = new StringBuilder(TextWidth.pad(Lines.fit(label, room - 1), room));
        cells.forEach(cell -> line.append(" ".repeat(Math.max(0, COLUMN - cell.length()))).append(cell));
        return line.toString();
    }
}
