package hobside.talk;

import hobside.dish.Change;
import hobside.dish.Demo;
import hobside.dish.Item;
import hobside.dish.Names;
import hobside.dish.Reason;
import hobside.food.Nutrient;
import hobside.guide.Component;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.measure.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Writes the narrated script of a demo: welcome, what is needed, each change with what to say, do, show and take care of, the
 * board after it, the recap, and what to hand round.
 *
 * <p>Every figure comes from the ledger and is rounded as its range allows. Changes come in the order told; the steps of the
 * method stand where the kitchen needs them.
 */
public final class TalkWriter {

    private final Stand stand;
    private final Demo demo;
    private final Doing doing;
    private final Hob hob;
    private final CareList care;

    private TalkWriter(Stand stand) {
        this.stand = stand;
        this.demo = stand.demo();
        this.doing = new Doing(stand);
        this.hob = new Hob(stand);
        this.care = CareList.of(stand);
    }

    public static Talk write(Stand stand) {
        return new TalkWriter(stand).write();
    }

    private Talk write() {
        List<Talk.Section> sections = new ArrayList<>();
        sections.add(welcome());
        sections.add(bench());
        int number = 1;
        for (Step step : stand.ledger().steps()) {
            if (step.planned().on()) {
                hobSection(hob.before(step.planned().change().stage())).ifPresent(sections::add);
                sections.add(step.blocked().isPresent() ? blocked(step) : change(step, number++));
            }
        }
        hobSection(hob.rest()).ifPresent(sections::add);
        sections.add(recap());
        sections.add(handingRound());
        return new Talk(demo.dish().name(), about(), sections);
    }

    private List<String> about() {
        List<String> about = new ArrayList<>();
        int minutes = demo.dish().method().stream().mapToInt(step -> step.minutes()).sum();
        about.add(serves() + (minutes == 0 ? "" : " Cooking takes " + Spoken.minutes(minutes) + " in all."));
        stand.beside().guide().ifPresent(guide -> about.add("Held against: " + guide.published().named() + ". " + DayShare.small(guide)));
        if (!demo.note().isEmpty()) {
            about.add("Note: " + demo.note());
        }
        return about;
    }

    private String serves() {
        long before = Math.round(stand.pots().before().serves());
        long after = Math.round(stand.pots().after().serves());
        return before == after ? "For " + after + " serves." : "For " + before + " serves as it is cooked here, shared by " + after + " at the end.";
    }

    private Talk.Section welcome() {
        List<Cue> cues = new ArrayList<>();
        cues.add(Cue.say("Good day, everybody, and welcome. Today's dish is " + demo.dish().name() + ". " + demo.dish().heading().story()));
        cues.add(Cue.say(told().isEmpty() ? "It is a dish people love. Today we cook it just as it is, and look at what is in it."
                : "It is a dish people love, and it will still be that dish when we are done. We change it one small step at a time,"
                        + " and after each step we look at the board."));
        var start = stand.ledger().start().of(Nutrient.FASAT, Basis.SERVE);
        cues.add(Cue.say("As it is usually cooked here, one serve holds " + Spoken.atLeast(start, Spoken.grams(start.range())) + " of saturated fat. "
                + day(stand.ledger().start())));
        biggest().ifPresent(words -> cues.add(Cue.say(words)));
        cues.add(Cue.show("Point to the board: this is where we start."));
        cues.addAll(care.atTheStart());
        return new Talk.Section("Welcome", cues, Optional.of(board("At the start", stand.ledger().start())));
    }

    private String day(Totals totals) {
        return stand.beside().guide().flatMap(guide -> guide.shareOf(Component.SATURATED, totals))
                .map(DayShare::spoken).orElse("");
    }

    /** Where the largest part of the saturated fat comes from, if one ingredient stands out. */
    private Optional<String> biggest() {
        double all = stand.pots().before().contents().known(Nutrient.FASAT);
        Optional<Item> item = stand.pots().before().items().stream().max(Comparator.comparingDouble(TalkWriter::saturated));
        double share = all == 0 ? 0 : item.map(TalkWriter::saturated).orElse(0.0) / all;
        if (share < STANDS_OUT) {
            return Optional.empty();
        }
        String part = share >= 0.5 ? "Most of it comes from one thing, the " : "The largest part comes from one thing, the ";
        return item.map(most -> part + Names.brief(most.origin()) + ": " + Spoken.share(Range.exactly(share)) + " of it.");
    }

    /** An ingredient with at least this share of the saturated fat is worth a sentence of its own. */
    private static final double STANDS_OUT = 0.3;

    private static double saturated(Item item) {
        return item.inDish().contents().known(Nutrient.FASAT);
    }

