package hobside.dish;

import hobside.food.Factors;
import hobside.food.Part;
import java.util.Optional;

/** The common work of trimming, skinning and draining: a share of one kind of part comes off and is thrown away. */
record TakeOff(Part.Kind part, Factors.Name typical, Taken taken) {

    Pot from(Pot pot, String of, Kit kit) {
        Item item = pot.item(of).orElseThrow();
        double share = kit.share(of + "/" + typical.word(), taken, typical, item.partGrams(part));
        return pot.with(item.takingOff(part, share));
    }

    /** Says so where another food has taken the ingredient's place, for then the reason is that food's. */
    private static String replaced(Pot pot, String of) {
        String now = pot.item(of).orElseThrow().food().name();
        boolean other = pot.dish().ingredient(of).map(old -> !old.food().name().equals(now)).orElse(false);
        return other ? "In this plan " + now + " takes its place. " : "";
    }

    Optional<String> blocked(Pot pot, String of, String whenNone) {
        return Blocked.unlessThere(pot, of)
                .or(() -> Blocked.when(pot.item(of).orElseThrow().partGrams(part) <= 0, replaced(pot, of) + whenNone));
    }
}
