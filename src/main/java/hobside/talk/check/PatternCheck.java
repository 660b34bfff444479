package hobside.talk.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;

/** Goes through the table of wordings that no figure can make true. Questions are left alone: whoever asks claims nothing. */
final class PatternCheck {

    private final Telling telling;

    PatternCheck(Facts facts) {
        this.telling = new Telling(facts);
    }

    List<Finding> check(String words, Sentence sentence, Place place) {
        List<Finding> findings = new ArrayList<>();
        if (sentence.small().endsWith("?")) {
            return findings;
        }
        for (Patterns.Row row : Patterns.ROWS) {
            if (row.mayBeIn(sentence.small())) {
                Matcher matcher = row.words().matcher(sentence.small());
                if (matcher.find() && !isTakenBack(sentence, matcher.start(), row)) {
                    findings.add(finding(words, sentence, matcher, row, place));
                }
            }
        }
        return findings;
    }

    private static boolean isTakenBack(Sentence sentence, int at, Patterns.Row row) {
        boolean denied = switch (row.guard()) {
            case NONE -> false;
            case BEFORE -> Negation.in(sentence.clauseBefore(at));
            case SENTENCE -> Negation.in(sentence.small());
        };
        return denied || row.unless().matcher(sentence.small()).find();
    }

    private Finding finding(String words, Sentence sentence, Matcher matcher, Patterns.Row row, Place place) {
        int from = sentence.from() + matcher.start();
        int to = sentence.from() + matcher.end();
        Patterns.Because because = row.because();
        String better = because.better().replace("{now}", telling.now(place));
        return new Finding(row.kind(), from, to, words.substring(from, to), because.reason(), because.source(), better);
    }
}
