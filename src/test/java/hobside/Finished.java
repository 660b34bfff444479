package hobside;

import hobside.file.Kitchen;
import hobside.talk.Demo;
import java.nio.file.Path;
import java.util.List;

/** The three finished demos that are delivered in the folder scripts. */
public final class Finished {

    public static final List<String> NAMES = List.of("lighter-rib-pot", "lighter-pumpkin-pot", "lighter-potato-bake");

    private Finished() {}

    public static Demo demo(String name) {
        return Kitchen.at(Path.of("target", "no-such-kitchen")).demo(Path.of("scripts", name + ".demo.json").toString(), Bundle.STUDY.shelf())
                .value().orElseThrow();
    }
}
