package hobside.talk.paper;

import hobside.food.PriceList;
import hobside.ledger.Figure;
import hobside.ledger.Till;
import hobside.measure.Range;
import hobside.talk.Stand;
import hobside.talk.TalkWords;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the handout says of money: saved or not, what the saving buys in whole packs, and where the prices come from. */
final class HandoutMoney {

    private final Stand stand;
    private final Market market;
    private final Words words;
    private final TalkWords said;

    HandoutMoney(Stand stand, Market market) {
        this.stand = stand;
        this.market = market;
        this.words = stand.words();
        this.said = TalkWords.of(stand);
    }

    private String say(String key, Map<String, String> gaps) {
        return words.say("paper.money." + key, gaps);
    }

    private String money(double minor) {
        return said.money(new Figure(Range.exactly(minor), false));
    }

    List<String> sentences() {
        Purse purse = Purse.of(stand);
        if (!purse.known()) {
            return List.of(say("unknown", Map.of()), source());
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(paid(purse) + " " + kept(purse));
        Optional<Tills> tills = tills(purse);
        long left = Math.min(purse.saved(), tills.map(Tills::saved).orElse(purse.saved()));
        if (left > 0) {
            sentences.add(buys(left));
        }
        sentences.add((tills.map(this::told).orElse("") + " " + source()).strip());
        return sentences;
    }

    /** What is paid at the till before and now, in minor coins. */
    private record Tills(long was, long now) {

        long saved() {
            return was - now;
        }
    }

    private String paid(Purse purse) {
        Map<String, String> gaps = Map.of("was", money((double) purse.was()), "now", money((double) purse.now()), "n", Long.toString(purse.plates()));
        return say(purse.more() ? "shared" : "pot", gaps);
    }

    private String kept(Purse purse) {
        return purse.saved() == 0 ? say("same", Map.of())
                : say(purse.saved() > 0 ? "less" : "more", Map.of("money", money((double) Math.abs(purse.saved()))));
    }

    private String buys(long saved) {
        List<Market.Buy> buys = market.buys(saved);
        if (buys.isEmpty()) {
            return say("too-little", Map.of());
        }
        List<String> packs = buys.stream().map(buy -> say("pack", Map.of("what", said.shopping(buy.food(), buy.pack().size()),
                "money", money((double) buy.pack().price().minor())))).toList();
        long sum = buys.stream().mapToLong(buy -> buy.pack().price().minor()).sum();
        String listed = String.join("; ", packs);
        return packs.size() == 1 ? say("buys-one", Map.of("packs", listed)) : say("buys", Map.of("packs", listed, "sum", money((double) sum)));
    }

    /** At the till only whole packs are sold. Nothing where more plates are filled, for then the two are no pair, or where a price is missing. */
    private Optional<Tills> tills(Purse purse) {
        Till before = Till.of(stand.pots().before(), market.prices());
        Till after = Till.of(stand.pots().after(), market.prices());
        boolean pair = !purse.more() && before.unpriced().isEmpty() && after.unpriced().isEmpty();
        return pair ? Optional.of(new Tills(Math.round(before.paid()), Math.round(after.paid()))) : Optional.empty();
    }

    private String told(Tills tills) {
        return say(tills.was() == tills.now() ? "till-same" : "till", Map.of("was", money((double) tills.was()), "now", money((double) tills.now())));
    }

    private String source() {
        PriceList.Heading heading = market.prices().heading();
        return say(heading.invented() ? "source-invented" : "source", Map.of("place", heading.place(), "date", heading.date()));
    }
}
