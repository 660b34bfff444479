package hobside.file.bring;

import hobside.talk.Demo;
import hobside.file.DemoReader;
import hobside.file.DemoWriter;
import hobside.file.FoodFiles;
import hobside.file.FoodWriter;
import hobside.file.Kitchen;
import hobside.file.Own;
import hobside.file.OwnPack;
import hobside.file.PriceReader;
import hobside.file.PriceWriter;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.food.Shelf;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes what a review offers into the kitchen, once somebody has said yes: whole or not at all, and never over another file. */
public final class Taking {

    private final Kitchen kitchen;
    private final Shelf shelf;

    /** @param shelf the shelf that the review was made with */
    public Taking(Kitchen kitchen, Shelf shelf) {
        this.kitchen = kitchen;
        this.shelf = shelf;
    }

    public Saving take(Review review) {
        if (review.isEmpty()) {
            return new Saving.NotSaved("Nothing is left to take from " + review.file() + ".");
        }
        Review.Goods goods = review.goods();
        if (goods instanceof Review.Goods.Pack pack) {
            return kitchen.keep(Own.PACK, pack.name(), OwnPack.bytes(pack.name(), pack.foods()));
        }
        if (goods instanceof Review.Goods.Foods foods) {
            RawFile file = RawFile.of(foods.name(), FoodWriter.file(foods.group(), foods.foods()));
            return checked(Own.FOODS, file, FoodFiles.read(List.of(file), shelf));
        }
        if (goods instanceof Review.Goods.Prices prices) {
            RawFile file = RawFile.of(prices.name(), PriceWriter.file(prices.list()));
            return checked(Own.PRICES, file, PriceReader.read(file, shelf));
        }
        Review.Goods.Recipe recipe = (Review.Goods.Recipe) goods;
        return dish(recipe.name(), recipe.draft().demo());
    }

    private Saving dish(String name, Demo demo) {
        RawFile file = new RawFile(name, DemoWriter.dish(demo, shelf).getBytes(StandardCharsets.UTF_8));
        return checked(Own.DISH, file, DemoReader.read(file, shelf));
    }

    /** What cannot be read back is not written. */
    private Saving checked(Own kind, RawFile file, Read<?> back) {
        return back.value().isPresent() ? kitchen.keep(kind, file.name(), file.bytes())
                : new Saving.NotSaved("Not saved: it could not be read back. " + back.problems().get(0).written());
    }
}
