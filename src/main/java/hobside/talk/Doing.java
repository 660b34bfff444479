package hobside.talk;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Item;
import hobside.dish.MorePeople;
import hobside.dish.Pot;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.measure.Amount;
import hobside.measure.Range;
import hobside.words.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the hands do and show for each kind of change, with the amounts of this pot. */
final class Doing {

    private final Stand stand;
    private final Called called;
    private final Words words;
    private final Speech speech;

    Doing(Stand stand, Called called) {
        this.stand = stand;
        this.called = called;
        this.words = stand.words();
        this.speech = Speech.in(words);
    }

    /** The Do and Show cues of a change, how many seconds the hands need, and what has to stand ready for it. */
    record Hands(String act, String show, int seconds, Cue.Needs needs) {}

    Hands of(Change change) {
        Map<String, String> gaps = gaps(change);
        String word = called.word(change);
        String act = counted(change).map(number -> words.count("talk.do." + word, number, gaps)).orElseGet(() -> words.say("talk.do." + word, gaps));
        String show = words.say("talk.show." + word + (pouredAll(change) ? "-all" : ""), gaps);
        return new Hands(change instanceof Dilute dilute ? act + " " + left(dilute) : act, show, seconds(change), needs(change, gaps));
    }

    private static Optional<String> counted(Change change) {
        if (change instanceof BulkOut bulk) {
            return Optional.of(Integer.toString(bulk.extraServes()));
        }
        return change instanceof MorePeople more ? Optional.of(Integer.toString(more.extra())) : Optional.empty();
    }

    private Map<String, String> gaps(Change change) {
        Map<String, String> gaps = new HashMap<>();
        if (!change.of().isEmpty()) {
            gaps.put("food", called.the(change.of()));
            gaps.put("bare", called.bare(change.of()));
            gaps.put("usual", usual(change.of()));
        }
        counted(change).ifPresent(number -> gaps.put("n", number));
        gaps.put("thrown", speech.about(grams(thrown(change))));
        gaps.put("poured", speech.about(grams(poured(change))));
        gaps.putAll(ofKind(change));
        return gaps;
    }

    private Map<String, String> ofKind(Change change) {
        if (change instanceof Dilute dilute) {
            return Map.of("water", millilitres(dilute.water().value()), "poured", millilitres(dilute.poured().value()));
        }
        if (change instanceof Swap swap) {
            return Map.of("new", called.whole(swap.food()), "amount", called.amount(swap.quantity().amount()));
        }
        if (change instanceof CutDown less) {
            return Map.of("less", less(less));
        }
        if (change instanceof CookAnotherWay way) {
            return Map.of("method", words.say("talk.method." + way.method().word()));
        }
        if (change instanceof SmallerServe smaller) {
            return Map.of("share", speech.share(Range.exactly(smaller.share())));
        }
        return change instanceof Add add ? Map.of("amount", called.amount(add.ingredient().quantity().amount()))
                : change instanceof BulkOut bulk ? Map.of("amount", called.amount(bulk.ingredient().quantity().amount())) : Map.of();
    }

    /** Hands time on stage, in seconds, beside what is said. Common practice, no source: rehearsals put measured times in their place. */
    private static int seconds(Change change) {
        return switch (change.kind()) {
            case TRIM -> 90;
            case SKIN_OFF, POUR_OFF -> 60;
            case SKIM -> 45;
            case DILUTE, BULK_OUT -> 40;
            case DRAIN, RINSE, CUT_DOWN, COOK_ANOTHER_WAY -> 30;
            case SWAP, ADD, SMALLER_SERVE, MORE_PEOPLE -> 20;
            case LEAVE_OUT -> 10;
        };
    }

