package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Item;
import hobside.dish.Reason;
import hobside.food.Nutrient;
import hobside.guide.Component;
import hobside.ledger.Basis;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.measure.Range;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Writes the narrated script of a demo: welcome, what is needed, each change with what to say, do, show and take care of, the
 * board after it, the recap, what may be asked, and what to hand round. What was done to it by hand is laid over it.
 *
 * <p>Every figure comes from the ledger and is rounded as its range allows. Changes come in the order told; the steps of the
 * method stand where the kitchen needs them. All sentences are those of the language's words.
 */
public final class TalkWriter {

    /** An ingredient with at least this share of the saturated fat is worth a sentence of its own. */
    private static final double STANDS_OUT = 0.3;

    private static final int SHOW_SECONDS = 10;
    private static final int STEP_SECONDS = 20;
    private static final int TABLE_SECONDS = 120;

    private final Stand stand;
    private final Demo demo;
    private final Words words;
    private final Called called;
    private final Speech speech;
    private final Doing doing;
    private final Hob hob;
    private final CareList care;
    private final Sayings sayings;
    private final Figures figures;
    private final Map<String, String> whole;
    private int waits;

    private TalkWriter(Stand stand) {
        this.stand = stand;
        this.demo = stand.demo();
        this.words = stand.words();
        this.called = new Called(demo, words);
        this.speech = Speech.in(words);
        this.doing = new Doing(stand, called);
        this.hob = new Hob(stand, called);
        this.care = new CareList(stand);
        this.sayings = new Sayings(words);
        this.figures = new Figures(speech, stand.beside().currency());
        this.whole = whole();
    }

    public static Talk write(Stand stand) {
        return Edited.of(untouched(stand), stand.demo().script(), stand.words());
    }

    /** The talk before anything was done to it by hand; live figures are still gaps. */
    static Talk untouched(Stand stand) {
        return new TalkWriter(stand).write();
    }

    /** Every question that fits the demo with its answer, filled in: more than the talk writes out. */
    public static List<Cue> questions(Stand stand) {
        TalkWriter writer = new TalkWriter(stand);
        List<Cue> all = new Questions(stand, writer.called).all();
        Talk.Section section = writer.section(Talk.Part.QUESTIONS, "questions", "", all);
        return Edited.of(new Talk(new Talk.Front("", List.of()), List.of(section)), Script.UNTOUCHED, stand.words()).cues();
    }

    private Map<String, String> whole() {
        Map<String, String> all = new HashMap<>(called.ingredients());
        all.putAll(figures.whole(stand.ledger()));
        all.put("dish", called.dish());
        all.put("serves", Long.toString(Math.round(stand.pots().after().serves())));
        all.put("day-start", day(stand.ledger().start()));
        all.put("day-end", day(stand.ledger().whole().after()));
        return all;
    }

    private String day(Totals totals) {
        return stand.beside().guide().flatMap(guide -> guide.shareOf(Component.SATURATED, totals)).map(new DayShare(words)::spoken).orElse("");
    }

    private String say(String key) {
        return words.say("talk." + key);
    }

    /** A sentence with its live figures still open, so that it stays live when it is edited. */
    private String raw(String key) {
        return words.find("talk." + key).orElseThrow(() -> new IllegalArgumentException("no words for talk." + key));
    }

    private String say(String key, Map<String, String> gaps) {
        return words.say("talk." + key, gaps);
    }

    private Talk.Section section(Talk.Part part, String key, String heading, List<Cue> cues) {
        return Talk.Section.of(new Talk.Section.Head(part, key, heading), cues).knowing(whole);
    }

    private Talk write() {
        List<Talk.Section> sections = new ArrayList<>();
        sections.add(welcome());
        sections.add(bench());
        int number = 1;
        for (Step step : stand.ledger().steps()) {
            if (step.planned().on()) {
                wait(hob.before(step.planned().change().stage())).ifPresent(sections::add);
                sections.add(step.blocked().isPresent() ? aside(step) : change(step, number++));
            }
        }
        wait(hob.rest()).ifPresent(sections::add);
        sections.add(recap());
        sections.add(questions());
        sections.add(table());
        return new Talk(new Talk.Front(called.dish(), about()), sections);
    }

    private List<String> about() {
        List<String> about = new ArrayList<>();
        int minutes = demo.dish().method().stream().mapToInt(step -> step.minutes()).sum();
        about.add(serves() + (minutes == 0 ? "" : " " + say("about.cooking", Map.of("time", speech.minutes(minutes)))));
        DayShare share = new DayShare(words);
        stand.beside().guide().ifPresent(guide -> about.add(say("about.guide", Map.of("guide", share.named(guide.published()), "sentence", share.small(guide)))));
        if (!demo.note().isEmpty()) {
            about.add(say("about.note", Map.of("note", demo.note())));
        }
        if (!demo.script().glosses().isEmpty()) {
            about.add(say("about.names", Map.of("names", String.join(", ", demo.script().glosses().entrySet().stream()
                    .map(gloss -> called.bare(gloss.getKey()) + " = " + gloss.getValue()).toList()))));
        }
        return about;
    }

