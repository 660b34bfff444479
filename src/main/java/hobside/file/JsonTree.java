package hobside.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads JSON (RFC 8259) into a tree that remembers its lines, within bounds: a file of 8 MiB, 32 levels, numbers of 40
 * characters, texts of 20,000, keys of 200. A key may stand only once in an object.
 */
public final class JsonTree {

    static final int MOST_LEVELS = 32;
    static final int MOST_DIGITS = 40;
    static final int MOST_TEXT = 20_000;
    static final int MOST_KEY = 200;

    /** Objects with more keys than this look their keys up in a set. */
    private static final int MANY = 24;

    /** The bounds are ours, so that the messages are; the parser's own only have to be wider. */
    static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_LEVELS + 2)
                    .maxNumberLength(RawFile.MOST_BYTES + 1)
                    .maxStringLength(RawFile.MOST_BYTES + 1)
                    .maxNameLength(RawFile.MOST_BYTES + 1)
                    .build())
            .build();

    private final JsonParser parser;
    private final Problems problems;

    private JsonTree(JsonParser parser, Problems problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /** The tree of a file; empty, with its problems, when it is no sound JSON. */
    public static Optional<Json> read(RawFile file, Problems problems) {
        if (file.bytes().length > RawFile.MOST_BYTES) {
            problems.add(0, "a file of more than 8 MiB",
                    Wanted.of("at most 8 MiB", "check that this is the right file, or split it"));
            return Optional.empty();
        }
        Optional<String> text = Utf8.text(file.bytes(), problems);
        return text.isPresent() ? parse(text.get(), problems) : Optional.empty();
    }

    private static Optional<Json> parse(String text, Problems problems) {
        int before = problems.count();
        try (JsonParser parser = FACTORY.createParser(text)) {
            Optional<Json> tree = new JsonTree(parser, problems).whole();
            return problems.count() == before ? tree : Optional.empty();
        } catch (JsonEOFException fault) {
            JsonFault.cutShort(text, problems);
        } catch (StreamConstraintsException fault) {
            problems.add(fault.getLocation() == null ? 0 : fault.getLocation().getLineNr(), "too many levels of { and [",
                    Wanted.of("at most " + MOST_LEVELS + " levels", "check that this is a file of Hobside"));
        } catch (JsonParseException fault) {
            JsonFault.broken(text, fault.getLocation(), problems);
        } catch (IOException fault) {
            throw new IllegalStateException("a text in memory cannot fail to be read", fault);
        }
        return Optional.empty();
    }

    private Optional<Json> whole() throws IOException {
        if (parser.nextToken() == null) {
            problems.add(0, "an empty file", Wanted.of("a file that begins with {", "delete it, or put a good copy in its place"));
            return Optional.empty();
        }
        Json tree = value(1);
        if (parser.nextToken() != null) {
            problems.add(line(), Shown.quoted(parser.getText()) + " after the end",
                    Wanted.of("nothing after the last }", "delete what follows it"));
        }
        return Optional.of(tree);
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private Json value(int level) throws IOException {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(deeper(level));
            case START_ARRAY -> list(deeper(level));
            case VALUE_STRING -> text();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number();
            case VALUE_TRUE, VALUE_FALSE, VALUE_NULL -> new Json.Word(line(), parser.getText());
            case END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                    throw new IllegalStateException("no value begins with " + token);
        };
    }

    private int deeper(int level) throws StreamConstraintsException {
        if (level > MOST_LEVELS) {
            throw new StreamConstraintsException("too deep", parser.currentTokenLocation());
        }
        return level + 1;
    }

    private Json list(int level) throws IOException {
        int line = line();
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(level));
        }
        return new Json.Arr(line, items);
    }

    private Json object(int level) throws IOException {
        int line = line();
        Json.Obj object = new Json.Obj(line);
        Set<String> many = null;
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            int at = line();
            check(key.length(), MOST_KEY, "a key");
            many = many == null && object.size() >= MANY ? keysOf(object) : many;
            if (many == null ? object.find(key) != null : !many.add(key)) {
                problems.add(at, "the key " + Shown.quoted(key) + " a second time",
                        Wanted.of("each key once", "keep the line that is right and delete the other"));
            }
            parser.nextToken();
            object.add(new Json.Entry(key, at, value(level)));
        }
        return object;
    }

    private static Set<String> keysOf(Json.Obj object) {
        Set<String> keys = new HashSet<>();
        object.entries().forEach(entry -> keys.add(entry.key()));
        return keys;
    }

    private Json text() throws IOException {
        int line = line();
        check(parser.getTextLength(), MOST_TEXT, "a text");
        return new Json.Text(line, parser.getText());
    }

    /** A number that is too long is reported and stands as 0 in a tree that is thrown away. */
    private Json number() throws IOException {
        int line = line();
        boolean fits = check(parser.getTextLength(), MOST_DIGITS, "a number");
        String written = fits ? parser.getText() : "0";
        return new Json.Num(line, Numbers.parse(written), written);
    }

    private boolean check(int length, int most, String what) {
        if (length > most) {
            problems.add(line(), what + " of " + length + " characters",
                    Wanted.of("at most " + most + " characters", "shorten it"));
        }
        return length <= most;
    }
}
