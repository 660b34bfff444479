package hobside.screen.asked;

import hobside.food.Nutrient;
import hobside.guide.Allergens;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.TotalsPane;
import hobside.stage.whatif.ChangedWords;
import hobside.stage.whatif.Remedy;
import hobside.talk.Written;
import hobside.words.Words;
import java.util.List;

/** Draws what can be done about something missing: ranked, with its effect on a serve of the plan, and below it what the talk then says. */
final class MissingView {

    private static final int TOP = 2;
    private static final int BELOW = 10;
    private static final int COST = 11;
    private static final int FAT = 10;
    private static final int WIDE = 76;

    private final MissingScreen screen;
    private final Frame frame;

    private MissingView(MissingScreen screen, Frame frame) {
        this.screen = screen;
        this.frame = frame;
    }

    static void draw(MissingScreen screen, Frame frame) {
        boolean chosen = screen.found().isPresent();
        WhatIfView.title(frame, chosen ? "No " + screen.found().get().missing() : "Missing or spoilt: which ingredient?", screen.over());
        if (chosen) {
            new MissingView(screen, frame).remedies(screen.found().get());
        } else {
            screen.pick().draw(frame.part(new Area(TOP, 0, frame.height() - TOP - 3, frame.width())));
            frame.put(frame.height() - 2, 1, Lines.fit("What is spoilt goes out: do not taste it. Type the first letters, or use the arrows.", frame.width() - 2), Style.QUIET);
        }
    }

    private void remedies(MissingScreen.Found found) {
        int end = frame.width() - 2;
        frame.put(TOP, 3, frame.width() < WIDE ? "instead" : "instead, * on the bench; ! adds an allergen", Style.QUIET);
        frame.putRight(TOP, end, "cost", Style.QUIET);
        frame.putRight(TOP, end - COST, "sat. fat, a serve", Style.QUIET);
        int room = Math.max(4, Math.min(found.remedies().size(), frame.height() - TOP - 2 - BELOW));
        int first = Lines.firstShown(found.cursor(), found.remedies().size(), room);
        for (int i = 0; i < room && first + i < found.remedies().size(); i++) {
            Frame line = frame.part(new Area(TOP + 1 + i, 0, 1, frame.width()));
            row(line, found.remedies().get(first + i));
            Cursor.mark(line, first + i == found.cursor());
        }
        frame.horizontal(TOP + 1 + room, 0, frame.width() - 1);
        about(found, TOP + 2 + room);
    }

    private void row(Frame line, Remedy remedy) {
        int end = line.width() - 2;
        String mark = (remedy.place() == Remedy.Place.ON_THE_BENCH ? "*" : " ") + (remedy.allergens().isEmpty() ? " " : "!");
        line.put(0, 3, mark, remedy.allergens().isEmpty() ? Style.STRONG : Style.WARN);
        line.put(0, 6, Lines.fit(remedy.label(), end - COST - FAT - 8), remedy.place().isAtHand() ? Style.PLAIN : Style.QUIET);
        Figure cost = remedy.effect().savedCost(Basis.SERVE);
        put(line, end, Written.moved(cost, currency()), cost);
        Figure fat = remedy.effect().saved(Nutrient.FASAT, Basis.SERVE);
        put(line, end - COST, fat.atLeast() ? "unknown" : Written.moved(Nutrient.FASAT, fat.range()), fat);
    }

    private Currency currency() {
        return screen.over().bench().desk().study().books().prices().currency();
    }

    private static void put(Frame line, int end, String words, Figure saved) {
        line.putRight(0, end, words, TotalsPane.style(words, saved.range()));
    }

    private void about(MissingScreen.Found found, int from) {
        Remedy remedy = found.chosen();
        int row = from;
        if (!remedy.allergens().isEmpty()) {
            row = wrapped(row, "ADDS AN ALLERGEN: " + Allergens.listed(remedy.allergens()) + ".", Style.WARN, 1);
        }
        String place = switch (remedy.place()) {
            case NONE_NEEDED -> "Nothing to fetch";
            case ON_THE_BENCH -> "On the bench, if there is enough of it";
            case NOT_ON_THE_BENCH -> "Not on the bench: it would have to be fetched";
        };
        row = wrapped(row, place + "; " + remedy.role().words() + ". " + remedy.role().handling(), remedy.place().isAtHand() ? Style.STRONG : Style.WARN, 2);
        row = wrapped(row, frame.width() < WIDE ? "Order: allergens, at hand, its work, near, least fat." : "Order: no new allergen, at hand, does its work, near the dish, least sat. fat.",
                Style.QUIET, 1);
        words(found.words(), row);
    }

    private int wrapped(int from, String words, Style style, int most) {
        int row = from;
        List<String> lines = Lines.wrap(words, frame.width() - 2);
        for (int i = 0; i < Math.min(most, lines.size()); i++) {
            String line = i == most - 1 && lines.size() > most ? Lines.fit(lines.get(i) + Glyphs.ELLIPSIS, frame.width() - 2) : lines.get(i);
            frame.put(row++, 1, line, style);
        }
        return row;
    }

    /** Which cues change: old to new, as far as there is room; spoken ones first would break their order, so they stand as they come. */
    private void words(List<ChangedWords.Row> words, int from) {
        int last = frame.height() - 2;
        int row = from;
        frame.put(row++, 1, words.isEmpty() ? "No words of the talk change." : words.size() + (words.size() == 1 ? " cue" : " cues") + " of the talk change:", Style.HEADING);
        for (int i = 0; i < words.size(); i++) {
            if (row + 1 > last || row + 2 > last && i + 1 < words.size() && row + 1 > last - 1) {
                frame.putRight(last, frame.width() - 1, words.size() - i + " more", Style.QUIET);
                return;
            }
            row = changed(words.get(i), row);
        }
    }

    private int changed(ChangedWords.Row words, int from) {
        int row = from;
        String label = Words.capital(words.kind().word().replace('-', ' ')) + " ";
        int indent = 1 + TextWidth.of(label);
        frame.put(row, 1, label, Style.QUIET);
        int room = frame.width() - indent - 2;
        if (words.isNew() || words.isGone()) {
            frame.put(row++, indent, Lines.fit((words.isNew() ? "new: " + words.after() : "gone: " + words.before()), room), Style.PLAIN);
            return row;
        }
        Differing differing = Differing.of(words.before(), words.after(), room);
        frame.put(row++, indent, differing.before(), Style.QUIET);
        frame.put(row, indent - 2, String.valueOf(Glyphs.RIGHT), Style.QUIET);
        frame.put(row++, indent, differing.after(), Style.STRONG);
        return row;
    }
}
