package hobside.stage.whatif;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CutDown;
import hobside.dish.Ingredient;
import hobside.dish.LeaveOut;
import hobside.dish.Names;
import hobside.dish.Plan;
import hobside.dish.Preparation;
import hobside.dish.Quantity;
import hobside.dish.Swap;
import hobside.food.Food;
import hobside.talk.Demo;
import hobside.talk.Stand;
import hobside.talk.Supposing;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The "what ifs" of one demo: each answers with the demo whose plan has the fitting change.
 *
 * <p>What is asked holds, whatever was planned for that ingredient before: another food takes the place of one that was swapped in,
 * and an amount is the amount that goes in. What can then no longer be done stays in the plan and says why.
 */
public final class Notions {

    /** An amount that is this near to that of the dish is that of the dish. */
    private static final double SAME = 1e-6;

    private final Demo demo;
    private final Supposing supposing;

    private Notions(Demo demo, Stand.Tongue tongue) {
        this.demo = demo;
        this.supposing = Supposing.in(tongue);
    }

    public static Notions of(Demo demo, Stand.Tongue tongue) {
        return new Notions(demo, tongue);
    }

    /** Another food in the place of an ingredient, in an amount of its own. */
    public Notion food(String id, Food food, Quantity quantity) {
        Standing now = standing(id);
        if (now.base().isEmpty()) {
            return broughtAnew(now, new Ingredient(freshId(food), food, quantity, Preparation.NONE));
        }
        if (food.id().equals(now.base().get().food().id())) {
            return amountOfUsual(now, quantity);
        }
        Swap swap = new Swap(id, food, quantity);
        Plan plan = on(off(off(demo.plan(), ChangeKind.LEAVE_OUT, id), ChangeKind.CUT_DOWN, id), swap);
        return changed(plan, swap, ", " + quantity.amount().written());
    }

    /** Another amount of what goes in for an ingredient now. Nothing of it is leaving it out. */
    public Notion amount(String id, Quantity quantity) {
        Standing now = standing(id);
        if (quantity.edible().value() == 0) {
            return without(id);
        }
        if (now.base().isEmpty()) {
            return broughtAnew(now, new Ingredient(id, now.food(), quantity, Preparation.NONE));
        }
        if (now.food().id().equals(now.base().get().food().id())) {
            return amountOfUsual(now, quantity);
        }
        Swap swap = new Swap(id, now.food(), quantity);
        Plan plan = on(off(off(demo.plan(), ChangeKind.LEAVE_OUT, id), ChangeKind.CUT_DOWN, id), swap);
        return measured(plan, now, quantity, Optional.of(swap));
    }

    /** The food of the dish itself: less of it is cut down, more of it takes its own place, just as much is put back. */
    private Notion amountOfUsual(Standing now, Quantity quantity) {
        Ingredient base = now.base().orElseThrow();
        double share = quantity.edible().value() / base.quantity().edible().value();
        Plan plain = unswapped(off(off(demo.plan(), ChangeKind.LEAVE_OUT, base.id()), ChangeKind.CUT_DOWN, base.id()), base.id());
        Standing usual = new Standing(base.id(), now.base(), base.food(), quantity, true);
        if (Math.abs(share - 1) < SAME) {
            return measured(plain, usual, quantity, Optional.empty());
        }
        Change change = share < 1 ? new CutDown(base.id(), share) : new Swap(base.id(), base.food(), quantity);
        return measured(on(plain, change), usual, quantity, Optional.of(change));
    }

    /** A share of what goes in now: a half, or half as much again. */
    public Notion share(String id, double share) {
        return amount(id, standing(id).quantity().times(share));
    }

    /** It stays out; what the plan brought in is not brought in. */
    public Notion without(String id) {
        Standing now = standing(id);
        if (now.base().isEmpty()) {
            Change brings = bringer(id);
            return new Notion(demo.with(offSlot(demo.plan(), brings.slot())), "not: " + title(brings, demo), supposing.did(demo, brings, false), Optional.empty());
        }
        LeaveOut out = new LeaveOut(id);
        return changed(on(demo.plan(), out), out, "");
    }

