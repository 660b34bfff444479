package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Pot;
import hobside.dish.Skim;
import hobside.dish.Working;
import hobside.food.Factors;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every way to settle what concerns the whole pot. */
final class Frames {

    /** More ways than this are looked at in part only. */
    private static final int MOST = 4096;

    /** Just below a limit, so that "less than" can be told as "at most". */
    private static final double BELOW = 1e-6;

    private final Stock stock;
    private final List<Change> told;
    private final List<Frame> frames = new ArrayList<>();
    private final boolean all;
    private final boolean addingUp;

    /** @param told what stands in the plan; without the skimming when things add up, since that is then a matter of the frame */
    Frames(Stock stock, List<Change> told, List<Wish> wishes, boolean addingUp) {
        this.stock = stock;
        this.told = told;
        this.addingUp = addingUp;
        List<Wish> skims = wishes.stream().filter(wish -> wish.change().kind() == ChangeKind.SKIM).toList();
        Stock.Ways ways = Stock.ways(wishes.stream().filter(wish -> wish.change().kind() != ChangeKind.SKIM).toList(), MOST);
        this.all = ways.all();
        ways.sets().forEach(way -> shared(way, skims));
    }

    List<Frame> all() {
        return frames;
    }

    boolean areAll() {
        return all;
    }

    private void shared(List<Wish> way, List<Wish> skims) {
        List<Change> changes = new ArrayList<>(told);
        way.forEach(wish -> changes.add(wish.change()));
        Working working = stock.working(changes);
        if (stock.works(working)) {
            double[] start = stock.tally(working.pot());
            Tally.count(start, way);
            standing(new Frame(start, Board.plates(working.pot()), 0, List.of(), way), skims, working.pot());
        }
    }

    private void standing(Frame bare, List<Wish> skims, Pot pot) {
        Optional<Change> stands = stock.plan().told().stream().filter(change -> change.kind() == ChangeKind.SKIM).findFirst();
        if (!addingUp || stands.isEmpty()) {
            frames.add(bare);
            skims.forEach(wish -> wished(bare, wish, pot));
            return;
        }
        if (pot.dish().simmers()) {
            frames.add(skimmed(bare, (Skim) stands.get()));
        }
        if (stock.blocks(stands.get())) {
            unskimmed(bare, pot);
        }
    }

    private void wished(Frame bare, Wish wish, Pot pot) {
        if (pot.dish().simmers()) {
            double[] start = bare.start().clone();
            Tally.count(start, wish);
            List<Wish> settled = new ArrayList<>(bare.settled());
            settled.add(wish);
            frames.add(skimmed(new Frame(start, bare.plates(), 0, List.of(), settled), (Skim) wish.change()));
        }
    }

    private Frame skimmed(Frame bare, Skim skim) {
        double share = skim.taken().share().orElse(stock.kit().cookery().factors().of(Factors.Name.SKIMMED_COLD).range().typical());
        return new Frame(bare.start(), bare.plates(), share, Board.skimmable(), bare.settled());
    }

    /** A skimming that stands in the plan and was blocked may stay so: for want of fat, or of liquid. */
    private void unskimmed(Frame bare, Pot pot) {
        if (!pot.dish().simmers()) {
            frames.add(bare);
            return;
        }
        for (Row row : Board.skimmable()) {
            double[] against = row.weights().clone();
            for (int i = 0; i < against.length; i++) {
                against[i] = -against[i];
            }
            frames.add(new Frame(bare.start(), bare.plates(), 0, List.of(new Row(against, -row.most() - BELOW)), bare.settled()));
        }
    }
}
