package hobside.file;

import hobside.food.Cookery;
import hobside.food.Food;
import hobside.food.PriceList;
import hobside.food.Shelf;
import hobside.food.Substitutes;
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

    /** Our data and the user's. */
    public static Library load(Kitchen kitchen) {
        List<InputProblem> problems = new ArrayList<>();
        Shelf bundled = bundledShelf();
        FoodFiles.Sorted own = FoodFiles.sort(kitchen.ownFoods(problems), bundled);
        problems.addAll(own.problems());
        Shelf shelf = own.foods().isEmpty() ? bundled : bundled.with(own.foods());
        List<PriceList> prices = new ArrayList<>();
        for (RawFile file : kitchen.ownPrices(problems)) {
            Read<PriceList> list = PriceReader.read(file, shelf);
            list.value().ifPresent(prices::add);
            problems.addAll(list.problems());
        }
        for (RawFile file : Bundled.files(Bundled.PRICES)) {
            prices.add(sound(PriceReader.read(file, shelf)));
        }
        return new Library(shelf, prices, bundledCookery(), problems);
    }

    /** The foods that come with the program. */
    public static Shelf bundledShelf() {
        List<Food> foods = sound(FoodFiles.read(Bundled.files(Bundled.COMPOSITION), Shelf.EMPTY));
        return Shelf.of(foods);
    }

    public static Cookery bundledCookery() {
        return sound(CookeryReader.read(Bundled.files(Bundled.FACTORS)));
    }

    public static Substitutes bundledSubstitutes(Shelf shelf) {
        return sound(SwapReader.read(Bundled.file(Bundled.SWAPS.get(0)), shelf));
    }

    public static GuideBook bundledGuides() {
        return sound(GuideReader.read(Bundled.files(Bundled.GUIDES)));
    }

    private static <T> T sound(Read<T> read) {
        return read.value().orElseThrow(() -> new IllegalStateException("the program's own data are damaged: " + read.problems().get(0).written()));
    }

    /** The price list that is used unless the user chooses another. */
    public PriceList prices() {
        return priceLists.isEmpty() ? PriceList.NONE : priceLists.get(0);
    }
}
