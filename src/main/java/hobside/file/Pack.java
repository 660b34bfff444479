package hobside.file;

import hobside.food.Shelf;
import hobside.guide.GuideBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The program's own data in the form they are started with: pages that the build writes from the JSON files once every check has
 * passed, so that a start need not read and check them again. Where no build has made the pages, the JSON files are read.
 */
public final class Pack {

    static final String FOODS = "foods";
    static final String PRICES = "prices";
    static final String COOKERY = "cookery";
    static final String GUIDES = "guides";
    static final String YARDSTICKS = "yardsticks";
    static final String SWAPS = "swaps";

    /** A bundled dish: the same name as its file, from the folder on. */
    private static final String DISHES = "dishes/";

    private Pack() {}

    /** One page; null when the pages have not been made. */
    static PackIn page(String name) {
        byte[] bytes = Bundled.bytes("pack/" + name);
        return bytes == null ? null : new PackIn(bytes);
    }

    /** The page of a bundled dish, by the name of its file. */
    static String dish(String file) {
        return DISHES + file.substring(file.lastIndexOf('/') + 1, file.length() - ".json".length());
    }

    /** All pages as the JSON files have them now. The same files make the same bytes. */
    static Map<String, byte[]> pages() {
        Shelf shelf = Originals.shelf();
        GuideBook guides = Originals.guides();
        Map<String, byte[]> pages = new LinkedHashMap<>();
        pages.put(FOODS, PackedFoods.page(shelf));
        pages.put(PRICES, PackedPrices.page(Originals.prices(shelf)));
        pages.put(COOKERY, PackedCookery.page(Originals.cookery()));
        pages.put(GUIDES, PackedGuides.page(guides.guides()));
        pages.put(YARDSTICKS, PackedYardsticks.page(guides));
        pages.put(SWAPS, PackedSwaps.page(Originals.substitutes(shelf)));
        for (String file : Bundled.DISHES) {
            pages.put(dish(file), PackedTree.page(Originals.dish(file, shelf)));
        }
        return pages;
    }

    /** Part of the build: writes the pages beside the classes in the given folder. Data that do not pass the checks stop the build. */
    public static void main(String[] folder) throws IOException {
        Path pack = Path.of(folder[0]).resolve("pack");
        for (Map.Entry<String, byte[]> page : pages().entrySet()) {
            Path file = pack.resolve(page.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, page.getValue());
        }
    }
}
