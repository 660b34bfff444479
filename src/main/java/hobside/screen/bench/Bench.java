package hobside.screen.bench;

import hobside.dish.Change;
import hobside.talk.Corrected;
import hobside.talk.Demo;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.ledger.Basis;
import hobside.screen.Frame;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Typed;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import hobside.screen.desk.Work;
import hobside.screen.open.OpenScreen;
import hobside.screen.read.ReadScreen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The Bench in one state: the desk, where the cursor stands, how the figures are shown, and the last word said to the user. */
public record Bench(Desk desk, Spot spot, Basis basis, String said) implements Screen {

    /** Which side the cursor is on, and its row on either side. Row 0 of the plan is the dish as cooked. */
    public record Spot(BenchAction.Side side, int dishRow, int planRow) {

        static final Spot START = new Spot(BenchAction.Side.DISH, 0, 0);

        Spot other() {
            return new Spot(side == BenchAction.Side.DISH ? BenchAction.Side.PLAN : BenchAction.Side.DISH, dishRow, planRow);
        }

        int row() {
            return side == BenchAction.Side.DISH ? dishRow : planRow;
        }

        Spot at(int row) {
            return side == BenchAction.Side.DISH ? new Spot(side, row, planRow) : new Spot(side, dishRow, row);
        }

        Spot withDishRow(int row) {
            return new Spot(side, row, planRow);
        }

        Spot withPlanRow(int row) {
            return new Spot(side, dishRow, row);
        }
    }

    public static Bench of(Desk desk, String said) {
        return new Bench(desk, Spot.START, Basis.SERVE, said);
    }

    @Override
    public Next update(Message message) {
        Next next = BenchUpdate.of(this, message);
        return message instanceof Message.KeyPressed ? tryingAgain(next) : next;
    }

    /** What could not be kept is tried again with each key, so that it is kept as soon as there is room for it. */
    private static Next tryingAgain(Next next) {
        if (next.effects().isEmpty() && next.screen().isPresent() && next.screen().get() instanceof Bench bench && bench.desk.kept().isLost()) {
            return keeping(bench);
        }
        return next;
    }

    @Override
    public void view(Frame frame) {
        BenchView.draw(this, frame);
    }

    /** Where the cursor stands: the ingredient, or the place of the change in the plan. */
    @Override
    public Typed.About whereTyped() {
        String spot = this.spot.side() == BenchAction.Side.DISH ? ingredient().map(Ingredient::id).orElse("")
                : planIndex().map(index -> demo().plan().changes().get(index).change().slot()).orElse("");
        return new Typed.About(desk.kept().name(), demo().dish().name(), spot);
    }

    public Demo demo() {
        return desk.demo();
    }

    /** The rows of the dish side: its ingredients, then those that the plan brings in. After them comes the whole pot. */
    public List<Ingredient> ingredients() {
        List<Ingredient> rows = new ArrayList<>(demo().dish().ingredients());
        for (Plan.Planned planned : demo().plan().changes()) {
            String id = planned.change().of();
            boolean there = rows.stream().anyMatch(row -> row.id().equals(id));
            if (!there) {
                Names.ingredient(demo().dish(), demo().plan(), id).ifPresent(rows::add);
            }
        }
        return rows;
    }

    /** The ingredient under the cursor; empty on the row of the whole pot. */
    public Optional<Ingredient> ingredient() {
        List<Ingredient> rows = ingredients();
        return spot.dishRow() < rows.size() ? Optional.of(rows.get(spot.dishRow())) : Optional.empty();
    }

    /** The index in the plan of the change under the cursor; empty on the first row. */
    public Optional<Integer> planIndex() {
        int index = spot.planRow() - 1;
        return index >= 0 && index < demo().plan().size() ? Optional.of(index) : Optional.empty();
    }

    int rows() {
        return spot.side() == BenchAction.Side.DISH ? ingredients().size() + 1 : demo().plan().size() + 1;
    }

    public Bench saying(String words) {
        return new Bench(desk, spot, basis, words);
    }

    Bench at(Spot other) {
        return new Bench(desk, other, basis, "");
    }

    Bench with(Basis other) {
        return new Bench(desk, spot, other, "Figures are for " + other.words() + " now.");
    }

    Bench with(Desk other) {
        return new Bench(other, spot, basis, said).settled();
    }

