package hobside.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads JSON as far as it goes: up to the first fault, whole things only. A number or text counts when something sound follows it, so
 * that 12 is never read where 120 was cut short. Of the objects and lists that were open at the fault only those stay that hold parts
 * of a document side by side ({@link #SPINE}); a half-read row is left out.
 */
final class JsonRest {

    /** Stands where lines were damaged: as an item of a list, and as the key of a member of an object. */
    static final String GAP = "damaged lines";

    /** These may be there in part; everything else is there whole or not at all. */
    private static final Set<String> SPINE = Set.of("dish", "plan", "method", "script", "cues", "names", "hall", "tasks", "prices", "foods");

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(JsonTree.MOST_LEVELS).build())
            .build();

    /**
     * What was read.
     *
     * @param tree empty when not even the first bracket was sound
     * @param fault the line of the fault; 0 when there was none
     * @param isCut the text ended before its last bracket
     * @param open the keys of what was open at the fault, from the outside in
     */
    record Rest(Optional<Json> tree, int fault, boolean isCut, List<String> open) {

        Rest {
            open = List.copyOf(open);
        }
    }

    private final JsonParser parser;
    private final List<String> open = new ArrayList<>();
    private final Set<Json> closed = Collections.newSetFromMap(new IdentityHashMap<>());
    private JsonProcessingException fault;

    private JsonRest(JsonParser parser) {
        this.parser = parser;
    }

    static Rest read(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            return new JsonRest(parser).whole();
        } catch (IOException impossible) {
            throw new IllegalStateException("a text in memory cannot fail to be read", impossible);
        }
    }

    private Rest whole() throws IOException {
        Json tree = null;
        JsonToken first = next();
        if (first == JsonToken.START_OBJECT) {
            tree = object();
            if (fault == null && next() != null) {
                return new Rest(Optional.of(tree), parser.currentTokenLocation().getLineNr(), false, List.of());
            }
        }
        JsonLocation at = fault == null ? null : fault.getLocation();
        int line = fault == null && first == JsonToken.START_OBJECT ? 0 : at == null ? 1 : at.getLineNr();
        return new Rest(Optional.ofNullable(tree), line, fault instanceof JsonEOFException, open);
    }

    /** The next token; null at a fault or at the end. After a fault nothing is read any more. */
    private JsonToken next() throws IOException {
        if (fault != null) {
            return null;
        }
        try {
            JsonToken token = parser.nextToken();
            // Texts are read to their end only when they are asked for; a fault in one has to come to light here.
            parser.finishToken();
            return token;
        } catch (JsonProcessingException broken) {
            fault = broken;
            return null;
        }
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    /** Of an object only what stands before a gap, or before a key a second time, is surely its own: two may have run together there. */
    private Json.Obj object() throws IOException {
        Json.Obj object = new Json.Obj(line());
        Set<String> seen = new HashSet<>();
        boolean trusted = true;
        JsonToken token = next();
        while (token == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            int line = line();
            token = next();
            if (token == null) {
                return object;
            }
            Json value = value(token, key);
            token = next();
            if (trusted && counts(value, key)) {
                trusted = !key.equals(GAP) && key.length() <= JsonTree.MOST_KEY && seen.add(key);
                object.add(new Json.Entry(trusted ? key : GAP, line, value));
            }
        }
        return object;
    }

    private Json list() throws IOException {
        int line = line();
        List<Json> items = new ArrayList<>();
        JsonToken token = next();
        while (token != null && token != JsonToken.END_ARRAY) {
            Json item = value(token, "");
            token = next();
            if (counts(item, "")) {
                items.add(item);
            }
        }
        return new Json.Arr(line, items);
    }

    /** A bracket that was closed, or a text or number that something sound follows; or what may be there in part. */
    private boolean counts(Json value, String key) {
        boolean partly = SPINE.contains(key) && (value instanceof Json.Obj || value instanceof Json.Arr);
        return fault == null || closed.contains(value) || partly;
    }

    private Json value(JsonToken token, String key) throws IOException {
        int line = line();
        return switch (token) {
            case START_OBJECT, START_ARRAY -> inside(token, key);
            case VALUE_STRING -> parser.getTextLength() <= JsonTree.MOST_TEXT && !parser.getText().equals(GAP) ? new Json.Text(line, parser.getText()) : gap(line);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getTextLength() <= JsonTree.MOST_DIGITS
                    ? new Json.Num(line, Numbers.parse(parser.getText()), parser.getText()) : gap(line);
            case VALUE_TRUE, VALUE_FALSE, VALUE_NULL -> new Json.Word(line, parser.getText());
            case END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE -> throw new IllegalStateException("no value begins with " + token);
        };
    }

    private Json inside(JsonToken bracket, String key) throws IOException {
        open.add(key);
        Json value = bracket == JsonToken.START_OBJECT ? object() : list();
        if (fault == null) {
            open.remove(open.size() - 1);
            closed.add(value);
        }
        return value;
    }

    static Json gap(int line) {
        return new Json.Word(line, GAP);
    }

    static boolean isGap(Json value) {
        return value instanceof Json.Word word && word.written().equals(GAP);
    }
}
