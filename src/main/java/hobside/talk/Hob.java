package hobside.talk;

import hobside.dish.Item;
import hobside.dish.MethodStep;
import hobside.dish.Names;
import hobside.dish.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The method of the dish, given out stage by stage as the talk goes on. A name in braces, such as {butter}, is the id of an
 * ingredient and is read as whatever takes its place today.
 */
final class Hob {

    private static final Pattern INGREDIENT = Pattern.compile("\\{([a-z0-9-]+)\\}");

    private final Stand stand;
    private final List<MethodStep> waiting;
    private Stage told = Stage.PREPARE;

    Hob(Stand stand) {
        this.stand = stand;
        this.waiting = new ArrayList<>(stand.demo().dish().method());
    }

    /** The steps that come before a change of this stage, and are not told yet. Browning and finishing come before what is done to them. */
    List<Cue> before(Stage stage) {
        return take(stage == Stage.BROWN || stage == Stage.FINISH ? stage.ordinal() : stage.ordinal() - 1);
    }

    /** Whether steps of a later stage have been told already. */
    boolean isPast(Stage stage) {
        return told.ordinal() > stage.ordinal();
    }

    /** All that is left. */
    List<Cue> rest() {
        return take(Stage.SERVE.ordinal());
    }

    private List<Cue> take(int upTo) {
        List<Cue> cues = new ArrayList<>();
        waiting.removeIf(step -> {
            boolean now = step.stage().ordinal() <= upTo;
            if (now) {
                told = step.stage().compareTo(told) > 0 ? step.stage() : told;
                cues.add(Cue.act(words(step)));
            }
            return now;
        });
        return cues;
    }

    private String words(MethodStep step) {
        Matcher matcher = INGREDIENT.matcher(step.words());
        String words = matcher.replaceAll(found -> Matcher.quoteReplacement(name(found.group(1))));
        return step.minutes() > 0 ? words + " (" + Spoken.capital(Spoken.minutes(step.minutes())) + ".)" : words;
    }

    /** The word its cook uses, or the name of what has taken its place. */
    private String name(Item item, UnaryOperator<String> names) {
        boolean same = stand.demo().dish().ingredient(item.id()).map(old -> old.food().id().equals(item.food().id())).orElse(true);
        return same ? names.apply(item.id()) : Names.brief(item.food().name());
    }

    private String name(String id) {
        UnaryOperator<String> names = Names.of(stand.demo().dish(), stand.demo().plan());
        return stand.pots().after().item(id).map(item -> name(item, names)).orElse(names.apply(id) + " (left out today)");
    }
}
