package hobside.talk.plain;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A language whose words can be counted and graded. For any other there is no grade, and none is guessed. */
public enum Language {
    ENGLISH("en", Set.of("two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "fifteen", "twenty",
            "thirty", "forty", "fifty", "sixty", "hundred", "thousand", "half", "third", "thirds", "quarter", "quarters", "fifth",
            "fifths", "tenth", "tenths", "dozen", "twice")) {
        @Override
        int syllables(String part) {
            return EnglishSyllables.of(part);
        }
    },
    SPANISH("es", Set.of("dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce", "quince", "veinte",
            "treinta", "cuarenta", "cincuenta", "sesenta", "cien", "ciento", "mil", "medio", "media", "mitad", "tercio", "tercios", "cuarto",
            "cuartos", "quinto", "quintos", "décimo", "décimos", "docena")) {
        @Override
        int syllables(String part) {
            return SpanishSyllables.of(part);
        }
    };

    private final String code;
    private final Set<String> numberWords;

    Language(String code, Set<String> numberWords) {
        this.code = code;
        this.numberWords = numberWords;
    }

    /** The language of this code (ISO 639-1); empty when we cannot grade it. "en-GB" is English. */
    public static Optional<Language> of(String code) {
        String main = code.split("[-_]", 2)[0];
        return List.of(values()).stream().filter(language -> language.code.equalsIgnoreCase(main)).findFirst();
    }

    public String code() {
        return code;
    }

    abstract int syllables(String part);

    /** Whether a listener has to hold a number here. "One" is left out: it is mostly no number. */
    boolean isNumber(Word word) {
        return word.isNumeral() || numberWords.contains(word.plain());
    }
}
