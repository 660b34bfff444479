package hobside.screen.offers;

import hobside.advice.Offer;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.TextWidth;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.BenchView;
import hobside.screen.bench.TotalsPane;
import hobside.talk.Written;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws the offers: a table of effects, and below it why and what it does not do for the one under the cursor. */
final class OffersView {

    private static final int BELOW = 8;
    private static final int COST = 12;
    private static final int ENERGY = 12;
    private static final int SATURATED = 10;

    private OffersView() {}

    static void draw(OffersScreen screen, Frame frame) {
        BenchView.title(screen.bench(), frame, "Bench");
        frame.put(2, 1, Lines.fit(screen.title(), frame.width() - (frame.width() < 76 ? 38 : 45)), Style.TITLE);
        int end = frame.width() - 2;
        frame.putRight(2, end, "cost", Style.QUIET);
        frame.putRight(2, end - COST, "energy", Style.QUIET);
        frame.putRight(2, end - COST - ENERGY, frame.width() < 76 ? "sat. fat" : "a serve: sat. fat", Style.QUIET);
        int room = frame.height() - BELOW - 4;
        int first = Lines.firstShown(screen.cursor(), screen.offers().size(), room);
        for (int i = 0; i < room && first + i < screen.offers().size(); i++) {
            Frame line = frame.part(new Area(3 + i, 0, 1, frame.width()));
            row(line, screen.offers().get(first + i), screen.bench().desk().study().books().prices().currency());
            Cursor.mark(line, first + i == screen.cursor());
        }
        int left = screen.offers().size() - first - room;
        if (left > 0) {
            frame.putRight(3 + room, end, left + " more below", Style.QUIET);
        }
        about(screen, frame);
        Keys.line(frame, Arrays.asList(OffersScreen.Action.values()));
    }

    private static void row(Frame line, Offer offer, Currency currency) {
        int end = line.width() - 2;
        int room = end - COST - ENERGY - SATURATED - 4;
        String title = TextWidth.of(offer.title()) <= room ? offer.title() : offer.brief();
        line.put(0, 3, Lines.fit(title, room), offer.blocked().isPresent() ? Style.QUIET : Style.PLAIN);
        if (offer.blocked().isPresent()) {
            line.putRight(0, end, "cannot be done here", Style.QUIET);
            return;
        }
        Figure cost = offer.effect().savedCost(Basis.SERVE);
        put(line, end, Written.moved(cost, currency), cost.range());
        Range energy = offer.effect().saved(Nutrient.ENERC, Basis.SERVE).range();
        put(line, end - COST, Written.moved(Nutrient.ENERC, energy), energy);
        Range saturated = offer.effect().saved(Nutrient.FASAT, Basis.SERVE).range();
        put(line, end - COST - ENERGY, Written.moved(Nutrient.FASAT, saturated), saturated);
    }

    private static void put(Frame line, int end, String words, Range saved) {
        line.putRight(0, end, words, TotalsPane.style(words, saved));
    }

    private static void about(OffersScreen screen, Frame frame) {
        int row = frame.height() - BELOW;
        frame.horizontal(row++, 0, frame.width() - 1);
        if (screen.current().isEmpty()) {
            for (String line : Lines.wrap("Nothing in the book of changes fits here: it brings little saturated fat to the pot. "
                    + "f looks for any food of the shelf instead.", frame.width() - 2)) {
                frame.put(row++, 1, line, Style.PLAIN);
            }
            return;
        }
        for (Said said : sentences(screen.current().get())) {
            row = put(frame, row, said);
        }
    }

    /** A sentence with the word that stands in front of it. */
    private record Said(String label, String words, Style style) {}

    private static List<Said> sentences(Offer offer) {
        List<Said> said = new ArrayList<>();
        offer.blocked().ifPresent(why -> said.add(new Said("Not now", why, Style.WARN)));
        said.add(new Said("Why", offer.reason().why(), Style.PLAIN));
        said.add(new Said("But", offer.reason().not(), Style.PLAIN));
        Range saved = offer.effect().saved(Nutrient.FASAT, Basis.SERVE).range();
        String range = Written.range(Nutrient.FASAT, saved);
        if (!range.isEmpty() && offer.blocked().isEmpty()) {
            said.add(new Said("Range", range + " g of saturated fat a serve; pot by pot it differs.", Style.QUIET));
        }
        return said;
    }

    private static int put(Frame frame, int row, Said said) {
        int at = row;
        for (String line : Lines.wrap(said.words(), frame.width() - 10)) {
            if (at < frame.height() - 1) {
                frame.put(at, 1, at == row ? said.label() : "", Style.STRONG);
                frame.put(at++, 9, line, said.style());
            }
        }
        return at;
    }
}