    /** A change of the plan switched off, or on again. */
    public Notion toggled(int index) {
        Plan plan = demo.plan().edited(index, Plan.Planned::toggled);
        Plan.Planned planned = plan.changes().get(index);
        String title = (planned.on() ? "again: " : "not: ") + title(planned.change(), demo);
        return new Notion(demo.with(plan), title, supposing.did(demo, planned.change(), planned.on()),
                planned.on() ? Optional.of(planned.change()) : Optional.empty());
    }

    /** One more food in the pot. */
    public Notion added(Food food, Quantity quantity) {
        Add add = new Add(new Ingredient(freshId(food), food, quantity, Preparation.NONE));
        return changed(demo.plan().with(add), add, ", " + quantity.amount().written());
    }

    private Standing standing(String id) {
        return Standing.of(demo, id).orElseThrow(() -> new IllegalArgumentException("neither dish nor plan has an ingredient " + id));
    }

    private String freshId(Food food) {
        Set<String> taken = demo.plan().changes().stream().map(planned -> planned.change().of()).collect(Collectors.toSet());
        return demo.dish().freshId(food.id(), taken);
    }

    private Change bringer(String id) {
        return demo.plan().changes().stream().map(Plan.Planned::change).filter(change -> change.of().equals(id) && Standing.brings(change).isPresent())
                .findFirst().orElseThrow();
    }

    /** What the plan brings in is brought in anew: another food, or another amount; it stays a filling if it was one. */
    private Notion broughtAnew(Standing now, Ingredient ingredient) {
        Change old = bringer(now.id());
        Change fresh = old instanceof BulkOut bulk ? new BulkOut(ingredient, bulk.extraServes()) : new Add(ingredient);
        int index = demo.plan().slot(old.slot()).orElseThrow();
        Plan plan = demo.plan().edited(index, planned -> new Plan.Planned(fresh, true, planned.note()));
        boolean same = ingredient.id().equals(now.id());
        return same ? measured(plan, now, ingredient.quantity(), Optional.of(fresh)) : changed(plan, fresh, ", " + ingredient.quantity().amount().written());
    }

    private Notion changed(Plan plan, Change change, String amount) {
        Demo changed = demo.with(plan);
        String title = title(change, changed);
        return new Notion(changed, title + amount, supposing.did(changed, change, true), Optional.of(change));
    }

    private Notion measured(Plan plan, Standing of, Quantity quantity, Optional<Change> change) {
        Demo changed = demo.with(plan);
        boolean own = of.base().filter(base -> base.food().id().equals(of.food().id())).isPresent();
        String title = "use " + quantity.amount().written() + " of " + (own ? Names.brief(of.food().name()) : of.food().name());
        return new Notion(changed, title, supposing.amount(changed, of.food(), quantity.amount()), change);
    }

    private static String title(Change change, Demo demo) {
        return Names.title(change, demo.dish(), demo.plan());
    }

    private static Plan on(Plan plan, Change change) {
        Plan with = plan.with(change);
        int index = with.slot(change.slot()).orElseThrow();
        return with.changes().get(index).on() ? with : with.edited(index, Plan.Planned::toggled);
    }

    private static Plan off(Plan plan, ChangeKind kind, String id) {
        return Standing.on(plan, kind, id).map(change -> offSlot(plan, change.slot())).orElse(plan);
    }

    private static Plan offSlot(Plan plan, String slot) {
        return plan.slot(slot).filter(index -> plan.changes().get(index).on()).map(index -> plan.edited(index, Plan.Planned::toggled)).orElse(plan);
    }

    /** Without another food in its place: a planned swap is switched off, one that only made it more is gone. */
    private Plan unswapped(Plan plan, String id) {
        Optional<Change> swap = Standing.on(plan, ChangeKind.SWAP, id);
        boolean more = swap.filter(change -> Names.isMore(change, demo.dish())).isPresent();
        return more ? plan.without(plan.slot(swap.get().slot()).orElseThrow()) : off(plan, ChangeKind.SWAP, id);
    }
}
