package hobside;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Drain;
import hobside.dish.LeaveOut;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Quantity;
import hobside.dish.Rinse;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;
import hobside.food.CookingMethod;
import hobside.measure.Millilitres;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Plans for {@link Fixtures#pot()} drawn by a seed: any kinds of change in any order, some of them blocked. */
public final class RandomPlans {

    private RandomPlans() {}

    public static Plan of(long seed) {
        Random random = new Random(seed);
        List<Change> all = new ArrayList<>(everyKind(random));
        Collections.shuffle(all, random);
        return Plan.of(all.subList(0, 1 + random.nextInt(9)).toArray(Change[]::new));
    }

    /** One change of every kind, with amounts drawn at random. */
    public static List<Change> everyKind(Random random) {
        return List.of(
                new Trim("cut", taken(random)), new PourOff("cut", taken(random)), new Skim(taken(random)),
                new SkinOff("cut", taken(random)), new Drain("tin", taken(random)), new Rinse("tin"),
                new Dilute("cream", Millilitres.of(random.nextInt(400)), Millilitres.of(random.nextInt(900))),
                new Swap("lard", Fixtures.OIL, Quantity.grams(10 + random.nextInt(60))),
                new CutDown(random.nextBoolean() ? "lard" : "cream", random.nextInt(100) / 100.0),
                new Add(Fixtures.ingredient(Fixtures.BEANS, random.nextInt(500))),
                new BulkOut(Fixtures.ingredient(Fixtures.LEAN, random.nextInt(500)), random.nextInt(5)),
                new LeaveOut(random.nextBoolean() ? "lard" : "tin"),
                new CookAnotherWay("cut", random.nextBoolean() ? CookingMethod.GRILLED : CookingMethod.BAKED),
                new SmallerServe((1 + random.nextInt(99)) / 100.0), new MorePeople(random.nextInt(8)));
    }

    private static Taken taken(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> Taken.TYPICAL;
            case 1 -> Taken.share(random.nextInt(101) / 100.0);
            default -> Taken.weighed(random.nextInt(700));
        };
    }
}
