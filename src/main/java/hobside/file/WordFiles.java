package hobside.file;

import hobside.words.Words;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;

/**
 * Reads the words of a language: {@code foods/words/CODE/*.properties}, one sentence a line. The name of the file stands in front
 * of its keys: {@code cue.say} in talk.properties is talk.cue.say.
 */
public final class WordFiles {

    /** The languages that come with the program, by their codes; the first is that of the screens. */
    public static final List<String> LANGUAGES = List.of("en", "es");

    /** Files that every language has. */
    static final List<String> EVERY = List.of("language", "speech", "reason", "talk", "paper", "questions", "myths", "units", "asked", "practice", "exercise");

    /** Files that a language has whose words do not stand in the records themselves. */
    static final List<String> BESIDE = List.of("foods", "swaps", "cautions", "places", "allergens", "guides", "dishes", "currency", "mark");

    private WordFiles() {}

    public static Words read(String code) {
        Map<String, String> sentences = new HashMap<>();
        EVERY.forEach(name -> sentences.putAll(read(code, name, Bundled.file(path(code, name)).bytes())));
        for (String name : BESIDE) {
            byte[] bytes = Bundled.bytes(path(code, name));
            if (bytes != null) {
                sentences.putAll(read(code, name, bytes));
            }
        }
        return Words.of(code, sentences);
    }

    static String path(String code, String name) {
        return "foods/words/" + code + "/" + name + ".properties";
    }

    /** Hard words of a language with plainer ones; none where nobody has listed any. */
    static Map<String, String> plainWords(String code) {
        byte[] bytes = Bundled.bytes(path(code, "plain-words"));
        return bytes == null ? Map.of() : lines(code, "plain-words", bytes);
    }

    /** The phrases of the rubric in a language; those of the first where it has none. */
    static Map<String, String> concepts(String code) {
        byte[] bytes = Bundled.bytes(path(code, "rubric"));
        return bytes == null ? concepts(LANGUAGES.get(0)) : lines(code, "rubric", bytes);
    }

    private static Map<String, String> read(String code, String name, byte[] bytes) {
        Map<String, String> sentences = new HashMap<>();
        lines(code, name, bytes).forEach((key, sentence) -> sentences.put(name + "." + key, sentence));
        return sentences;
    }

    private static Map<String, String> lines(String code, String name, byte[] bytes) {
        Properties properties = new Properties();
        try {
            properties.load(new StringReader(new String(bytes, StandardCharsets.UTF_8)));
        } catch (IOException | IllegalArgumentException fault) {
            throw new IllegalStateException("the words in " + path(code, name) + " cannot be read", fault);
        }
        Map<String, String> sentences = new HashMap<>();
        properties.forEach((key, sentence) -> sentences.put(key.toString(), sentence.toString().strip()));
        return sentences;
    }
}
