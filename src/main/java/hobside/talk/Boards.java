package hobside.talk;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Totals;
import hobside.measure.Currency;
import hobside.measure.Range;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes the running board: figures of a serve now, and in words how far each has moved since the start. */
final class Boards {

    /** A number as {@link Written} writes it. */
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+(?:\\.\\d+)?");

    private final Words words;
    private final Currency currency;

    Boards(Words words, Currency currency) {
        this.words = words;
        this.currency = currency;
    }

    Talk.Board of(String caption, Totals start, Totals now) {
        Comparison since = new Comparison(start, now);
        List<Talk.Board.Line> lines = new ArrayList<>();
        lines.add(nutrient("saturated", Basis.SERVE, since));
        lines.add(energy(since));
        lines.add(line("cost", Written.money(now.used(Basis.SERVE), currency),
                moved(since.savedCost(Basis.SERVE).range(), Written.moved(since.savedCost(Basis.SERVE), currency))));
        lines.add(nutrient("pot", Basis.POT, since));
        return new Talk.Board(caption, lines);
    }

    private Talk.Board.Line line(String label, String now, String moved) {
        return new Talk.Board.Line(words.say("talk.board." + label), local(now), local(moved));
    }

    /** The numbers as this language writes them. */
    String local(String figures) {
        Matcher matcher = NUMBER.matcher(figures);
        return matcher.replaceAll(found -> Matcher.quoteReplacement(words.language().number(found.group().replace(",", ""))));
    }

    private Talk.Board.Line nutrient(String label, Basis basis, Comparison since) {
        return line(label, Written.figure(Nutrient.FASAT, since.after().of(Nutrient.FASAT, basis)), moved(Nutrient.FASAT, since, basis));
    }

    private Talk.Board.Line energy(Comparison since) {
        String both = Written.figure(Nutrient.ENERC, since.after().of(Nutrient.ENERC, Basis.SERVE)) + " = "
                + Written.figure(Nutrient.ENERC_KCAL, since.after().of(Nutrient.ENERC_KCAL, Basis.SERVE));
        return line("energy", both, moved(Nutrient.ENERC, since, Basis.SERVE));
    }

    private String moved(Nutrient nutrient, Comparison since, Basis basis) {
        Range saved = since.saved(nutrient, basis).range();
        return moved(saved, Written.moved(nutrient, saved));
    }

    /** "▼ 9.1 g" as "9.1 g less": words instead of signs, because a script is also read on paper and on plain terminals. */
    private String moved(Range saved, String signed) {
        return !Written.isMovement(signed) ? ""
                : words.say(saved.typical() > 0 ? "talk.board.less" : "talk.board.more", Map.of("x", signed.substring(2)));
    }
}
