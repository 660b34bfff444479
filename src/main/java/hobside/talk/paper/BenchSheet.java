package hobside.talk.paper;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Item;
import hobside.dish.Stage;
import hobside.guide.Allergens;
import hobside.ledger.Step;
import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWords;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** For whoever sets out: what is done ahead, the trays, what has to be at hand, who does what, temperatures, and the allergen card. */
public final class BenchSheet {

    /** Foods with a caution of this kind go on the tray for raw foods. */
    private static final String RAW = "raw-";

    private static final String KEPT_BACK = "/kept-back";
    private static final String STEP = "step:";

    private final Talk talk;
    private final Stand stand;
    private final Words words;
    private final TalkWords said;
    private final List<Block> blocks = new ArrayList<>();

    private BenchSheet(Talk talk, Stand stand) {
        this.talk = talk;
        this.stand = stand;
        this.words = stand.words();
        this.said = TalkWords.of(stand);
    }

    public static Sheet of(Talk talk, Stand stand) {
        BenchSheet bench = new BenchSheet(talk, stand);
        bench.write();
        String title = stand.words().say("paper.bench.title", Map.of("dish", talk.title()));
        return new Sheet(new Sheet.Front(title, stand.words().language().code(), Sheet.Look.LARGE), bench.blocks);
    }

    private String say(String key) {
        return words.say("paper.bench." + key);
    }

    private void write() {
        checks("ahead", ahead());
        checks("raw", tray(true));
        checks("ready", tray(false));
        checks("equipment", needs(cue -> cue.details().needs().equipment()));
        Set<String> props = new LinkedHashSet<>(needs(cue -> cue.details().needs().props()));
        checks("props", List.copyOf(props));
        temperatures();
        blocks.add(new Block.Heading(say("times")));
        blocks.addAll(new Times(talk, stand).blocks());
        allergens();
    }

    private void checks(String key, List<String> items) {
        blocks.add(new Block.Heading(say(key)));
        blocks.add(items.isEmpty() ? new Block.Paragraph(say("nothing")) : new Block.Checks(items, false));
    }

    /** The steps of the kitchen before the pot goes on, what has to be cold or cooked already, and pieces that are kept back. */
    private List<String> ahead() {
        List<String> ahead = new ArrayList<>();
        talk.cues().stream().filter(this::isPreparing).forEach(cue -> ahead.add(cue.words()));
        told().stream().filter(change -> change.kind() == ChangeKind.SKIM).findFirst().ifPresent(change -> ahead.add(say("chilled")));
        for (Talk.Section section : talk.sections()) {
            if (section.cues().stream().anyMatch(cue -> cue.key().endsWith(KEPT_BACK))) {
                ahead.add(words.say("paper.bench.kept-back", Map.of("heading", section.heading())));
            }
        }
        ahead.add(say("finished"));
        return ahead;
    }

    private boolean isPreparing(Cue cue) {
        if (!cue.key().startsWith(STEP)) {
            return false;
        }
        int number = Integer.parseInt(cue.key().substring(STEP.length()));
        return number <= stand.demo().dish().method().size() && stand.demo().dish().method().get(number - 1).stage() == Stage.PREPARE;
    }

    private List<Change> told() {
        return stand.ledger().steps().stream().filter(Step::counts).map(step -> step.planned().change()).toList();
    }

    private List<String> tray(boolean raw) {
        return stand.pots().after().items().stream().filter(item -> isRaw(item) == raw).map(said::shopping).toList();
    }

    private static boolean isRaw(Item item) {
        return item.food().handling().warnings().cautions().stream().anyMatch(key -> key.startsWith(RAW));
    }

    private List<String> needs(Function<Cue, List<String>> which) {
        return talk.cues().stream().flatMap(cue -> which.apply(cue).stream()).distinct().toList();
    }

    private void temperatures() {
        List<List<String>> rows = said.cautions().stream().filter(care -> !care.temperatures().isEmpty())
                .map(care -> List.of(care.name(), care.temperatures().get(0), care.temperatures().get(care.temperatures().size() - 1))).toList();
        blocks.add(new Block.Heading(say("temperatures")));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(List.of(say("what"), say("lowest"), say("highest")), rows, 0));
        }
        blocks.add(new Block.Paragraph(say(rows.isEmpty() ? "no-temperatures" : "local-rule")));
    }

    /** A card of its own, to be stood on the table. */
    private void allergens() {
        Allergens allergens = Allergens.of(stand.demo().dish(), stand.demo().plan());
        List<String> lines = new ArrayList<>();
        lines.add(words.say("paper.card.after", Map.of("list", said.allergens(allergens.after()))));
        lines.add(words.say("paper.card.before", Map.of("list", said.allergens(allergens.before()))));
        if (!allergens.added().isEmpty()) {
            lines.add(words.say("paper.card.added", Map.of("list", said.allergens(allergens.added()))));
        }
        if (!allergens.gone().isEmpty()) {
            lines.add(words.say("paper.card.gone", Map.of("list", said.allergens(allergens.gone()))));
        }
        lines.add(words.say("paper.card.labels"));
        blocks.add(new Block.PageBreak());
        blocks.add(new Block.Heading(words.say("paper.card.heading")));
        blocks.add(new Block.Box(talk.title(), lines, true));
    }
}
