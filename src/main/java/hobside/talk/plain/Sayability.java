package hobside.talk.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measures whether words can be said and understood. */
public final class Sayability {

    private Sayability() {}

    public static Report of(String words, Rules rules) {
        return of(List.of(words), rules);
    }

    /** A whole talk: the words of each spoken cue, in order. A sentence never runs on from one cue into the next. */
    public static Report of(List<String> spoken, Rules rules) {
        Tally tally = new Tally(rules);
        for (int cue = 0; cue < spoken.size(); cue++) {
            for (Sentence sentence : Sentences.of(spoken.get(cue))) {
                tally.add(sentence, cue);
            }
        }
        return tally.report();
    }

    /** Adds the sentences up. */
    private static final class Tally {
        private final Rules rules;
        private final List<Measured> sentences = new ArrayList<>();
        private final List<HardWord> hardWords = new ArrayList<>();
        private Counts counts = Counts.NOTHING;
        private int numbers;

        Tally(Rules rules) {
            this.rules = rules;
        }

        void add(Sentence sentence, int cue) {
            Optional<Counts> own = rules.language().map(language -> Counts.of(sentence, language));
            counts = own.map(counts::plus).orElse(counts);
            Grades grades = own.map(this::graded).orElse(Grades.UNKNOWN);
            Place place = new Place(cue, sentence.at(), sentence.at() + sentence.text().length());
            sentences.add(new Measured(sentence.text(), place, sentence.words().size(), grades));
            hardWords.addAll(rules.plainWords().in(sentence, cue));
            numbers += NumbersHeard.in(sentence, rules.language());
        }

        private Grades graded(Counts of) {
            return rules.language().map(language -> Grades.of(of, language)).orElse(Grades.UNKNOWN);
        }

        Report report() {
            return new Report(rules, sentences, graded(counts), hardWords, numbers);
        }
    }
}
