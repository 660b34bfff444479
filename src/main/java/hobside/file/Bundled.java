package hobside.file;

import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The data that come with the program, packed beside its classes. A jar cannot list its folders cheaply, so the names are kept here. */
final class Bundled {

    static final List<String> COMPOSITION = inFolder("foods/composition/", "beef", "coconut", "eggs-and-dairy", "fats-and-oils", "fish", "fruit",
            "grains-and-breads", "lamb-and-goat", "leafy-greens", "nuts-and-seeds", "pork", "poultry", "pulses", "roots-and-starches",
            "sauces-and-seasonings", "shellfish", "snacks", "spices-and-herbs", "sugars", "tinned-meat-and-fish", "veal-and-game", "vegetables");
    static final List<String> PRICES = inFolder("foods/prices/", "ostrey-landing");
    static final List<String> FACTORS = inFolder("foods/factors/", "fat-kept", "shares");
    static final List<String> GUIDES = inFolder("foods/guides/", "bands", "cautions", "claims", "energy", "intakes");
    static final List<String> SWAPS = inFolder("foods/swaps/", "swaps");
    static final List<String> DISHES =
            inFolder("foods/dishes/", "lantern-night-pumpkin-pot", "lock-keepers-potato-bake", "ropewalk-rib-pot");

    private static ZipFile jar;

    private Bundled() {}

    private static List<String> inFolder(String folder, String... names) {
        List<String> files = new ArrayList<>();
        for (String name : names) {
            files.add(folder + name + ".json");
        }
        return List.copyOf(files);
    }

    static RawFile file(String name) {
        byte[] bytes = bytes(name);
        if (bytes == null) {
            throw new IllegalStateException("the program is incomplete: " + name + " is missing");
        }
        return new RawFile(name, bytes);
    }

    /** What a file beside the classes holds; null when there is none. */
    static synchronized byte[] bytes(String name) {
        try {
            File file = new File(HOME, name);
            if (HOME.isDirectory() && file.isFile()) {
                return fromFolder(file);
            }
            return HOME.toString().endsWith(".jar") ? fromOurJar(name) : fromAnywhere(name);
        } catch (IOException fault) {
            throw new IllegalStateException("the program is damaged at " + name, fault);
        }
    }

    private static byte[] fromFolder(File file) throws IOException {
        try (InputStream in = new FileInputStream(file)) {
            return in.readAllBytes();
        }
    }

    /** Straight from the jar: the way by the class loader looks through the whole Java library first, at every start. */
    private static byte[] fromOurJar(String name) throws IOException {
        // Left open like the class loader's own: to open it anew for each page is a tenth of the start.
        jar = jar == null ? new ZipFile(HOME) : jar;
        return entry(jar, name);
    }

    static byte[] fromJar(File home, String name) throws IOException {
        try (ZipFile jar = new ZipFile(home)) {
            return entry(jar, name);
        }
    }

    private static byte[] entry(ZipFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        if (entry == null) {
            return null;
        }
        try (InputStream in = jar.getInputStream(entry)) {
            return in.readAllBytes();
        }
    }

    private static byte[] fromAnywhere(String name) throws IOException {
        try (InputStream in = Bundled.class.getResourceAsStream("/" + name)) {
            return in == null ? null : in.readAllBytes();
        }
    }

    /** The folder of a runtime image that holds our pages as plain files: out of the image they are read ten times as slowly. */
    private static final String IN_IMAGE = "lib/hobside";

    /** Where the classes are: the jar, a folder while the program is being built, or beside the image; empty when nobody can tell. */
    private static final File HOME = home();

    private static File home() {
        if (Bundled.class.getModule().isNamed()) {
            return new File(System.getProperty("java.home", ""), IN_IMAGE);
        }
        CodeSource source = Bundled.class.getProtectionDomain().getCodeSource();
        try {
            return source == null ? new File("") : new File(source.getLocation().toURI());
        } catch (URISyntaxException | IllegalArgumentException elsewhere) {
            return new File("");
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