    /** The same with the cursor brought back onto a row that exists. */
    private Bench settled() {
        int dishRow = Math.min(spot.dishRow(), ingredients().size());
        int planRow = Math.min(spot.planRow(), demo().plan().size());
        return new Bench(desk, new Spot(spot.side(), dishRow, planRow), basis, said);
    }

    /** The demo has been changed: shown, told, and put away at once. */
    public Next changed(Demo other, String words) {
        Desk changed = desk.changed(other);
        return keeping(with(changed).saying(words));
    }

    /** The Bench with the last step taken back; empty when there is none. */
    public Optional<Next> undone() {
        return desk.undone().map(before -> keeping(with(before).saying("Taken back.")));
    }

    /** The Bench with a step done again that was taken back; empty when there is none. */
    public Optional<Next> redone() {
        return desk.redone().map(after -> keeping(with(after).saying("Done again.")));
    }

    static Next keeping(Bench bench) {
        return Next.doing(bench, new Work.Keep(bench.demo(), bench.desk.kept().name()));
    }

    /** A change has been taken: it stands in the plan and the cursor of that side goes to it. */
    public Next taking(Change change, String words) {
        Plan plan = demo().plan().with(change);
        int row = plan.slot(change.slot()).orElse(plan.size() - 1) + 1;
        Bench there = new Bench(desk, spot.withPlanRow(row), basis, said);
        return there.changed(demo().with(plan), words);
    }

    /** What was being typed on this demo when the program was stopped is looked for, once the Bench is seen. */
    public Next lookingBack() {
        return Next.doing(this, new Work.LookForTyped(desk.kept().name(), demo().dish().name()));
    }

    /** The first sight of a demo; what a damaged file lacks is told before anything else. */
    public Next opening(List<String> missing) {
        if (missing.isEmpty()) {
            return lookingBack();
        }
        List<String> lines = new ArrayList<>(List.of(
                "This file is damaged. What is on the bench is what could be read of it, as it was written; the figures are those of what is there. Not there:", ""));
        missing.forEach(each -> lines.add("- " + each));
        lines.addAll(List.of("", "The file itself is as it was. The first change is saved in its place, and the damaged one is kept beside it under a name "
                + "that ends in .damaged-1: it is text, and can be mended by hand."));
        return lookingBack().over(bench -> ReadScreen.text(bench, "Opened in part", lines));
    }

    Next answered(Answer answer) {
        if (answer instanceof Answer.Stored stored) {
            String usual = desk.kept().isLost() ? "Everything is kept now." : said;
            return Next.to(with(desk.kept(stored.kept())).saying(stored.words().isEmpty() ? usual : stored.words()));
        }
        if (answer instanceof Answer.Opened opened) {
            return of(Desk.of(desk.study(), opened.demo(), opened.kept()), opened.words()).opening(opened.missing());
        }
        if (answer instanceof Answer.NotKept notKept) {
            return Next.to(with(desk.kept(desk.kept().lost())).saying(notKept.words()));
        }
        if (answer instanceof Answer.Shelved shelved) {
            return shelved(shelved);
        }
        if (answer instanceof Answer.Priced priced) {
            return Next.to(with(desk.with(priced.study())).saying(priced.words()));
        }
        if (answer instanceof Answer.Failed failed) {
            return Next.to(saying(failed.words()));
        }
        if (answer instanceof Answer.Left left) {
            return LeftOver.offered(this, left);
        }
        // What is answered about runs is heard by the screens that asked for it.
        return answer instanceof Answer.Choices choices ? Next.to(OpenScreen.of(this, choices)) : Next.to(this);
    }

    /** A corrected record takes the place of the old one in the dish, as a step that can be undone. */
    private Next shelved(Answer.Shelved shelved) {
        Bench there = with(desk.with(shelved.study())).saying(shelved.words());
        if (shelved.old().isEmpty() || shelved.fresh().isEmpty()) {
            return Next.to(there);
        }
        Demo corrected = Corrected.of(demo(), shelved.old().get(), shelved.fresh().get());
        return corrected.equals(demo()) ? Next.to(there)
                : there.changed(corrected, "The dish has the new figures of " + shelved.fresh().get().name() + "; u takes that back.");
    }

    /** News from the disk for a screen that stands over the bench: the bench hears it, and the screen goes on over what it became. */
    public Next below(Message message, Function<Bench, Screen> over) {
        Next next = update(message);
        Optional<Screen> screen = next.screen().map(each -> each instanceof Bench bench ? over.apply(bench) : each);
        return new Next(screen, next.effects());
    }
}
