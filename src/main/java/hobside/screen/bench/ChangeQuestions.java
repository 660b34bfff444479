package hobside.screen.bench;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Dish;
import hobside.dish.Drain;
import hobside.dish.Ingredient;
import hobside.dish.MorePeople;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Quantity;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.food.Food;
import hobside.food.Part;
import hobside.talk.Written;
import hobside.ledger.Ledger;
import hobside.ledger.Basis;
import hobside.food.Nutrient;
import hobside.measure.Amount;
import hobside.measure.Millilitres;
import hobside.measure.Range;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question.Reply;
import hobside.screen.ask.Question;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.IntFunction;

/** The questions the Bench asks about a change of the plan: how much, weighed or not. */
final class ChangeQuestions {

    private final Bench bench;
    private final int index;
    private final Change change;

    private ChangeQuestions(Bench bench, int index) {
        this.bench = bench;
        this.index = index;
        this.change = bench.demo().plan().changes().get(index).change();
    }

    /** Asks for whatever amounts a change has. */
    static Next edit(Bench bench, int index) {
        return new ChangeQuestions(bench, index).edit();
    }

    /** Asks what the scale showed. */
    static Next weigh(Bench bench, int index) {
        ChangeQuestions asking = new ChangeQuestions(bench, index);
        return asking.taken().isPresent() ? asking.askWeight()
                : Next.to(bench.saying("Nothing is taken off by this change that a scale could weigh. e edits its amounts."));
    }

    private Next edit() {
        return switch (change.kind()) {
            case TRIM, SKIN_OFF, DRAIN, POUR_OFF, SKIM -> askShare();
            case DILUTE -> askWater((Dilute) change);
            case SWAP -> swap((Swap) change);
            case ADD -> add((Add) change);
            case BULK_OUT -> bulk((BulkOut) change);
            case CUT_DOWN -> askPart("How much of it still goes in?", ((CutDown) change).keep(), keep -> new CutDown(change.of(), keep));
            case SMALLER_SERVE -> askPart("How large is the smaller serve, of an even one?", ((SmallerServe) change).share(), SmallerServe::new);
            case MORE_PEOPLE -> askWhole("How many more share the pot?", ((MorePeople) change).extra(), MorePeople::new);
            case COOK_ANOTHER_WAY -> askWay();
            case LEAVE_OUT, RINSE -> Next.to(bench.saying("There is no amount in this change. Space switches it off, x takes it out."));
        };
    }

    private Next replaced(Change other) {
        Plan plan = bench.demo().plan().edited(index, each -> each.with(other));
        return bench.changed(bench.demo().with(plan), "Changed.");
    }

    private String title() {
        return Names.title(change, bench.demo().dish(), bench.demo().plan());
    }

    private Next ask(Question question) {
        return Next.to(LineScreen.of(bench, question));
    }

    private Optional<Taken> taken() {
        return Taken.of(change);
    }

    private Change with(Taken taken) {
        return switch (change.kind()) {
            case TRIM -> new Trim(change.of(), taken);
            case SKIN_OFF -> new SkinOff(change.of(), taken);
            case DRAIN -> new Drain(change.of(), taken);
            case POUR_OFF -> new PourOff(change.of(), taken);
            case SKIM -> new Skim(taken);
            case ADD, BULK_OUT, LEAVE_OUT, SWAP, CUT_DOWN, RINSE, DILUTE, COOK_ANOTHER_WAY, SMALLER_SERVE, MORE_PEOPLE ->
                    throw new IllegalStateException("nothing is taken off by " + change);
        };
    }

    private Next askShare() {
        String now = taken().flatMap(taken -> taken.share().isPresent() ? Optional.of(taken.share().getAsDouble()) : Optional.empty())
                .map(share -> Math.round(share * 100) + " %").orElse("typical");
        return ask(new Question(title(), "how much of it", List.of("Write a share such as 80 % or 3/4, or typical. w takes a weight instead."), now, text -> {
            if (text.isEmpty() || text.equalsIgnoreCase("typical")) {
                return Reply.go(replaced(with(Taken.TYPICAL)));
            }
            return Shares.parse(text).map(share -> Reply.go(replaced(with(Taken.share(share)))))
                    .orElseGet(() -> Reply.wrong(Shares.expected(text)));
        }));
    }

    private Next askWeight() {
        return ask(new Question(title() + ": what does the scale say?", "weight",
                List.of("Weigh what came off, such as 310 g. An empty line goes back to the typical figure."), "", text -> {
                    if (text.isEmpty()) {
                        return Reply.go(took(Taken.TYPICAL, asSold()));
                    }
                    return Shares.grams(text).map(this::weighed)
                            .orElseGet(() -> Reply.wrong("\"" + text + "\" is not a weight. Write grams or kilograms, such as 310 g or 0.4 kg."));
                }));
    }

    /**
     * More trimmings than such a cut typically has tell that this one was fatter: then its start is put right as well. It is
     * reckoned from the cut as it is sold each time, so that a slip of the finger can be weighed away again.
     */
    private Reply weighed(double grams) {
        Optional<Ingredient> piece = asSold();
        double edible = piece.map(each -> each.quantity().edible().value()).orElse(Double.MAX_VALUE);
        double typical = piece.flatMap(each -> each.food().part(part())).map(each -> each.share().typical() * edible).orElse(Double.MAX_VALUE);
        if (piece.isEmpty() || grams <= typical) {
            return Reply.go(took(Taken.weighed(grams), piece));
        }
        return grams >= edible * MOST_OF_IT
                ? Reply.wrong("That is nearly the whole piece (" + Math.round(edible) + " g without bone). Please weigh the trimmings alone.")
                : Reply.go(took(Taken.weighed(grams), piece.map(each -> fatter(each, grams / edible))));
    }

