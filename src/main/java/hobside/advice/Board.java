package hobside.advice;

import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.CookAnotherWay;
import hobside.dish.Ingredient;
import hobside.dish.Pot;
import hobside.dish.Skim;
import hobside.dish.Working;
import hobside.food.CookingMethod;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The wishes laid out so that they add up: one group for each ingredient, with every set of its wishes worked out whole, and frames
 * for what concerns the pot. What is fried shares its oil, so fried ingredients and their oil are one group.
 */
final class Board {

    /** A group with more sets than this is looked at in part only. */
    private static final int MOST_WAYS = 60_000;

    private static final Set<ChangeKind> SHARED = Set.of(ChangeKind.BULK_OUT, ChangeKind.SMALLER_SERVE, ChangeKind.MORE_PEOPLE);

    /** So many sets of wishes drawn at random are worked out whole, to see that things add up. */
    private static final int TRIED = 60;

    private final Stock stock;
    private final List<Wish> wishes;
    private final boolean addingUp;
    private final List<Change> told;
    private final Frames frames;
    private final List<List<Option>> groups = new ArrayList<>();
    /** The one group of each frame, where things do not add up. */
    private final IdentityHashMap<Frame, List<List<Option>>> inOne = new IdentityHashMap<>();

    private boolean whole = true;

    private Board(Stock stock, List<Wish> wishes, boolean addingUp) {
        this.stock = stock;
        this.wishes = wishes;
        this.addingUp = addingUp;
        this.told = kept(stock.plan().told());
        this.frames = new Frames(stock, told, wishes.stream().filter(this::isOfThePot).toList(), addingUp);
    }

    static Board of(Stock stock, List<Wish> wishes) {
        boolean apart = Stream.concat(stock.plan().told().stream(), wishes.stream().map(Wish::change)).noneMatch(Board::isWeighed)
                && wishes.stream().noneMatch(Board::isPanOfOil);
        Board board = new Board(stock, wishes, apart);
        if (!apart) {
            return board;
        }
        double[] start = stock.tally(stock.working(board.told).pot());
        board.grouped().forEach(group -> board.groups.add(board.options(group, new Frame(start, 1, 0, List.of(), List.of()))));
        return board.addsUp() ? board : board.asOne();
    }

    private static boolean isWeighed(Change change) {
        return change instanceof Skim skim && skim.taken().weighed().isPresent();
    }

    /** A filling that other things would fry in: what they drink of it depends on what is done with them. */
    private static boolean isPanOfOil(Wish wish) {
        return wish.change() instanceof BulkOut bulk && bulk.ingredient().preparation().frying();
    }

    /** The same with all ingredients in one group, for where they do not add up. */
    Board asOne() {
        return new Board(stock, wishes, false);
    }

    boolean isOne() {
        return !addingUp;
    }

    /** Each set of wishes in one of its groups, the wishes of an ingredient together. */
    List<List<Option>> groups(Frame frame) {
        return addingUp ? groups : inOne.computeIfAbsent(frame, each -> List.of(options(wishes.stream().filter(wish -> !isOfThePot(wish)).toList(), each)));
    }

    List<Frame> frames() {
        return frames.all();
    }

    /** False when some sets were left out because there were too many. */
    boolean isWhole() {
        return whole && frames.areAll();
    }

    /** Without a skimming where that is a matter of the frame. */
    private List<Change> kept(List<Change> changes) {
        return changes.stream().filter(change -> !addingUp || change.kind() != ChangeKind.SKIM).toList();
    }

    private boolean isOfThePot(Wish wish) {
        return SHARED.contains(wish.change().kind()) || addingUp && wish.change().kind() == ChangeKind.SKIM;
    }

    private boolean addsUp() {
        Random random = new Random(TRIED);
        for (int i = 0; i < TRIED; i++) {
            Frame frame = frames().get(random.nextInt(frames().size()));
            List<Wish> chosen = new ArrayList<>(frame.settled());
            double[] sum = frame.start();
            for (List<Option> group : groups) {
                Option option = group.get(random.nextInt(group.size()));
                sum = Tally.plus(sum, option.adds());
                chosen.addAll(option.wishes());
            }
            if (frame.holds(sum) && !frame.foretells(sum, stock.outcome(chosen))) {
                return false;
            }
        }
        return true;
    }

    private Collection<List<Wish>> grouped() {
        Map<String, List<Wish>> grouped = new LinkedHashMap<>();
        boolean frying = ingredients().anyMatch(each -> each.preparation().frying());
        for (Wish wish : wishes) {
            if (!isOfThePot(wish)) {
                String group = frying && isFrying(wish.change()) ? "" : wish.change().of();
                grouped.computeIfAbsent(group, id -> new ArrayList<>()).add(wish);
            }
        }
        return grouped.values();
    }

    private Stream<Ingredient> ingredients() {
        return stock.working(told).pot().items().stream().map(item -> item.origin());
    }

    /** Whether it works on oil for frying, or on what drinks it. */
    private boolean isFrying(Change change) {
        boolean drinks = change instanceof CookAnotherWay other && isFried(other.method());
        return drinks || Stream.concat(ingredients(), stock.dish().ingredients().stream()).filter(each -> each.id().equals(change.of()))
                .anyMatch(each -> each.preparation().frying() || each.preparation().cook().stream().anyMatch(Board::isFried));
    }

    private static boolean isFried(CookingMethod method) {
        return method == CookingMethod.DEEP_FRIED || method == CookingMethod.PAN_FRIED;
    }

    private List<Option> options(List<Wish> group, Frame frame) {
        List<Option> options = new ArrayList<>();
        Stock.Ways ways = Stock.ways(group, addingUp ? MOST_WAYS : MOST_WAYS / frames().size());
        whole &= ways.all();
        for (List<Wish> way : ways.sets()) {
            List<Wish> all = new ArrayList<>(frame.settled());
            all.addAll(way);
            Working working = stock.working(kept(stock.told(all)));
            if (stock.works(working)) {
                double[] adds = Tally.minus(stock.tally(working.pot()), frame.start());
                System.arraycopy(new double[Tally.SIZE], 0, adds, Tally.CHANGES, Tally.SIZE - Tally.CHANGES);
                Tally.count(adds, way);
                options.add(new Option(adds, way));
            }
        }
        return options;
    }

    /** Free fat that can be lifted, and liquid that it can rise on: what {@link Skim} asks for. */
    static List<Row> skimmable() {
        double[] dry = Tally.weight(Tally.GRAMS, Skim.LIQUID);
        dry[Tally.LIQUID] = -1;
        return List.of(Row.atLeast(Tally.FREE_GRAMS, Skim.WORTH_LIFTING), new Row(dry, 0));
    }

    static double plates(Pot pot) {
        return pot.serves() / pot.serveSize();
    }
}
