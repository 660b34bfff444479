package hobside.file;

import hobside.measure.Range;
import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Reads the fields of one object. Each question answers with a value or notes a problem and answers with nothing, so that all
 * faults of a file come to light at once.
 */
final class Fields {

    private final Json.Obj object;
    private final Where where;
    private final Problems problems;

    private Fields(Json.Obj object, Where where, Problems problems) {
        this.object = object;
        this.where = where;
        this.problems = problems;
    }

    /** The fields of an object; keys that are not among the known ones are reported. */
    static Optional<Fields> of(Json value, Where where, Keys known, Problems problems) {
        if (!(value instanceof Json.Obj obj)) {
            problems.add(where, value.line(), value.shown(), Wanted.of("an object in { }", "see the example files in foods"));
            return Optional.empty();
        }
        Fields fields = new Fields(obj, where, problems);
        fields.refuseUnknown(known);
        return Optional.of(fields);
    }

    private void refuseUnknown(Keys known) {
        for (Json.Entry entry : object.entries()) {
            if (!known.know(entry.key())) {
                problems.add(where.field(entry.key()), entry.line(), "an unknown key " + Shown.quoted(entry.key()),
                        Wanted.of("one of " + Nearest.listed(known.listed()), Nearest.hintOr(entry.key(), known.listed(),
                                "correct or delete this line")));
            }
        }
    }

    Problems problems() {
        return problems;
    }

    Where where() {
        return where;
    }

    int line() {
        return object.line();
    }

    boolean has(String key) {
        return object.find(key) != null;
    }

    Json value(String key) {
        return object.find(key);
    }

    int lineOf(String key) {
        Json value = object.find(key);
        return value == null ? object.line() : value.line();
    }

    void fault(String key, String found, Wanted wanted) {
        problems.add(key.isEmpty() ? where : where.field(key), lineOf(key), found, wanted);
    }

    private void missing(String key, Wanted wanted) {
        problems.add(where.field(key), object.line(), "nothing", wanted);
    }

    /** A text without control characters that must be there and hold something. */
    Optional<String> text(String key, int most) {
        Json value = object.find(key);
        Optional<String> text = value == null ? Optional.empty() : sound(value, where.field(key), most);
        boolean blank = text.isPresent() && text.get().isBlank();
        if (value == null || blank) {
            fault(key, blank ? "an empty text" : "nothing", Wanted.of("a text of 1 to " + most + " characters",
                    "write it in double quotes"));
            return Optional.empty();
        }
        return text;
    }

    /** A text that may be left out or be empty. */
    String textOr(String key, int most, String otherwise) {
        Json value = object.find(key);
        return value == null ? otherwise : sound(value, where.field(key), most).orElse(otherwise);
    }

    private Optional<String> sound(Json value, Where at, int most) {
        if (!(value instanceof Json.Text written)) {
            problems.add(at, value.line(), value.shown(), Wanted.of("a text of at most " + most + " characters",
                    "write it in double quotes"));
            return Optional.empty();
        }
        String text = written.value();
        if (text.length() > most) {
            problems.add(at, value.line(), "a text of " + text.length() + " characters, " + value.shown(),
                    Wanted.of("at most " + most + " characters", "shorten it"));
            return Optional.empty();
        }
        return isHarmless(text, value, most >= Limits.STEP, at) ? Optional.of(text) : Optional.empty();
    }

    /** Long texts may run over several lines; names and single lines may not. */
    private boolean isHarmless(String text, Json value, boolean lines, Where at) {
        for (int i = 0; i < text.length(); i++) {
            if (!(lines && text.charAt(i) == '\n') && Shown.isHarmful(text, i)) {
                problems.add(at, value.line(), "a hidden or broken character in " + value.shown(),
                        Wanted.of("plain text", "type this text anew without it"));
                return false;
            }
        }
        return true;
    }

    /** The number of a field within its bounds; empty when it is left out or is at fault. */
    OptionalDouble number(String key, Bounds bounds) {
        Json value = object.find(key);
        return value == null ? OptionalDouble.empty() : number(value, where.field(key), bounds);
    }

