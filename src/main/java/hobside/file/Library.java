package hobside.file;

import hobside.food.Cookery;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.food.Substitutes;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a kitchen cooks with: its foods, its price lists and its cookery. The user's own foods stand in place of ours of the same
 * id; the user's own price lists stand first. Files of the user that are at fault are left out whole and reported.
 */
public record Library(Stock stock, Prices priced, Cookery cookery, List<InputProblem> problems) {

    /** All foods, and the ids of those that are the user's. */
    public record Stock(Shelf shelf, Set<String> own) {

        public Stock {
            own = Set.copyOf(own);
        }

        Stock with(Shelf other) {
            return new Stock(other, own);
        }
    }

    /** All price lists, the user's first, and the one in use. */
    public record Prices(List<PriceFile> all, PriceFile inUse) {

        public Prices {
            all = List.copyOf(all);
        }
    }

    public Library {
        problems = List.copyOf(problems);
    }

    public Shelf shelf() {
        return stock.shelf();
    }

    public List<PriceList> priceLists() {
        List<PriceList> lists = new ArrayList<>();
        for (PriceFile each : priced.all()) {
            lists.add(each.list());
        }
        return lists;
    }

    /** Our data and the user's. What our packs weigh is a matter of our foods, whatever the user has put in their place. */
    public static Library load(Kitchen kitchen) {
        List<InputProblem> problems = new ArrayList<>();
        Shelf bundled = bundledShelf();
        Stock own = withOwn(bundled, kitchen.ownFoods(problems), problems);
        Stock stock = own.with(withPacks(own.shelf(), kitchen.ownPacks(problems)));
        return new Library(stock, prices(kitchen, stock.shelf(), bundled, problems), bundledCookery(), problems);
    }

    private static Prices prices(Kitchen kitchen, Shelf shelf, Shelf bundled, List<InputProblem> problems) {
        List<PriceFile> lists = new ArrayList<>(kitchen.prices().all(shelf, problems));
        for (PriceList list : bundledPrices(bundled)) {
            lists.add(new PriceFile(list, Optional.empty()));
        }
        String chosen = kitchen.prices().inUse();
        PriceFile inUse = lists.isEmpty() ? new PriceFile(PriceList.NONE, Optional.empty()) : lists.get(0);
        for (int i = 0; i < lists.size() && !chosen.isEmpty(); i++) {
            inUse = lists.get(i).name().equals(chosen) ? lists.get(i) : inUse;
        }
        return new Prices(lists, inUse);
    }

    static Shelf withPacks(Shelf shelf, List<OwnPack> packs) {
        return packs.isEmpty() ? shelf : Shelf.drawingOn(new Layered(shelf, packs));
    }

    private static Stock withOwn(Shelf bundled, List<RawFile> files, List<InputProblem> problems) {
        if (files.isEmpty()) {
            return new Stock(bundled, Set.of());
        }
        FoodFiles.Sorted own = FoodFiles.sort(files, bundled);
        problems.addAll(own.problems());
        Set<String> ids = new HashSet<>();
        for (Food food : own.foods()) {
            ids.add(food.id());
        }
        return new Stock(own.foods().isEmpty() ? bundled : bundled.with(own.foods()), ids);
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

    /** The price list in use: the one the user chose, else the first of the user's, else the first that comes with the program. */
    public PriceList prices() {
        return priced.inUse().list();
    }
}
