package hobside.file;

import hobside.food.Cookery;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.food.Substitutes;
import hobside.guide.GuideBook;
import java.util.ArrayList;
import java.util.List;

/** The program's own data read from their JSON files, with every check that a user's file gets: thorough, and too slow for each start. */
final class Originals {

    private Originals() {}

    static Shelf shelf() {
        return Shelf.of(sound(FoodFiles.read(Bundled.files(Bundled.COMPOSITION), Shelf.EMPTY)));
    }

    static List<PriceList> prices(Shelf shelf) {
        List<PriceList> lists = new ArrayList<>();
        for (RawFile file : Bundled.files(Bundled.PRICES)) {
            lists.add(sound(PriceReader.read(file, shelf)));
        }
        return lists;
    }

    static Cookery cookery() {
        return sound(CookeryReader.read(Bundled.files(Bundled.FACTORS)));
    }

    static Substitutes substitutes(Shelf shelf) {
        return sound(SwapReader.read(Bundled.file(Bundled.SWAPS.get(0)), shelf));
    }

    /** The tree of a bundled dish that can be read with these foods. */
    static Json.Obj dish(String file, Shelf shelf) {
        RawFile raw = Bundled.file(file);
        sound(DemoReader.read(raw, shelf));
        return Kind.of(raw, List.of(DemoReader.DISH), new Problems(raw.name())).orElseThrow();
    }

    static GuideBook guides() {
        return sound(GuideReader.read(Bundled.files(Bundled.GUIDES)));
    }

    private static <T> T sound(Read<T> read) {
        return read.value().orElseThrow(() -> new IllegalStateException("the program's own data are damaged: " + read.problems().get(0).written()));
    }
}
