package hobside.file.bring;

import hobside.file.Json;
import hobside.file.Shown;
import java.util.ArrayList;
import java.util.List;

/** Takes plain text out of what recipes hold: without mark-up, and without anything that a terminal would obey. */
final class RecipeText {

    private static final String[][] ENTITIES = {{"&nbsp;", " "}, {"&quot;", "\""}, {"&#39;", "'"}, {"&#x27;", "'"}, {"&frac12;", "½"}, {"&frac14;", "¼"},
        {"&frac34;", "¾"}, {"&deg;", "°"}, {"&lt;", "‹"}, {"&gt;", "›"}, {"&amp;", "&"}};

    private RecipeText() {}

    /** All of it on one line; empty when there is none. */
    static String of(Json value) {
        return String.join(" ", all(value)).replaceAll("\\s+", " ").strip();
    }

    /** The texts of a text, a number, a quantity with a value, or a list of them. */
    static List<String> all(Json value) {
        List<String> texts = new ArrayList<>();
        if (value instanceof Json.Arr list) {
            list.items().forEach(item -> texts.addAll(all(item)));
        } else if (value instanceof Json.Text text) {
            texts.add(plain(text.value()).replace('\n', ' '));
        } else if (value instanceof Json.Num number) {
            texts.add(number.written());
        } else if (value instanceof Json.Obj object && object.find("value") != null && !(object.find("value") instanceof Json.Obj)) {
            texts.addAll(all(object.find("value")));
        }
        return texts;
    }

    /** The lines of a text that are not blank. */
    static List<String> lines(Json value) {
        List<String> lines = new ArrayList<>();
        if (value instanceof Json.Text text) {
            for (String line : plain(text.value()).split("\n")) {
                if (!line.isBlank()) {
                    lines.add(line.replaceAll("\\s+", " ").strip());
                }
            }
        }
        return lines;
    }

    private static String plain(String written) {
        String text = written.replaceAll("(?i)<(br|/p|/li|/div)[^<>]{0,100}>", "\n").replaceAll("<[^<>]{0,500}>", " ");
        for (String[] entity : ENTITIES) {
            text = text.replace(entity[0], entity[1]);
        }
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            plain.append(each == '\n' || each == '\r' ? '\n' : Shown.isHarmful(text, i) ? ' ' : each);
        }
        return plain.toString();
    }
}
