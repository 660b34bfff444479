package hobside;

import hobside.advice.Offer;
import hobside.talk.Demo;
import java.util.List;
import java.util.Random;

/** Demos of the bundled dishes with some of the offered changes, drawn by a seed. */
public final class Offered {

    private Offered() {}

    public static Demo random(long seed) {
        Random random = new Random(seed);
        Demo demo = Bundle.demo(Bundle.DISHES.get(random.nextInt(Bundle.DISHES.size())));
        for (int i = 0; i < 1 + random.nextInt(5); i++) {
            List<Offer> offers = random.nextInt(4) == 0
                    ? Bundle.STUDY.offers().forPot(demo.dish(), demo.plan())
                    : Bundle.STUDY.offers().forIngredient(demo.dish(), demo.plan(),
                            demo.dish().ingredients().get(random.nextInt(demo.dish().ingredients().size())).id());
            if (!offers.isEmpty()) {
                demo = demo.with(demo.plan().with(offers.get(random.nextInt(offers.size())).change()));
            }
        }
        return demo;
    }
}
