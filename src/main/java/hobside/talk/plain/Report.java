package hobside.talk.plain;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a talk sounds to a listener.
 *
 * @param rules what it was measured by
 * @param sentences its sentences in order
 * @param grades how hard the whole of it is; unknown for a language without a formula
 * @param hardWords hard words with plainer ones, in order
 * @param numbers how many numbers a listener meets
 */
public record Report(Rules rules, List<Measured> sentences, Grades grades, List<HardWord> hardWords, int numbers) {

    /** How the grade stands to the limit. */
    public enum Verdict { PLAIN, TOO_HARD, UNKNOWN }

    public Report {
        sentences = List.copyOf(sentences);
        hardWords = List.copyOf(hardWords);
    }

    public int words() {
        return sentences.stream().mapToInt(Measured::words).sum();
    }

    /** Seconds of speech at the pace of the rules; pauses and work at the hob come on top. */
    public double seconds() {
        return rules.pace().seconds(words());
    }

    public double numbersPerMinute() {
        return rules.pace().numbersPerMinute(numbers, words());
    }

    /** Sentences with more words than the limit, in order. */
    public List<Measured> tooLong() {
        return sentences.stream().filter(sentence -> sentence.words() > rules.limits().words()).toList();
    }

    /** Words of the longest sentence; zero when nothing is said. */
    public int longest() {
        return sentences.stream().mapToInt(Measured::words).max().orElse(0);
    }

    /** Whether the talk is plain enough, by its Flesch–Kincaid grade; there is no such limit for Spanish or any other language. */
    public Verdict verdict() {
        OptionalDouble grade = grades.by(Readability.FLESCH_KINCAID);
        if (grade.isEmpty()) {
            return Verdict.UNKNOWN;
        }
        return grade.getAsDouble() <= rules.limits().grade() ? Verdict.PLAIN : Verdict.TOO_HARD;
    }
}