    private Talk.Board board(String caption, Totals now) {
        return Boards.of(caption, stand.ledger().start(), now, stand.beside().currency());
    }

    private Talk.Section bench() {
        List<Cue> cues = new ArrayList<>();
        stand.pots().after().items().forEach(item -> cues.add(Cue.act(Shopping.line(item, demo.dish()))));
        Set<String> needs = new LinkedHashSet<>();
        told().forEach(change -> needs.addAll(doing.of(change).needs()));
        needs.add("a level teaspoon and a little oil in a glass, to show fat by the spoon");
        needs.forEach(need -> cues.add(Cue.show(need)));
        cues.addAll(care.atTheBench());
        return Talk.Section.of("What is needed", cues);
    }

    private List<Change> told() {
        return stand.ledger().steps().stream().filter(Step::counts).map(step -> step.planned().change()).toList();
    }

    private Optional<Talk.Section> hobSection(List<Cue> steps) {
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        List<Cue> cues = new ArrayList<>(care.atTheHob());
        cues.addAll(steps);
        return Optional.of(Talk.Section.of("At the hob", cues));
    }

    private Talk.Section change(Step step, int number) {
        Change change = step.planned().change();
        Doing.Hands hands = doing.of(change);
        Reason reason = Reason.of(change, demo.dish(), stand.beside().substitutes());
        Comparison told = step.told();
        List<Cue> cues = new ArrayList<>();
        cues.add(Cue.say(opening(number) + ", we " + title(change) + ". " + reason.why()));
        if (hob.isPast(change.stage())) {
            cues.add(Cue.act("In the kitchen this comes before what is on the hob by now. Do it on a piece that you have kept back, so that people can see it."));
        }
        cues.addAll(care.ofChange(change));
        cues.add(Cue.act(hands.act()));
        cues.add(Cue.show(hands.show()));
        cues.add(Cue.say(Sayings.saturated(told) + Sayings.sharing(told) + " " + Sayings.energyAndCost(told, stand.beside().currency())
                + Sayings.salt(told)));
        cues.add(Cue.say("And what does it not do? " + reason.not()));
        if (!step.planned().note().isEmpty()) {
            cues.add(Cue.act("Your note: " + step.planned().note()));
        }
        return new Talk.Section("Change " + number + ": " + title(change), cues, Optional.of(board("After change " + number, step.after())));
    }

    private String opening(int number) {
        int last = told().size();
        if (number == 1) {
            return "First";
        }
        return number == last ? "And last" : number % 2 == 0 ? "Next" : "Then";
    }

    private String title(Change change) {
        return Names.title(change, demo.dish(), demo.plan());
    }

    private Talk.Section blocked(Step step) {
        return Talk.Section.of("Left aside: " + title(step.planned().change()),
                List.of(Cue.act("Pass this one by. " + step.blocked().orElse(""))));
    }

    private Talk.Section recap() {
        Comparison whole = stand.ledger().whole();
        List<Cue> cues = new ArrayList<>();
        var share = whole.savedShare(Nutrient.FASAT, Basis.SERVE).range();
        cues.add(Cue.say("We began with " + Spoken.grams(whole.before().of(Nutrient.FASAT, Basis.SERVE).range()) + " of saturated fat on each plate. Now it is "
                + Spoken.grams(whole.after().of(Nutrient.FASAT, Basis.SERVE).range()) + ": " + Recap.share(share) + " " + day(whole.after())));
        Recap.most(stand.ledger()).ifPresent(step -> cues.add(Cue.say("The step that did most was to " + title(step.planned().change()) + ".")));
        cues.add(Cue.say(Sayings.energyAndCost(whole, stand.beside().currency()) + Sayings.salt(whole)));
        String spoons = Sayings.spoons(whole);
        if (!spoons.isEmpty()) {
            cues.add(Cue.show(spoons));
        }
        cues.add(Cue.say("It is still " + demo.dish().name() + ". Nothing is forbidden here."
                + (told().isEmpty() ? "" : " At home, take one of these steps and keep the rest as you like it.")));
        cues.add(Cue.ask(told().isEmpty() ? "What could be changed in it so that it is still our dish?"
                : "Which of these steps could you take in your own kitchen this week, and how would you explain it to a neighbour?"));
        return new Talk.Section("Looking back", cues, Optional.of(board("At the end", whole.after())));
    }

    private Talk.Section handingRound() {
        List<Cue> cues = new ArrayList<>();
        cues.add(Cue.act("Clear the table, then bring the finished dish to the front. Hand round small tastes, one or two bites, each with its own spoon."));
        cues.addAll(care.atTheTable());
        return Talk.Section.of("What to hand round", cues);
    }
}