    private static final double MOST_OF_IT = 0.7;

    private Part.Kind part() {
        return change.kind() == ChangeKind.TRIM ? Part.Kind.FAT : Part.Kind.SKIN;
    }

    /** The ingredient with the share of fat or skin that its cut has on the shelf; empty where nothing comes off a piece. */
    private Optional<Ingredient> asSold() {
        boolean fromPiece = change.kind() == ChangeKind.TRIM || change.kind() == ChangeKind.SKIN_OFF;
        return bench.demo().dish().ingredient(change.of()).filter(piece -> fromPiece).map(piece -> new Ingredient(piece.id(),
                bench.desk().study().shelf().food(piece.food().id()).orElse(piece.food()), piece.quantity(), piece.preparation()));
    }

    private Ingredient fatter(Ingredient piece, double share) {
        return new Ingredient(piece.id(), piece.food().withShare(part(), Range.exactly(share)), piece.quantity(), piece.preparation());
    }

    private Next took(Taken taken, Optional<Ingredient> piece) {
        Dish before = bench.demo().dish();
        Dish dish = piece.map(before::with).orElse(before);
        Plan plan = bench.demo().plan().edited(index, each -> each.with(with(taken)));
        double was = start(before);
        double is = start(dish);
        String words = Math.abs(was - is) < 0.05 ? "Changed."
                : "By this weight the piece was not a typical one: the start is " + Written.number(is) + " g a serve now, it was " + Written.number(was) + ".";
        return bench.changed(bench.demo().with(dish).with(plan), words);
    }

    private double start(Dish dish) {
        return Ledger.outcome(dish, List.of(), bench.desk().study().books()).of(Nutrient.FASAT, Basis.SERVE);
    }

    private Next askWater(Dilute dilute) {
        return ask(new Question(title(), "water stirred in", List.of("For example 1 cup or 250 ml. Next: how much of the mixture is poured in."),
                millilitres(dilute.water()), text -> volume(text).map(water -> Reply.go(askPoured(dilute, water)))
                        .orElseGet(() -> Reply.wrong(notVolume(text)))));
    }

    private Next askPoured(Dilute dilute, Millilitres water) {
        double concentrate = bench.desk().before().item(dilute.of()).map(Dilute::volume).orElse(0.0);
        return ask(new Question(title(), "poured into the pot", List.of("Together there are about " + Math.round(concentrate + water.value())
                + " ml. Pour all of it and nothing is saved; what stays in the jug is kept for another dish."), millilitres(dilute.poured()),
                text -> volume(text).map(poured -> poured(new Dilute(dilute.of(), water, poured), concentrate + water.value()))
                        .orElseGet(() -> Reply.wrong(notVolume(text)))));
    }

    private Reply poured(Dilute dilute, double together) {
        return dilute.poured().value() > together + 1
                ? Reply.wrong("More cannot be poured than there is: together they make " + Math.round(together) + " ml.")
                : Reply.go(replaced(dilute));
    }

    private static String millilitres(Millilitres volume) {
        return Math.round(volume.value()) + " ml";
    }

    private static String notVolume(String text) {
        return "\"" + text + "\" is not a volume. Write cups, tbsp, tsp, ml or l, such as 1 cup or 250 ml.";
    }

    private Optional<Millilitres> volume(String text) {
        return Amount.parse(text).flatMap(amount -> bench.demo().dish().serving().spoons().volumeOf(amount.unit())
                .map(one -> Millilitres.of(one.value() * amount.count()))).filter(volume -> volume.value() <= 1_000_000);
    }

    private Next swap(Swap swap) {
        return askAmount(swap.food(), swap.quantity(), quantity -> replaced(new Swap(swap.of(), swap.food(), quantity)));
    }

    private Next add(Add add) {
        return askAmount(add.ingredient().food(), add.ingredient().quantity(), quantity -> replaced(new Add(add.ingredient().with(quantity))));
    }

    private Next bulk(BulkOut bulk) {
        return askAmount(bulk.ingredient().food(), bulk.ingredient().quantity(), quantity -> askWhole("How many more serves does that make?",
                bulk.extraServes(), extra -> new BulkOut(bulk.ingredient().with(quantity), extra)));
    }

    private Next askAmount(Food food, Quantity now, Function<Quantity, Next> then) {
        return Questions.askAmount(bench, new Questions.Wanted(bench, food, title(), now.amount().written()), then);
    }

    private Next askPart(String question, double now, DoubleFunction<Change> change) {
        return ask(new Question(question, "share", List.of("A share such as 1/2, 75 % or 0.6."), Math.round(now * 100) + " %", text ->
                Shares.parse(text).filter(share -> share > 0).map(share -> Reply.go(replaced(change.apply(share))))
                        .orElseGet(() -> Reply.wrong(Shares.expected(text)))));
    }

    private Next askWhole(String question, int now, IntFunction<Change> change) {
        return ask(new Question(question, "number", List.of("A whole number; 0 for none."), String.valueOf(now), text ->
                text.matches("\\d{1,4}") ? Reply.go(replaced(change.apply(Integer.parseInt(text))))
                        : Reply.wrong("\"" + text + "\" is not a whole number from 0 to 9999.")));
    }

    private Next askWay() {
        List<CookingMethod> ways = List.of(CookingMethod.values());
        List<Menu.Row> rows = ways.stream().map(way -> new Menu.Row(way.word(), "", Cooking.about(List.of(way)))).toList();
        return Next.to(MenuScreen.of(bench, new Menu(title(), "Cooked how instead?", rows,
                chosen -> replaced(new CookAnotherWay(change.of(), ways.get(chosen)))), ways.indexOf(((CookAnotherWay) change).method())));
    }
}
