package hobside.screen.offers;

import hobside.advice.Offer;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.bench.Bench;
import java.util.List;
import java.util.Optional;

/** What can be changed in one ingredient, or in the whole pot, with the effect of each on the plan as it stands. */
public record OffersScreen(Bench bench, Optional<Ingredient> about, List<Offer> offers, int cursor) implements Screen {

    /** The keys of the offers. */
    enum Action implements Keys.Bound {
        TAKE("enter", "take it into the plan"),
        OTHER("f", "another food"),
        BACK("escape q ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    /** The offers for the row the cursor of the Bench stands on. */
    public static OffersScreen of(Bench bench) {
        Optional<Ingredient> about = bench.ingredient();
        var demo = bench.demo();
        var offers = bench.desk().study().offers();
        List<Offer> found = about.isPresent()
                ? offers.forIngredient(demo.dish(), demo.plan(), about.get().id())
                : offers.forPot(demo.dish(), demo.plan());
        return new OffersScreen(bench, about, found, 0);
    }

    String title() {
        return about.map(ingredient -> "Changes for the " + Names.brief(now(ingredient))).orElse("Changes for the whole pot");
    }

    /** The ingredient, or what a swap of the plan has put in its place. */
    private Ingredient now(Ingredient ingredient) {
        return bench.desk().now().item(ingredient.id()).filter(item -> !item.food().id().equals(ingredient.food().id()))
                .map(item -> Ingredient.of(item.food().id(), item.food(), ingredient.quantity())).orElse(ingredient);
    }

    Optional<Offer> current() {
        return offers.isEmpty() ? Optional.empty() : Optional.of(offers.get(cursor));
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> moved(pressed.key()));
        }
        return Next.to(this);
    }

    private Next moved(Key key) {
        return Next.to(new OffersScreen(bench, about, offers, Cursor.after(key, cursor, Math.max(1, offers.size()))));
    }

    private Next act(Action action) {
        return switch (action) {
            case TAKE -> current().map(this::take).orElseGet(() -> Next.to(this));
            case OTHER -> OtherFood.ask(this);
            case BACK -> Next.to(bench);
        };
    }

    /** A blocked offer is not taken: its reason stands where the effect would stand. */
    private Next take(Offer offer) {
        return offer.blocked().isPresent() ? Next.to(this)
                : bench.taking(offer.change(), "Taken: " + offer.title() + ". On the plan's side, e edits its amounts.");
    }

    @Override
    public void view(Frame frame) {
        OffersView.draw(this, frame);
    }
}
