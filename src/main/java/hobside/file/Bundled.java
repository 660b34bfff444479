package hobside.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** The data that come with the program, packed beside its classes. A jar cannot list its folders cheaply, so the names are kept here. */
final class Bundled {

    static final List<String> COMPOSITION = inFolder("foods/composition/", "beef", "coconut", "eggs-and-dairy", "fats-and-oils", "fish", "fruit",
            "grains-and-breads", "lamb-and-goat", "leafy-greens", "nuts-and-seeds", "pork", "poultry", "pulses", "roots-and-starches",
            "sauces-and-seasonings", "sugars", "tinned-meat-and-fish", "vegetables");
    static final List<String> PRICES = inFolder("foods/prices/", "ostrey-landing");
    static final List<String> FACTORS = inFolder("foods/factors/", "fat-kept", "shares");
    static final List<String> GUIDES = inFolder("foods/guides/", "bands", "cautions", "claims", "energy", "intakes");
    static final List<String> SWAPS = inFolder("foods/swaps/", "swaps");
    static final List<String> DISHES =
            inFolder("foods/dishes/", "lantern-night-pumpkin-pot", "lock-keepers-potato-bake", "ropewalk-rib-pot");

    private Bundled() {}

    private static List<String> inFolder(String folder, String... names) {
        List<String> files = new ArrayList<>();
        for (String name : names) {
            files.add(folder + name + ".json");
        }
        return List.copyOf(files);
    }

    static RawFile file(String name) {
        try (InputStream in = Bundled.class.getResourceAsStream("/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + name + " is missing");
            }
            return new RawFile(name, in.readAllBytes());
        } catch (IOException fault) {
            throw new IllegalStateException("the program is damaged at " + name, fault);
        }
    }

    static List<RawFile> files(List<String> names) {
        List<RawFile> files = new ArrayList<>();
        for (String name : names) {
            files.add(file(name));
        }
        return files;
    }
}