    private String serves() {
        long before = Math.round(stand.pots().before().serves());
        long after = Math.round(stand.pots().after().serves());
        return before == after ? words.count("talk.about.serves", Long.toString(before), Map.of("n", Long.toString(before)))
                : say("about.shared", Map.of("n", Long.toString(before), "m", Long.toString(after)));
    }

    private Talk.Section welcome() {
        List<Cue> cues = new ArrayList<>();
        cues.add(Cue.of("welcome/hello", Cue.Kind.SAY, (raw("welcome.hello") + " " + called.story()).strip()));
        cues.add(Cue.of("welcome/same", Cue.Kind.SAY, say("welcome.same")));
        cues.add(Cue.of("welcome/start", Cue.Kind.SAY, raw("welcome.start").strip()));
        biggest().ifPresent(said -> cues.add(Cue.of("welcome/most", Cue.Kind.SAY, said).may()));
        cues.add(show("welcome/board", say("welcome.board"), Cue.Needs.NOTHING));
        cues.addAll(care.atTheStart("welcome"));
        return section(Talk.Part.WELCOME, "welcome", say("heading.welcome"), cues).with(board(say("board.start"), stand.ledger().start()));
    }

    private static Cue show(String key, String words, Cue.Needs needs) {
        return Cue.of(key, Cue.Kind.SHOW, words).with(Cue.Details.SPOKEN.taking(SHOW_SECONDS).needing(needs)).may();
    }

    /** Where the largest part of the saturated fat comes from, if one ingredient stands out. */
    private Optional<String> biggest() {
        double all = stand.pots().before().contents().known(Nutrient.FASAT);
        Optional<Item> item = stand.pots().before().items().stream().max(Comparator.comparingDouble(TalkWriter::saturated));
        double share = all == 0 ? 0 : item.map(TalkWriter::saturated).orElse(0.0) / all;
        return share < STANDS_OUT ? Optional.empty()
                : item.map(most -> say(share >= 0.5 ? "welcome.most" : "welcome.largest",
                        Map.of("food", called.the(most.id()), "share", speech.share(Range.exactly(share)))));
    }

    private static double saturated(Item item) {
        return item.inDish().contents().known(Nutrient.FASAT);
    }

    private Talk.Board board(String caption, Totals now) {
        return new Boards(words, stand.beside().currency()).of(caption, stand.ledger().start(), now);
    }

    private Talk.Section bench() {
        Shopping shopping = new Shopping(stand, called);
        Map<String, Cue> cues = new LinkedHashMap<>();
        stand.pots().after().items().forEach(item -> list(cues, "bench/in:" + item.id(), Cue.Kind.DO, shopping.line(item)));
        Set<String> needs = new LinkedHashSet<>();
        told().map(change -> doing.of(change).needs()).forEach(need -> {
            needs.addAll(need.equipment());
            needs.addAll(need.props());
        });
        needs.add(say("bench.spoon"));
        needs.forEach(need -> list(cues, "bench/need:" + need, Cue.Kind.SHOW, need));
        List<Cue> all = new ArrayList<>(cues.values());
        all.addAll(care.atTheBench("bench"));
        return section(Talk.Part.BENCH, "bench", say("heading.bench"), all);
    }

    private static void list(Map<String, Cue> cues, String key, Cue.Kind kind, String words) {
        cues.put(key, Cue.of(key, kind, words).with(Cue.Details.SPOKEN.by(Cue.Who.HELPER)));
    }

    private Stream<Change> told() {
        return stand.ledger().steps().stream().filter(Step::counts).map(step -> step.planned().change());
    }

    private Optional<Talk.Section> wait(List<Cue> steps) {
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        String key = "hob-" + ++waits;
        List<Cue> cues = new ArrayList<>(care.atTheHob(key));
        steps.forEach(step -> cues.add(step.with(step.details().taking(STEP_SECONDS))));
        return Optional.of(section(Talk.Part.WAIT, key, say("heading.hob"), cues));
    }

    /** The key of the section of a change. */
    public static String key(Change change) {
        return "change:" + change.kind().word() + (change.of().isEmpty() ? "" : ":" + change.of());
    }

