package hobside.talk.paper;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.food.Nutrient;
import hobside.food.PriceList;
import hobside.guide.Component;
import hobside.guide.Guide;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.talk.Stand;
import hobside.talk.TalkWords;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One page for the audience to take home: the dish before and after, how to do it, what it saves, what to buy, and what to take care of. */
public final class Handout {

    /** Changes whose amounts matter at home as much as their names. */
    private static final Set<ChangeKind> BY_AMOUNT = Set.of(ChangeKind.DILUTE, ChangeKind.CUT_DOWN, ChangeKind.ADD);

    /** What is said to the room only, or stands at the foot of the page. */
    private static final Set<String> NOT_FOR_HOME = Set.of("samples", "local-rules");

    /** Cautions whose first sentence is the caution, and whose second is about how to do it. */
    private static final Set<String> IN_SHORT = Set.of("hands", "allergen-card", "knife-work");

    /** So many lines of plain text are a page. */
    static final int PAGE = 66;

    /** How much is said of each thing. */
    private enum Detail {
        WHOLE,
        /** One sentence why. */
        SHORT,
        /** Cautions one after the other without a line of their own, and one sentence of how to do it. */
        DENSE
    }

    /** How much is put on the page: changes, lines of the shopping list, and how much is said of each. */
    private record Room(int changes, int toBuy, Detail detail) {}

    /** Where it would not fit, less is said of each thing; then fewer changes are told, those that did most, and then the list is cut. */
    private static final List<Room> ROOMS = List.of(new Room(8, 26, Detail.WHOLE), new Room(8, 26, Detail.SHORT), new Room(8, 26, Detail.DENSE),
            new Room(6, 20, Detail.DENSE), new Room(5, 16, Detail.DENSE), new Room(4, 14, Detail.DENSE), new Room(3, 8, Detail.DENSE));

    private final Room room;
    private final Stand stand;
    private final Market market;
    private final Words words;
    private final TalkWords said;
    private final List<Block> blocks = new ArrayList<>();

    private Handout(Stand stand, Market market, Room room) {
        this.room = room;
        this.stand = stand;
        this.market = market;
        this.words = stand.words();
        this.said = TalkWords.of(stand);
    }

    public static Sheet of(Stand stand, Market market) {
        Sheet sheet = of(stand, market, ROOMS.get(0));
        for (int i = 1; i < ROOMS.size() && lines(sheet) > PAGE; i++) {
            sheet = of(stand, market, ROOMS.get(i));
        }
        return sheet;
    }

    private static int lines(Sheet sheet) {
        return TextSheet.of(sheet).split("\n").length;
    }

    private static Sheet of(Stand stand, Market market, Room room) {
        Handout handout = new Handout(stand, market, room);
        handout.write();
        return new Sheet(new Sheet.Front(handout.said.dish(), stand.words().language().code(), Sheet.Look.ONE_PAGE), handout.blocks);
    }

    private String say(String key) {
        return words.say("paper.handout." + key);
    }

    private String say(String key, Map<String, String> gaps) {
        return words.say("paper.handout." + key, gaps);
    }

    private void write() {
        blocks.add(new Block.Paragraph(say("kitchen")));
        blocks.add(table());
        stand.beside().guide().ifPresent(guide -> blocks.add(new Block.Paragraph(said.guideSentence(guide))));
        blocks.add(new Block.Heading(say("how")));
        blocks.add(how());
        blocks.add(new Block.Heading(say("money")));
        money();
        blocks.add(new Block.Heading(say("shopping", Map.of("n", Long.toString(Math.round(stand.pots().after().serves()))))));
        blocks.add(new Block.Checks(shopping(), true));
        blocks.add(new Block.Heading(say("care")));
        blocks.add(care());
        blocks.add(new Block.Box("", List.of(say("closing")), false));
    }

    private Block care() {
        List<String> brief = said.cautions().stream().filter(care -> !NOT_FOR_HOME.contains(care.caution().key()))
                .map(care -> IN_SHORT.contains(care.caution().key()) ? first(care.brief()) : care.brief()).toList();
        return room.detail() == Detail.DENSE ? new Block.Paragraph(String.join(" ", brief)) : new Block.Lines(brief);
    }

