package hobside.practice;

import hobside.dish.Change;
import hobside.ledger.Step;
import hobside.talk.Demo;
import hobside.talk.Speech;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWords;
import hobside.talk.TalkWriter;
import hobside.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A dish with a plan, worked out, and everything that can be said of it. */
final class Lesson {

    private final Stand stand;
    private final TalkWords called;
    private final Teaching with;
    private Talk talk;

    private Lesson(Stand stand, Teaching with) {
        this.stand = stand;
        this.called = TalkWords.of(stand);
        this.with = with;
    }

    static Lesson of(Demo demo, Teaching with) {
        return new Lesson(Stand.of(demo, with.books(), with.beside()), with);
    }

    Stand stand() {
        return stand;
    }

    Teaching with() {
        return with;
    }

    Demo demo() {
        return stand.demo();
    }

    TalkWords called() {
        return called;
    }

    Words words() {
        return with.words();
    }

    Speech speech() {
        return Speech.in(words());
    }

    /** The changes that are made and can be made, in the order told. */
    List<Step> steps() {
        return stand.ledger().steps().stream().filter(Step::counts).toList();
    }

    /** The steps whose change is of this kind, by its word. */
    List<Step> steps(String kind) {
        return steps().stream().filter(step -> step.planned().change().kind().word().equals(kind)).toList();
    }

    String title(Change change) {
        return called.title(change);
    }

    String say(String key) {
        return words().say("exercise." + key);
    }

    String say(String key, Map<String, String> gaps) {
        return words().say("exercise." + key, gaps);
    }

    Talk talk() {
        talk = talk == null ? TalkWriter.write(stand) : talk;
        return talk;
    }

    /** The section of a change in the talk. */
    Optional<Talk.Section> section(Change change) {
        String key = TalkWriter.key(change);
        return talk().sections().stream().filter(section -> section.part() == Talk.Part.CHANGE && section.key().equals(key)).findFirst();
    }

    /** Where the cook stands before a step: the dish, and what has been changed already. */
    String scene(Step step) {
        List<Step> all = steps();
        List<String> before = all.subList(0, all.indexOf(step)).stream().map(each -> title(each.planned().change())).toList();
        return before.isEmpty() ? scene() : say("scene.after", Map.of("dish", called.dish(), "before", String.join("; ", before)));
    }

    /** The dish as it is cooked. */
    String scene() {
        return say("scene.first", Map.of("dish", called.dish()));
    }

    /** The dish and all its changes. */
    String sceneOfAll() {
        String all = steps().stream().map(step -> title(step.planned().change())).collect(Collectors.joining("; "));
        return all.isEmpty() ? scene() : say("scene.after", Map.of("dish", called.dish(), "before", all));
    }
}
