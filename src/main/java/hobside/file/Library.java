package hobside.file;

import hobside.food.Cookery;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.food.Substitutes;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import java.util.ArrayList;
import java.util.List;

/**
 * What a kitchen cooks with: its foods, its price lists and its cookery. The user's own foods stand in place of ours of the same
 * id; the user's own price lists stand first. Files of the user that are at fault are left out whole and reported.
 */
public record Library(Shelf shelf, List<PriceList> priceLists, Cookery cookery, List<InputProblem> problems) {

    public Library {
        priceLists = List.copyOf(priceLists);
        problems = List.copyOf(problems);
    }

    /** Our data and the user's. What our packs weigh is a matter of our foods, whatever the user has put in their place. */
    public static Library load(Kitchen kitchen) {
        List<InputProblem> problems = new ArrayList<>();
        Shelf bundled = bundledShelf();
        Shelf shelf = withOwn(bundled, kitchen.ownFoods(problems), problems);
        shelf = withPacks(shelf, kitchen.ownPacks(problems));
        List<PriceList> prices = new ArrayList<>();
        for (RawFile file : kitchen.ownPrices(problems)) {
            Read<PriceList> list = PriceReader.read(file, shelf);
            list.value().ifPresent(prices::add);
            problems.addAll(list.problems());
        }
        prices.addAll(bundledPrices(bundled));
        return new Library(shelf, prices, bundledCookery(), problems);
    }

    private static Shelf withPacks(Shelf shelf, List<OwnPack> packs) {
        return packs.isEmpty() ? shelf : Shelf.drawingOn(new Layered(shelf, packs));
    }

    private static Shelf withOwn(Shelf bundled, List<RawFile> files, List<InputProblem> problems) {
        if (files.isEmpty()) {
            return bundled;
        }
        FoodFiles.Sorted own = FoodFiles.sort(files, bundled);
        problems.addAll(own.problems());
        return own.foods().isEmpty() ? bundled : bundled.with(own.foods());
    }

    /** The foods that come with the program. */
    public static Shelf bundledShelf() {
        PackIn page = Pack.page(Pack.FOODS);
        return page == null ? Originals.shelf() : Shelf.drawingOn(PackedFoods.read(page));
    }

    static List<PriceList> bundledPrices(Shelf bundled) {
        PackIn page = Pack.page(Pack.PRICES);
        return page == null ? Originals.prices(bundled) : PackedPrices.read(page);
    }

    public static Cookery bundledCookery() {
        PackIn page = Pack.page(Pack.COOKERY);
        return page == null ? Originals.cookery() : PackedCookery.read(page);
    }

    public static Substitutes bundledSubstitutes(Shelf shelf) {
        PackIn page = Pack.page(Pack.SWAPS);
        return page == null ? Originals.substitutes(shelf) : PackedSwaps.read(page);
    }

    /** The daily guides alone: the first picture needs one of them. */
    static List<Guide> bundledDailyGuides() {
        PackIn page = Pack.page(Pack.GUIDES);
        return page == null ? Originals.guides().guides() : PackedGuides.read(page);
    }

    public static GuideBook bundledGuides() {
        PackIn page = Pack.page(Pack.YARDSTICKS);
        return page == null ? Originals.guides() : PackedYardsticks.read(page, bundledDailyGuides());
    }

    /** The price list that is used unless the user chooses another. */
    public PriceList prices() {
        return priceLists.isEmpty() ? PriceList.NONE : priceLists.get(0);
    }
}
