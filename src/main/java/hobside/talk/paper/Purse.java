package hobside.talk.paper;

import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Ledger;
import hobside.talk.Stand;

/**
 * What the money of a pot comes to, in whole minor coins: paid before, and paid now, for as many plates as there are now. Where more
 * share the pot, the cost before is that of so many plates of the dish as it was; a smaller serve alone saves nothing in the pot.
 *
 * @param known false when a price is missing, for then nobody can tell
 * @param more whether more plates are filled than before
 */
record Purse(long was, long now, long plates, boolean more, boolean known) {

    static Purse of(Stand stand) {
        Ledger ledger = stand.ledger();
        Figure before = ledger.start().used(Basis.POT);
        Figure after = ledger.end().used(Basis.POT);
        double plates = stand.pots().after().serves();
        double times = plates / stand.pots().before().serves();
        return new Purse(Math.round(before.typical() * times), Math.round(after.typical()), Math.round(plates), Math.round(plates) != Math.round(plates / times),
                !before.atLeast() && !after.atLeast());
    }

    /** Negative when it costs more now. */
    long saved() {
        return was - now;
    }
}