    private Talk.Section change(Step step, int number) {
        Change change = step.planned().change();
        String key = key(change);
        Doing.Hands hands = doing.of(change);
        Reason reason = Reason.of(change, demo.dish(), stand.beside().substitutes(), words);
        List<Cue> cues = new ArrayList<>();
        cues.add(Cue.of(key + "/why", Cue.Kind.SAY, say("opening." + opening(number), Map.of("title", called.title(change))) + " " + reason.why()));
        if (hob.isPast(change.stage())) {
            cues.add(Cue.of(key + "/kept-back", Cue.Kind.DO, say("change.kept-back")));
        }
        cues.addAll(care.ofChange(key, change));
        cues.add(Cue.of(key + "/do", Cue.Kind.DO, hands.act()).with(Cue.Details.SPOKEN.taking(hands.seconds()).needing(
                new Cue.Needs(hands.needs().equipment(), List.of()))));
        cues.add(show(key + "/show", hands.show(), new Cue.Needs(List.of(), hands.needs().props())));
        cues.add(Cue.of(key + "/effect", Cue.Kind.SAY, sayings.effect(step.told())));
        cues.add(Cue.of(key + "/not", Cue.Kind.SAY, say("change.not", Map.of("not", reason.not()))));
        if (!step.planned().note().isEmpty()) {
            cues.add(Cue.of(key + "/note", Cue.Kind.DO, say("change.note", Map.of("note", step.planned().note()))).may());
        }
        Map<String, String> known = new HashMap<>(whole);
        known.putAll(figures.of(step.told()));
        String heading = say("heading.change", Map.of("n", Integer.toString(number), "title", called.title(change)));
        return section(Talk.Part.CHANGE, key, heading, cues).knowing(known).with(board(say("board.after", Map.of("n", Integer.toString(number))), step.after()));
    }

    private String opening(int number) {
        if (number == 1) {
            return "first";
        }
        return number == told().count() ? "last" : number % 2 == 0 ? "next" : "then";
    }

    private Talk.Section aside(Step step) {
        Change change = step.planned().change();
        String words = say("change.aside", Map.of("reason", step.blocked().orElse("")));
        return section(Talk.Part.ASIDE, key(change), say("heading.aside", Map.of("title", called.title(change))),
                List.of(Cue.of(key(change) + "/aside", Cue.Kind.DO, words)));
    }

    private Talk.Section recap() {
        List<Cue> cues = new ArrayList<>();
        boolean none = told().findAny().isEmpty();
        cues.add(Cue.of("recap/was", Cue.Kind.SAY, raw("recap.was").replace("{all-share}", share()) + " {day-end}"));
        most().ifPresent(step -> cues.add(Cue.of("recap/most", Cue.Kind.SAY, say("recap.most", Map.of("title", called.title(step.planned().change())))).may()));
        cues.add(Cue.of("recap/beside", Cue.Kind.SAY, sayings.beside(stand.ledger().whole())));
        if (Sayings.isWorthSpoons(stand.ledger().whole())) {
            cues.add(show("recap/spoons", raw("recap.spoons"), new Cue.Needs(List.of(), List.of(say("bench.spoon")))));
        }
        cues.add(Cue.of("recap/still", Cue.Kind.SAY, raw("recap.still") + (none ? "" : " " + say("recap.home"))));
        cues.add(Cue.of("recap/ask", Cue.Kind.ASK, say(none ? "recap.ask-none" : "recap.ask")));
        return section(Talk.Part.RECAP, "recap", say("heading.recap"), cues).with(board(say("board.end"), stand.ledger().whole().after()));
    }

    private String share() {
        double share = stand.ledger().whole().savedShare(Nutrient.FASAT, Basis.SERVE).typical();
        if (Math.abs(share) < 0.03) {
            return raw("recap.same");
        }
        if (share > 0.97) {
            return raw("recap.gone");
        }
        return raw(share < 0 ? "recap.more" : "recap.less").replace("{share}", "{all-share}");
    }

    /** The step that saved most, as told. */
    private Optional<Step> most() {
        return stand.ledger().steps().stream().filter(Step::counts).filter(step -> saved(step) >= 0.5).max(Comparator.comparingDouble(TalkWriter::saved));
    }

    private static double saved(Step step) {
        return step.told().saved(Nutrient.FASAT, Basis.SERVE).typical();
    }

    private Talk.Section questions() {
        List<Cue> all = new Questions(stand, called).all();
        return section(Talk.Part.QUESTIONS, "questions", say("heading.questions"), all.subList(0, Math.min(all.size(), 2 * Questions.ASKED)));
    }

    private Talk.Section table() {
        List<Cue> cues = new ArrayList<>();
        cues.add(Cue.of("table/serve", Cue.Kind.DO, say("table.serve")).with(Cue.Details.SPOKEN.taking(TABLE_SECONDS)));
        cues.addAll(care.atTheTable("table"));
        return section(Talk.Part.TABLE, "table", say("heading.table"), cues);
    }
}
