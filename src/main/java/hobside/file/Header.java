package hobside.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Looks up the name of a dish in the first lines of its file, without reading all of it. */
final class Header {

    static final int BYTES = 4_096;

    private Header() {}

    /** The name in the beginning of a file of a dish or a demo; the other one when it is not found there. */
    static String name(byte[] beginning, String otherwise) {
        String text = new String(beginning, 0, Math.min(BYTES, beginning.length), StandardCharsets.UTF_8);
        try (JsonParser parser = JsonTree.FACTORY.createParser(text)) {
            String name = name(parser);
            return name.isBlank() ? otherwise : Shown.of(name);
        } catch (IOException cutShort) {
            return otherwise;
        }
    }

    private static String name(JsonParser parser) throws IOException {
        int level = 0;
        for (JsonToken token = parser.nextToken(); token != null && token != JsonToken.START_ARRAY; token = parser.nextToken()) {
            level += token == JsonToken.START_OBJECT ? 1 : token == JsonToken.END_OBJECT ? -1 : 0;
            if (token == JsonToken.FIELD_NAME && level <= 2 && parser.currentName().equals("name")) {
                String name = parser.nextTextValue();
                return name == null ? "" : name;
            }
        }
        return "";
    }
}
