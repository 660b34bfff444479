package hobside.practice;

import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Simple rules for a question that lets somebody tell it in own words: it asks with an open word, it cannot be answered by yes or no,
 * and it does not put the answer into the listener's mouth. The words of each sort are those of the language; common practice, no
 * source. The rules look at words, not at meaning.
 */
public record OpenQuestion(Signs signs, Said said) {

    /** Words that open a question, that ask to be told or shown, that make it a yes-or-no one when they begin it, and that lead. */
    public record Signs(List<String> open, List<String> telling, List<String> closed, List<String> leading) {

        public Signs {
            open = List.copyOf(open);
            telling = List.copyOf(telling);
            closed = List.copyOf(closed);
            leading = List.copyOf(leading);
        }
    }

    /** What is said to each fault, and when there is none. */
    public record Said(String open, String closed, String leading, String good) {}

    static OpenQuestion in(Words words) {
        Signs signs = new Signs(listed(words, "open"), listed(words, "telling"), listed(words, "closed"), listed(words, "leading"));
        return new OpenQuestion(signs, new Said(words.say("exercise.no.asks-nothing"), words.say("exercise.no.asks-closed"), words.say("exercise.no.asks-leading"),
                words.say("exercise.yes")));
    }

    private static List<String> listed(Words words, String sort) {
        List<String> all = new ArrayList<>();
        for (String each : words.say("exercise.signs." + sort).split(",")) {
            all.add(each.strip());
        }
        return all;
    }

    /** A leading question is the worst, then a closed one, then one that asks for nothing. */
    public Outcome judged(String question) {
        String plain = plain(question);
        if (holdsAny(plain, signs.leading())) {
            return new Outcome(0, "asks-leading", List.of(said.leading()));
        }
        boolean telling = holdsAny(plain, signs.telling());
        // "Can you tell me how ..." is closed by its grammar and open by its sense; "Is it clear why ..." is closed by both.
        if (!telling && startsWithAny(plain, signs.closed())) {
            return new Outcome(0, "asks-closed", List.of(said.closed()));
        }
        return telling || holdsAny(plain, signs.open()) ? Outcome.right(List.of(said.good())) : new Outcome(0, "asks-nothing", List.of(said.open()));
    }

    /** Small letters and single spaces, with a space at either end, so that whole words are found. */
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder(" ");
        for (char each : text.toLowerCase(Locale.ROOT).toCharArray()) {
            boolean letter = Character.isLetterOrDigit(each) || each == '\'';
            char next = letter ? each : each == '’' ? '\'' : ' ';
            if (next != ' ' || plain.charAt(plain.length() - 1) != ' ') {
                plain.append(next);
            }
        }
        return plain.charAt(plain.length() - 1) == ' ' ? plain.toString() : plain.append(' ').toString();
    }

    private static boolean holdsAny(String plain, List<String> signs) {
        return signs.stream().anyMatch(sign -> plain.contains(" " + sign + " "));
    }

    private static boolean startsWithAny(String plain, List<String> signs) {
        return signs.stream().anyMatch(sign -> plain.startsWith(" " + sign + " "));
    }
}
