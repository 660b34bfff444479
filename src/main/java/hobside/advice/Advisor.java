package hobside.advice;

import hobside.dish.ChangeKind;
import hobside.dish.Dish;
import hobside.dish.Plan;
import hobside.dish.Working;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Books;
import hobside.ledger.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the best plan for a goal among all sets of wishes, and proves that it is.
 *
 * <p>Savings of single changes are never added up: what trimming, pouring off and using less of one food do together is worked out
 * together. Only different ingredients are put together by adding, because each moves nothing but its own share of the pot; skimming,
 * more people, a smaller serve and fillings are settled first, and what shares one frying pan is one group. Every plan that is handed
 * out has been worked out whole by the ledger.
 *
 * <p>One change of a kind to an ingredient, and one filling, is made at most. A wish is made only when it can be, and when it leaves everything that stands in the plan possible.
 */
public final class Advisor {

    /** Part plans looked at for one question before the search is cut short. */
    private static final long MOST_LOOKED = 20_000_000;

    private final Stock stock;
    private final List<Wish> wishes;
    private final Limits limits;
    private final Outcome now;
    private final double leastMeat;
    private final long most;
    private Board board;

    private Advisor(Stock stock, List<Wish> wishes, Limits limits, long most) {
        this.stock = stock;
        this.wishes = wishes;
        this.limits = limits;
        this.most = most;
        this.board = Board.of(stock, wishes);
        this.now = stock.outcome(List.of());
        double[] start = stock.tally(stock.working(stock.plan().told()).pot());
        this.leastMeat = Math.min(limits.leastMeat(), start[Tally.MEAT] * now.serveSize() / now.serves());
    }

    public static Advisor of(Dish dish, Plan plan, List<Wish> wishes, Books books, Limits limits) {
        return of(dish, new Asked(plan, wishes, limits, MOST_LOOKED), books);
    }

    /**
     * What is asked of an advisor.
     *
     * @param mostLooked part plans to look at for one question; when there are more, the answer is good but not proven
     */
    public record Asked(Plan plan, List<Wish> wishes, Limits limits, long mostLooked) {}

    public static Advisor of(Dish dish, Asked asked, Books books) {
        List<Wish> wishes = asked.wishes().stream()
                .filter(wish -> asked.limits().allow(wish))
                .filter(wish -> wish.change().kind() == ChangeKind.SWAP || asked.plan().slot(wish.change().slot()).isEmpty())
                .sorted(Wish.KITCHEN_ORDER)
                .toList();
        return new Advisor(new Stock(dish, asked.plan(), books), wishes, asked.limits(), asked.mostLooked());
    }

    /**
     * The best plan that reaches the goal within the limits. Empty when it is proven that none does; when the search was cut short
     * before it found one, the plan that saves most, not proven.
     */
    public Optional<Advised> best(Goal goal, Aim aim) {
        Search search = new Search(board, most);
        for (Frame frame : board.frames()) {
            search.best(frame, Quest.of(frame, aim, rows(frame, goal)));
        }
        boolean cut = search.leftOut() != Long.MAX_VALUE || !board.isWhole();
        if (search.best() == null) {
            return cut ? Optional.of(unproven(closest())) : Optional.empty();
        }
        Advised found = advised(search, aim);
        return isAsForetold(search.best(), found, aim) ? Optional.of(found) : asOne(goal, aim);
    }

    /** What the ledger does not bear out has not added up: then all is worked out whole. */
    private Optional<Advised> asOne(Goal goal, Aim aim) {
        board = board.asOne();
        return best(goal, aim);
    }

    private boolean isAsForetold(State state, Advised found, Aim aim) {
        double told = switch (aim) {
            case MOST_SAVING -> State.coarse(state.key()[0]) - saturated(found.outcome());
            case FEWEST_CHANGES -> State.coarse(state.key()[1]) - found.outcome().used(Basis.SERVE);
            case LEAST_DEPARTURE -> State.coarse(state.key()[2]) - found.outcome().used(Basis.SERVE);
            case LEAST_MONEY -> Quest.money(state.key()[0], found.wishes()) - found.outcome().used(Basis.SERVE);
        };
        return board.isOne() || Math.abs(told) <= 1e-5;
    }

    private static Advised unproven(Advised advised) {
        return new Advised(advised.wishes(), advised.plan(), advised.outcome(), false, 0, advised.looked());
    }

