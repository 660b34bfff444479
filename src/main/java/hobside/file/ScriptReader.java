package hobside.file;

import hobside.talk.Cue;
import hobside.talk.Edit;
import hobside.talk.Script;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads what was done to a talk by hand. */
final class ScriptReader {

    private static final Keys KEYS = Keys.of("language", "wordsPerMinute", "slot", "names", "cues");
    private static final Keys NAME = Keys.of("of", "here");
    private static final Keys CUE = Keys.of("cue", "in", "after", "kind", "words", "who", "seconds", "must", "equipment", "props", "out");

    /** A key names a change and a caution at once. */
    private static final int KEY = 4 * Limits.ID;

    private static final int NEEDS = 40;
    private static final Bounds SECONDS = Bounds.of(0, 86_400, "seconds", "say how long the hands are busy");

    private static final Bounds RATE = Bounds.of(Script.Pacing.SLOWEST, Script.Pacing.FASTEST, "words a minute", "130 is usual");
    private static final Bounds SLOT = Bounds.of(0, Limits.MINUTES, "minutes", "say how long the slot is, or leave it out");

    private final Problems problems;

    private ScriptReader(Problems problems) {
        this.problems = problems;
    }

    /** The part "script" of a demo; a script that nobody touched where there is none. */
    static Script read(Fields demo) {
        if (!demo.has("script")) {
            return Script.UNTOUCHED;
        }
        Optional<Fields> fields = Fields.of(demo.value("script"), demo.where().field("script"), KEYS, demo.problems());
        return fields.isEmpty() ? Script.UNTOUCHED : new ScriptReader(demo.problems()).script(fields.get());
    }

    private Script script(Fields fields) {
        String language = fields.textOr("language", 3, Script.FIRST_LANGUAGE);
        int rate = fields.whole("wordsPerMinute", RATE, Script.Pacing.USUAL);
        int slot = fields.whole("slot", SLOT, 0);
        Map<String, String> glosses = new HashMap<>();
        each(fields, "names", NAME, name -> {
            Optional<String> of = name.text("of", Limits.ID);
            Optional<String> here = name.text("here", Limits.WORDS);
            of.ifPresent(id -> here.ifPresent(words -> glosses.put(id, words)));
            return of;
        });
        return new Script(language, new Script.Pacing(rate, slot), glosses, each(fields, "cues", CUE, this::edit));
    }

    private <T> List<T> each(Fields fields, String key, Keys keys, Function<Fields, Optional<T>> read) {
        List<T> all = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        List<Json> items = fields.list(key, Limits.CUES);
        for (int i = 0; i < items.size(); i++) {
            Where where = fields.where().field(key).item(i);
            Optional<Fields> item = Fields.of(items.get(i), where, keys, problems);
            if (item.isPresent() && isNew(item.get(), keys.listed().get(0), seen)) {
                read.apply(item.get()).ifPresent(all::add);
            }
        }
        return all;
    }

    private static boolean isNew(Fields item, String key, Set<String> seen) {
        String name = item.textOr(key, KEY, "");
        if (!name.isEmpty() && !seen.add(name)) {
            item.fault(key, "\"" + name + "\" a second time", Wanted.of("each " + key + " once", "put both lines together"));
            return false;
        }
        return true;
    }

    private Optional<Edit> edit(Fields fields) {
        Optional<String> cue = fields.text("cue", KEY);
        Optional<Cue.Kind> kind = fields.has("kind") ? fields.word("kind", among(Cue.Kind.values(), Cue.Kind::word), words(Cue.Kind.values(), Cue.Kind::word))
                : Optional.empty();
        Edit.Traits traits = new Edit.Traits(kind, details(fields), fields.yes("out"));
        Map<String, String> words = words(fields);
        Optional<Edit.Place> place = fields.has("in") ? fields.text("in", KEY).map(in -> new Edit.Place(in, fields.textOr("after", KEY, ""))) : Optional.empty();
        if (cue.isPresent() && Edit.isOwn(cue.get()) && (words.isEmpty() || place.isEmpty())) {
            fields.fault("cue", "a cue of your own without words or place", Wanted.of("\"words\" and \"in\"", "say what it tells and in which section it stands"));
            return Optional.empty();
        }
        return cue.map(key -> new Edit(key, words, traits, place));
    }

    private Map<String, String> words(Fields fields) {
        Map<String, String> words = new HashMap<>();
        if (!fields.has("words")) {
            return words;
        }
        Json value = fields.value("words");
        List<String> languages = value instanceof Json.Obj object ? object.entries().stream().map(Json.Entry::key).toList() : List.of();
        Optional<Fields> all = Fields.of(value, fields.where().field("words"), Keys.of(languages), problems);
        all.ifPresent(each -> languages.forEach(language -> each.text(language, Limits.STEP).ifPresent(text -> words.put(language, text))));
        return words;
    }

    private static Optional<Cue.Details> details(Fields fields) {
        if (!fields.has("who")) {
            return Optional.empty();
        }
        Optional<Cue.Who> who = fields.word("who", among(Cue.Who.values(), Cue.Who::word), words(Cue.Who.values(), Cue.Who::word));
        Cue.Needs needs = new Cue.Needs(fields.texts("equipment", NEEDS, Limits.WORDS), fields.texts("props", NEEDS, Limits.WORDS));
        int seconds = fields.whole("seconds", SECONDS, 0);
        boolean must = fields.yes("must");
        return who.map(each -> new Cue.Details(each, seconds, must, needs));
    }

    private static <T> Function<String, Optional<T>> among(T[] all, Function<T, String> word) {
        return text -> Arrays.stream(all).filter(each -> word.apply(each).equals(text)).findFirst();
    }

    private static <T> List<String> words(T[] all, Function<T, String> word) {
        return Arrays.stream(all).map(word).toList();
    }
}
