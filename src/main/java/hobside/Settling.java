package hobside;

import hobside.file.Kitchen;
import hobside.file.Moving;
import hobside.screen.Effect;
import hobside.screen.EffectRunner;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.place.Place;
import hobside.screen.place.PlaceScreen;
import java.nio.file.Path;
import java.util.Optional;

/** Finds a kitchen that can be written to, when the one that was named or found may only be read: asks, then moves what is there. */
final class Settling implements EffectRunner {

    private static final String USUAL = "~/hobside-kitchen";

    private final Kitchen locked;
    private final Kitchen.Surroundings around;
    private Optional<Kitchen> kitchen = Optional.empty();
    private String said = "";

    Settling(Kitchen locked, Kitchen.Surroundings around) {
        this.locked = locked;
        this.around = around;
    }

    Next question() {
        return Next.to(PlaceScreen.of(locked.folder().toString(), USUAL));
    }

    /** The kitchen to go on with; empty when the user left. */
    Optional<Kitchen> kitchen() {
        return kitchen;
    }

    /** What came of it, in a sentence for the first screen. */
    String said() {
        return said;
    }

    @Override
    public Optional<Message> carryOut(Effect effect) {
        if (effect instanceof Place.Keep keep) {
            return Optional.of(new Message.Told(keep(keep.words())));
        }
        if (effect instanceof Place.OnlyLook) {
            kitchen = Optional.of(locked);
            said = "Only to look at: nothing you change is kept. Start again to name a folder for it.";
            return Optional.of(new Message.Told(new Place.Settled()));
        }
        throw new IllegalArgumentException("no such work here: " + effect);
    }

    private Object keep(String words) {
        Optional<Path> folder = Moving.named(words, around);
        if (folder.isEmpty()) {
            return new Place.Refused("That is no name of a folder. Type one, such as " + USUAL + ", and press Enter.");
        }
        Moving.Moved moved = Moving.to(folder.get(), locked);
        if (moved.kitchen().isEmpty()) {
            return new Place.Refused(moved.said());
        }
        kitchen = moved.kitchen();
        said = moved.said();
        return new Place.Settled();
    }
}
