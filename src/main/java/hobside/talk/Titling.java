package hobside.talk;

import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.MorePeople;
import hobside.dish.Swap;
import hobside.words.Words;
import java.util.HashMap;
import java.util.Map;

/** Changes in a few words, in the language of the talk. In English they are those of {@link Change#told}. */
final class Titling {

    private Titling() {}

    static String of(Change change, Called called, Words words) {
        return words.say("talk.title." + called.word(change), gaps(change, called, words));
    }

    private static Map<String, String> gaps(Change change, Called called, Words words) {
        Map<String, String> gaps = new HashMap<>();
        if (!change.of().isEmpty()) {
            gaps.put("food", called.the(change.of()));
            gaps.put("bare", called.bare(change.of()));
        }
        if (change instanceof Swap swap) {
            String name = called.whole(swap.food());
            gaps.put("new", name + (name.contains(",") ? "," : ""));
        }
        if (change instanceof CookAnotherWay way) {
            gaps.put("method", words.say("talk.method." + way.method().word()));
        }
        if (change instanceof MorePeople more) {
            gaps.put("n", Integer.toString(more.extra()));
        }
        return gaps;
    }
}