    private Block table() {
        Totals before = stand.ledger().start();
        Totals after = stand.ledger().end();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(words.say("talk.board.saturated"), saturated(before), saturated(after)));
        stand.beside().guide().ifPresent(guide -> share(guide, before, after).ifPresent(rows::add));
        rows.add(List.of(words.say("talk.board.energy"), energy(before), energy(after)));
        rows.add(List.of(words.say("talk.board.cost"), said.money(before.used(Basis.SERVE)), said.money(after.used(Basis.SERVE))));
        return new Block.Table(List.of(say("serve"), say("before"), say("after")), rows, 2);
    }

    private String saturated(Totals totals) {
        return said.figure(Nutrient.FASAT, totals.of(Nutrient.FASAT, Basis.SERVE));
    }

    private String energy(Totals totals) {
        return said.figure(Nutrient.ENERC, totals.of(Nutrient.ENERC, Basis.SERVE)) + " = "
                + said.figure(Nutrient.ENERC_KCAL, totals.of(Nutrient.ENERC_KCAL, Basis.SERVE));
    }

    /** The share of a day by a guide, named with its country; left out when the guide has no such figure. */
    private Optional<List<String>> share(Guide guide, Totals before, Totals after) {
        Optional<Guide.Share> was = guide.shareOf(Component.SATURATED, before);
        Optional<Guide.Share> now = guide.shareOf(Component.SATURATED, after);
        if (was.isEmpty() || now.isEmpty()) {
            return Optional.empty();
        }
        boolean energy = was.get().isShareOfEnergy();
        String figure = said.local(number(was.get().line().figure()));
        String label = say(energy ? "share-energy" : "share-day", Map.of("guide", said.guide(guide), "figure", figure));
        return Optional.of(List.of(label, percent(was.get().part()), percent(now.get().part())));
    }

    private static String number(double figure) {
        return figure == Math.rint(figure) ? Long.toString(Math.round(figure)) : Double.toString(figure);
    }

    private static String percent(Figure part) {
        return (part.atLeast() ? "≥ " : "") + Math.round(part.typical() * 100) + " %";
    }

    private Block how() {
        List<Step> told = stand.ledger().steps().stream().filter(Step::counts).toList();
        List<String> lines = new ArrayList<>(most(told).stream().map(step -> how(step.planned().change())).toList());
        if (told.size() > room.changes()) {
            lines.add(say("how-more"));
        }
        return told.isEmpty() ? new Block.Paragraph(say("how-none")) : new Block.Lines(lines);
    }

    private List<Step> most(List<Step> told) {
        Set<Step> kept = new HashSet<>(told.stream().sorted(Comparator.comparingDouble(
                (Step step) -> -step.told().saved(Nutrient.FASAT, Basis.SERVE).typical())).limit(room.changes()).toList());
        return told.stream().filter(kept::contains).toList();
    }

    private String how(Change change) {
        String act = BY_AMOUNT.contains(change.kind()) ? said.act(change) : Words.capital(said.title(change)) + ".";
        String why = said.why(change);
        return (room.detail() == Detail.DENSE ? first(act) : act) + " " + (room.detail() == Detail.WHOLE ? why : first(why));
    }

    /** The first sentence of several. */
    private static String first(String sentences) {
        return sentences.split("(?<=[.!?])\\s+(?=[\\p{Lu}¿¡])", 2)[0];
    }

    private List<String> shopping() {
        List<String> all = stand.pots().after().items().stream().filter(item -> !PriceList.isFree(item.food())).map(said::toBuy).toList();
        List<String> lines = new ArrayList<>(all.subList(0, Math.min(room.toBuy(), all.size())));
        if (all.size() > room.toBuy()) {
            lines.add(say("shopping-more", Map.of("n", Integer.toString(all.size() - room.toBuy()))));
        }
        return lines;
    }

    private void money() {
        HandoutMoney money = new HandoutMoney(stand, market);
        money.sentences().forEach(sentence -> blocks.add(new Block.Paragraph(sentence)));
    }
}