    private Cue.Needs needs(Change change, Map<String, String> gaps) {
        return switch (change.kind()) {
            case TRIM -> things(List.of("knife"), List.of("scale"), gaps);
            case SKIN_OFF -> things(List.of("grip"), List.of("plate"), gaps);
            case DRAIN -> things(List.of(), List.of("sieve-bowl"), gaps);
            case RINSE -> things(List.of("sieve"), List.of(), gaps);
            case DILUTE -> things(List.of(), List.of("jug"), gaps);
            case SWAP -> things(List.of(), List.of("beside"), gaps);
            case CUT_DOWN -> things(List.of(), List.of("two-bowls"), gaps);
            case BULK_OUT, MORE_PEOPLE -> things(List.of(), List.of("plates"), gaps);
            case POUR_OFF -> things(List.of("paper"), List.of("jar"), gaps);
            case SKIM -> things(List.of("chilled", "slotted"), List.of(), gaps);
            case SMALLER_SERVE -> things(List.of(), List.of("ladles"), gaps);
            case LEAVE_OUT, ADD, COOK_ANOTHER_WAY -> Cue.Needs.NOTHING;
        };
    }

    private Cue.Needs things(List<String> equipment, List<String> props, Map<String, String> gaps) {
        return new Cue.Needs(named(equipment, gaps).toList(), named(props, gaps).toList());
    }

    private Stream<String> named(List<String> needs, Map<String, String> gaps) {
        return needs.stream().map(need -> words.say("talk.need." + need, gaps));
    }

    private String usual(String id) {
        return stand.pots().before().item(id).map(item -> called.amount(item.origin().quantity().amount())).orElse("0");
    }

    /** In the cook's own unit where that is a handy amount, such as half a cup. */
    private String less(CutDown change) {
        return stand.pots().before().item(change.of()).map(item -> called.amount(item.origin().quantity().amount().times(change.keep()))).orElse("0");
    }

    private static String grams(double grams) {
        return Amount.grams((double) (grams >= 100 ? Math.round(grams / 10) * 10 : Math.round(grams))).written();
    }

    /** What came off: from the pot, so that it is the same figure as in the ledger. */
    private double thrown(Change change) {
        return item(stand.pots().after(), change).map(item -> Math.max(0, item.thrown().grams() - item.ran().grams() + item.loose().grams())).orElse(0.0);
    }

    private double poured(Change change) {
        return item(stand.pots().after(), change).map(item -> item.ran().grams() - item.loose().grams()).orElse(0.0);
    }

    private static Optional<Item> item(Pot pot, Change change) {
        return pot.item(change.of());
    }

    /** Less than this many millilitres in the jug is nothing left. */
    private static final double A_DROP = 5;

    private boolean pouredAll(Change change) {
        return change instanceof Dilute dilute && leftOf(dilute) < A_DROP;
    }

    private double leftOf(Dilute dilute) {
        double concentrate = stand.pots().before().item(dilute.of()).map(before -> Dilute.volume(before) * usedOf(dilute.of())).orElse(0.0);
        return Math.max(0, concentrate + dilute.water().value() - dilute.poured().value());
    }

    private String left(Dilute dilute) {
        return pouredAll(dilute) ? words.say("talk.do.dilute-all") : words.say("talk.do.dilute-left", Map.of("left", millilitres(leftOf(dilute))));
    }

    /** The share of the usual amount that is taken in hand at all, before some of it is kept back. */
    private double usedOf(String id) {
        double usual = stand.demo().dish().ingredient(id).map(old -> old.quantity().asBought().value()).orElse(0.0);
        return stand.pots().after().item(id).map(item -> usual == 0 ? 1 : (item.bought() + item.keptBack()) / usual).orElse(1.0);
    }

    /** In cups where that is a handy amount, with the millilitres beside it. */
    private String millilitres(double millilitres) {
        double cups = millilitres / stand.demo().dish().serving().spoons().cup().value();
        boolean handy = cups > 0.2 && Math.abs(cups * 4 - Math.rint(cups * 4)) < 0.04;
        String plain = words.language().number(Long.toString(Math.round(millilitres / 10) * 10)) + " ml";
        return handy ? called.amount(Amount.of(Math.rint(cups * 4) / 4, "cup")) + " (" + plain + ")" : plain;
    }
}
