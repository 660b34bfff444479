package hobside;

import hobside.talk.Demo;
import hobside.dish.Dish;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Study;
import java.nio.file.Path;
import java.util.List;

/** The bundled foods, prices and dishes, read once for all tests. */
public final class Bundle {

    public static final Study STUDY = Study.of(Library.load(Kitchen.at(Path.of("target", "no-such-kitchen"))));

    public static final List<String> DISHES = List.of("ropewalk-rib-pot", "lantern-night-pumpkin-pot", "lock-keepers-potato-bake");

    private Bundle() {}

    public static Demo demo(String dish) {
        return Kitchen.bundled(dish, STUDY.shelf());
    }

    public static Dish dish(String dish) {
        return demo(dish).dish();
    }
}
