package hobside.practice.rubric;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** An answer cut into words, clauses and sentences. No more than the first 8,000 characters are read. */
final class Text {

    private static final int LONGEST = 8_000;

    /** Words that begin a new clause, so that a "not" before them does not reach over. */
    private static final Set<String> TURNS = Set.of("but", "though", "although", "because", "which", "pero", "sino", "aunque", "porque");

    private final String answer;
    private final List<Token> tokens = new ArrayList<>();
    private int sentence;
    private int clause;

    private Text(String answer) {
        this.answer = answer;
        cut();
    }

    static Text of(String answer) {
        return new Text(answer);
    }

    List<Token> tokens() {
        return tokens;
    }

    String answer() {
        return answer;
    }

    /** As much of the answer as is read. */
    String read() {
        return answer.length() <= LONGEST ? answer : answer.substring(0, LONGEST);
    }

    /** The very words from one token to another. */
    Found found(int first, int last, String why) {
        int from = tokens.get(first).from();
        int to = tokens.get(last).to();
        return new Found(from, to, answer.substring(from, to), why);
    }

    private void cut() {
        int end = Math.min(answer.length(), LONGEST);
        int at = 0;
        while (at < end) {
            if (Character.isLetterOrDigit(answer.charAt(at))) {
                at = word(at, end);
            } else {
                stop(at, end);
                at++;
            }
        }
    }

    private int word(int from, int end) {
        boolean numeral = Character.isDigit(answer.charAt(from));
        int at = from + 1;
        while (at < end && (numeral ? isOfNumber(at, end) : isOfWord(at, end))) {
            at++;
        }
        String word = plain(answer.substring(from, at));
        if (TURNS.contains(word)) {
            clause++;
        }
        tokens.add(new Token(word, from, at, sentence, clause));
        return at;
    }

    private boolean isOfNumber(int at, int end) {
        char sign = answer.charAt(at);
        return Character.isDigit(sign) || (sign == '.' || sign == ',') && at + 1 < end && Character.isDigit(answer.charAt(at + 1));
    }

    private boolean isOfWord(int at, int end) {
        char sign = answer.charAt(at);
        return Character.isLetter(sign) || Character.getType(sign) == Character.NON_SPACING_MARK
                || (sign == '\'' || sign == '’') && at + 1 < end && Character.isLetter(answer.charAt(at + 1));
    }

    private void stop(int at, int end) {
        char sign = answer.charAt(at);
        boolean last = at + 1 >= end || Character.isWhitespace(answer.charAt(at + 1)) || ".!?".indexOf(answer.charAt(at + 1)) >= 0;
        if (sign == '%' && !tokens.isEmpty()) {
            tokens.add(new Token("%", at, at + 1, sentence, clause));
        } else if (sign == '\n' || ".!?".indexOf(sign) >= 0 && last) {
            sentence++;
            clause++;
        } else if (",;:()–—¿¡".indexOf(sign) >= 0) {
            clause++;
        }
    }

    /** Small letters without accents; "it's" is "it", but "don't" stays. */
    static String plain(String word) {
        String small = Normalizer.normalize(word.toLowerCase(java.util.Locale.ROOT).replace('’', '\''), Normalizer.Form.NFD);
        StringBuilder plain = new StringBuilder(small.length());
        for (int i = 0; i < small.length(); i++) {
            if (Character.getType(small.charAt(i)) != Character.NON_SPACING_MARK) {
                plain.append(small.charAt(i));
            }
        }
        int tail = plain.indexOf("'");
        return tail > 0 && !plain.toString().endsWith("n't") ? plain.substring(0, tail) : plain.toString();
    }

    /** Words as they are counted: what stands between spaces and holds a letter or a digit. */
    static int words(String answer) {
        int words = 0;
        boolean holds = false;
        for (int i = 0; i <= answer.length(); i++) {
            boolean space = i == answer.length() || Character.isWhitespace(answer.charAt(i));
            words += space && holds ? 1 : 0;
            holds = !space && (holds || Character.isLetterOrDigit(answer.charAt(i)));
        }
        return words;
    }
}