    private Advised advised(Search search, Aim aim) {
        long reached = search.best().key()[0];
        long bound = board.isWhole() ? Math.min(reached, search.leftOut()) : 0;
        List<Wish> chosen = search.best().wishes();
        return new Advised(chosen, Plans.with(stock.plan(), chosen), stock.outcome(chosen), bound == reached,
                aim == Aim.LEAST_MONEY ? Quest.money(bound, chosen) : State.coarse(bound), search.looked());
    }

    /** The plan that saves most saturated fat a serve within the limits, whatever goal there is. Empty-handed, the plan as it stands. */
    public Advised closest() {
        return best(Goal.ANY, Aim.MOST_SAVING).orElseGet(() -> new Advised(List.of(), stock.plan(), now, true, saturated(now), 0));
    }

    /** Each wish on its own that can be made within the limits, what saves most first. */
    public List<Next> nextBest() {
        List<Next> all = new ArrayList<>();
        for (Wish wish : wishes) {
            Working working = stock.working(stock.told(List.of(wish)));
            Outcome then = stock.outcome(List.of(wish));
            double extra = then.used(Basis.SERVE) - now.used(Basis.SERVE);
            boolean cheap = Double.isNaN(limits.mostExtraCost()) || extra <= limits.mostExtraCost() + 1e-9;
            double meat = stock.tally(working.pot())[Tally.MEAT] * then.serveSize() / then.serves();
            if (stock.works(working) && cheap && !(meat < leastMeat - 1e-9)) {
                all.add(new Next(wish, then, saturated(now) - saturated(then), extra, wish.minutes()));
            }
        }
        all.sort(Comparator.comparingDouble(next -> -next.saved()));
        return all;
    }

    /** All plans within the limits to which none is better in saturated fat, in cost and in number of changes; least fat first. */
    public List<Point> frontier() {
        Search search = new Search(board, most);
        List<State> ends = new ArrayList<>();
        for (Frame frame : board.frames()) {
            Quest quest = Quest.frontier(frame, rows(frame, Goal.ANY));
            search.all(frame, quest, false).forEach(state -> ends.add(unlimited(state)));
        }
        boolean proven = board.isWhole() && search.leftOut() == Long.MAX_VALUE;
        return Front.of(ends).stream().map(state -> point(state, proven, search.looked())).toList();
    }

    /** An end, by nothing but cost and changes. */
    private static State unlimited(State state) {
        return new State(state.key(), new long[] {state.holds()[0], state.holds()[1]}, state.from(), state.took());
    }

    private Point point(State state, boolean proven, long looked) {
        List<Wish> chosen = state.wishes();
        Outcome outcome = stock.outcome(chosen);
        Advised advised = new Advised(chosen, Plans.with(stock.plan(), chosen), outcome, proven, proven ? saturated(outcome) : 0, looked);
        return new Point(advised, saturated(outcome), outcome.used(Basis.SERVE), chosen.size());
    }

    private static double saturated(Outcome outcome) {
        return outcome.of(Nutrient.FASAT, Basis.SERVE);
    }

    private List<Row> rows(Frame frame, Goal goal) {
        List<Row> rows = new ArrayList<>();
        for (Goal.Condition condition : goal.conditions()) {
            double[] weights = Tally.weight(Tally.FASAT, condition.fasat());
            weights[Tally.ENERGY] = condition.energy();
            weights[Tally.GRAMS] = condition.grams();
            weights[Tally.COST] = condition.cost();
            rows.add(new Row(weights, -condition.plates() * frame.plates()));
        }
        limited(frame, rows);
        return rows;
    }

    private void limited(Frame frame, List<Row> rows) {
        if (limits.mostChanges() > 0) {
            rows.add(Row.atMost(Tally.CHANGES, limits.mostChanges()));
        }
        if (!Double.isNaN(limits.mostExtraCost())) {
            rows.add(Row.atMost(Tally.COST, (limits.mostExtraCost() + now.used(Basis.SERVE)) * frame.plates()));
        }
        if (limits.mostMinutes() >= 0) {
            rows.add(Row.atMost(Tally.MINUTES, limits.mostMinutes()));
        }
        if (!Double.isNaN(limits.mostWater())) {
            rows.add(Row.atMost(Tally.WATER, limits.mostWater()));
        }
        if (!Double.isNaN(leastMeat)) {
            rows.add(Row.atLeast(Tally.MEAT, leastMeat * frame.plates()));
        }
    }
}