    OptionalDouble needed(String key, Bounds bounds) {
        if (!has(key)) {
            missing(key, bounds.wanted());
        }
        return number(key, bounds);
    }

    List<Json.Entry> entries() {
        return object.entries();
    }

    OptionalDouble number(Json.Entry entry, Bounds bounds) {
        return number(entry.value(), where.field(entry.key()), bounds);
    }

    /** A whole number; {@code otherwise} when it is left out or is at fault. */
    int whole(String key, Bounds bounds, int otherwise) {
        OptionalDouble number = number(key, bounds);
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            fault(key, object.find(key).shown(), Wanted.of("a whole number", "round it"));
            return otherwise;
        }
        return number.isPresent() ? (int) number.getAsDouble() : otherwise;
    }

    private OptionalDouble number(Json value, Where at, Bounds bounds) {
        if (value instanceof Json.Num num && bounds.hold(num.value())) {
            return OptionalDouble.of(num.value());
        }
        problems.add(at, value.line(), value.shown(), bounds.wanted());
        return OptionalDouble.empty();
    }

    /** A number, or a list of low, typical and high. */
    Optional<Range> range(String key, Bounds bounds) {
        Json value = object.find(key);
        if (!(value instanceof Json.Arr arr)) {
            OptionalDouble one = needed(key, bounds);
            return one.isPresent() ? Optional.of(Range.exactly(one.getAsDouble())) : Optional.empty();
        }
        List<Double> three = new ArrayList<>();
        for (Json item : arr.items()) {
            number(item, where.field(key).item(three.size()), bounds).ifPresent(three::add);
        }
        boolean sound = three.size() == 3 && three.get(0) <= three.get(1) && three.get(1) <= three.get(2);
        if (!sound) {
            fault(key, value.shown(), Wanted.of("a number, or three in order: [low, typical, high]", bounds.wanted().remedy()));
            return Optional.empty();
        }
        return Optional.of(Range.of(three.get(0), three.get(1), three.get(2)));
    }

    /** True, or false when it is left out. */
    boolean yes(String key) {
        Json value = object.find(key);
        boolean yes = value instanceof Json.Word word && word.written().equals("true");
        if (value != null && !yes && !value.shown().equals("false")) {
            fault(key, value.shown(), Wanted.of("true or false", "write it without quotes"));
        }
        return yes;
    }

    /** One word of a closed list. */
    <T extends Worded> Optional<T> word(String key, T[] all) {
        Json value = object.find(key);
        if (value instanceof Json.Text text) {
            Optional<T> meant = Worded.parse(all, text.value());
            if (meant.isPresent()) {
                return meant;
            }
        }
        return word(key, word -> Worded.parse(all, word), Worded.words(all));
    }

    /** One word of a list that has its own way of reading. */
    <T> Optional<T> word(String key, Function<String, Optional<T>> parse, List<String> allowed) {
        Json value = object.find(key);
        if (value == null) {
            missing(key, Wanted.of("one of " + Nearest.listed(allowed), "add it"));
            return Optional.empty();
        }
        Optional<T> meant = value instanceof Json.Text text ? parse.apply(text.value()) : Optional.empty();
        if (meant.isEmpty()) {
            String remedy = value instanceof Json.Text text ? Nearest.hintOr(text.value(), allowed,
                    "write one of them") : "write one of them";
            fault(key, value.shown(), Wanted.of("one of " + Nearest.listed(allowed), remedy));
        }
        return meant;
    }

    /** The items of a list; none when it is left out, and a problem when it is no list or too long. */
    List<Json> list(String key, int most) {
        Json value = object.find(key);
        if (value == null) {
            return List.of();
        }
        if (value instanceof Json.Arr arr && arr.items().size() <= most) {
            return arr.items();
        }
        fault(key, value.shown(), Wanted.of("a list in [ ] of at most " + most, "put it between [ and ]"));
        return List.of();
    }

    /** A list of texts. */
    List<String> texts(String key, int mostItems, int most) {
        List<String> texts = new ArrayList<>();
        List<Json> items = list(key, mostItems);
        for (int i = 0; i < items.size(); i++) {
            sound(items.get(i), where.field(key).item(i), most).ifPresent(texts::add);
        }
        return texts;
    }
}
