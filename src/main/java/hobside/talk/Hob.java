package hobside.talk;

import hobside.dish.Item;
import hobside.dish.MethodStep;
import hobside.dish.Stage;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The method of the dish, given out stage by stage as the talk goes on. A name in braces, such as {butter}, is the id of an
 * ingredient and is read as whatever takes its place today.
 */
final class Hob {

    private final Stand stand;
    private final Called called;
    private final Speech speech;
    private final List<MethodStep> waiting;
    private Stage told = Stage.PREPARE;

    Hob(Stand stand, Called called) {
        this.stand = stand;
        this.called = called;
        this.speech = Speech.in(stand.words());
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
        for (MethodStep step : List.copyOf(waiting)) {
            if (step.stage().ordinal() <= upTo) {
                waiting.remove(step);
                told = step.stage().compareTo(told) > 0 ? step.stage() : told;
                int number = stand.demo().dish().method().indexOf(step) + 1;
                cues.add(Cue.of("step:" + number, Cue.Kind.DO, words(step, number)));
            }
        }
        return cues;
    }

    private String words(MethodStep step, int number) {
        Words words = stand.words();
        String told = words.filled(called.step(number, step.words()), id -> Optional.of(name(id)));
        return step.minutes() == 0 ? told
                : words.say("talk.hob.time", Map.of("words", told, "time", speech.minutes(step.minutes())));
    }

    /** The word its cook uses, or the name of what has taken its place. */
    private String name(String id) {
        Optional<Item> item = stand.pots().after().item(id);
        boolean known = stand.demo().dish().ingredient(id).isPresent();
        if (item.isEmpty()) {
            return known ? stand.words().say("talk.hob.left-out", Map.of("food", inText(id))) : id;
        }
        boolean same = stand.demo().dish().ingredient(id).map(old -> old.food().id().equals(item.get().food().id())).orElse(true);
        return same ? inText(id) : stand.isEnglish() ? called.brief(item.get().food()) : called.the(item.get().food());
    }

    /** English method steps write their own articles; other languages get the name with its article. */
    private String inText(String id) {
        return stand.isEnglish() ? called.bare(id) : called.the(id);
    }
}
