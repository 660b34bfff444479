package hobside.stage.whatif;

import hobside.Bundle;
import hobside.food.Food;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** What ifs drawn by a seed: likely ways, any food of the shelf, any amount, one to three laid over one another. */
public final class RandomWhatIfs {

    private static final List<String> AMOUNTS = List.of("half", "300 g", "2 cups", "+1", "-1", "75 %", "0", "double", "1/3", "1000000 kg", "three", "+ 100 g", "");

    private RandomWhatIfs() {}

    public static WhatIf about(Demo demo) {
        return WhatIf.of(demo, new Ground(Bundle.STUDY.books(), Bundle.STUDY.beside(demo), Bundle.STUDY.published(), Bundle.STUDY.english()));
    }

    public static List<Notion> of(Demo demo, Random random) {
        List<Notion> laid = new ArrayList<>();
        int wanted = 1 + random.nextInt(3);
        while (laid.size() < wanted) {
            one(laid.isEmpty() ? demo : laid.get(laid.size() - 1).demo(), random).ifPresent(laid::add);
        }
        return laid;
    }

    private static Optional<Notion> one(Demo demo, Random random) {
        var beside = Bundle.STUDY.beside(demo);
        List<Ways.Row> rows = Ways.ingredients(demo);
        String id = random.nextInt(6) == 0 ? "" : rows.get(random.nextInt(rows.size())).id();
        return switch (random.nextInt(3)) {
            case 0 -> {
                List<Ways.Way> ways = Ways.of(demo, id, beside, Bundle.STUDY.shelf());
                yield ways.isEmpty() ? Optional.empty() : Optional.of(ways.get(random.nextInt(ways.size())).notion());
            }
            case 1 -> {
                List<Food> foods = Bundle.STUDY.shelf().foods();
                yield Optional.of(Ways.found(demo, id, foods.get(random.nextInt(foods.size())), beside).notion());
            }
            default -> Ways.amount(demo, id, AMOUNTS.get(random.nextInt(AMOUNTS.size())), beside.tongue());
        };
    }
}
