package hobside.screen.talk;

import hobside.file.Scripts;
import hobside.file.Study;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.talk.Demo;
import hobside.talk.Stand;
import hobside.talk.check.Facts;
import hobside.talk.check.Finding;
import hobside.talk.check.Place;
import hobside.talk.check.TruthCheck;
import hobside.talk.plain.Readability;
import hobside.talk.plain.Report;
import hobside.talk.plain.Sayability;
import hobside.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What is said of the words while one types: how they sound, and what is not borne out, with a better wording. */
final class Remarks {

    private final TruthCheck check;
    private final Place place;
    private final boolean english;

    private Remarks(TruthCheck check, Place place, boolean english) {
        this.check = check;
        this.place = place;
        this.english = english;
    }

    /** The check of the cue under the cursor, made once for each time its words are opened. */
    static Remarks of(TalkScreen talk) {
        Demo demo = talk.bench().demo();
        Study study = talk.bench().desk().study();
        Stand stand = Scripts.stand(demo, study);
        return new Remarks(TruthCheck.of(Facts.of(stand, study.published())), Place.of(talk.section(), stand.ledger()), stand.isEnglish());
    }

    List<Finding> on(String words) {
        return english ? check.check(words, place) : List.of();
    }

    void draw(WordsScreen screen, Frame frame) {
        String words = screen.sounded();
        Study study = screen.talk().bench().desk().study();
        Report report = Sayability.of(words, study.rules(screen.talk().script()));
        int row = 0;
        frame.put(row++, 1, Lines.fit(measured(report), frame.width() - 2), Style.QUIET);
        for (String gap : Words.gaps(words)) {
            row = put(frame, row, Glyphs.RISING + " {" + gap + "} is no live figure here; Ctrl-F lists them.", Style.WARN);
        }
        for (Finding finding : on(words)) {
            row = put(frame, row, Glyphs.RISING + " \"" + finding.found() + "\": " + finding.reason(), Style.WARN);
            row = put(frame, row, "  Better: " + finding.better() + " (" + finding.source() + ")", Style.PLAIN);
        }
        for (var hard : report.hardWords()) {
            row = put(frame, row, "\"" + hard.found() + "\" is plainer as \"" + hard.plain() + "\".", Style.QUIET);
        }
    }

    private static int put(Frame frame, int from, String text, Style style) {
        int row = from;
        for (String line : Lines.wrap(text, frame.width() - 4)) {
            if (row < frame.height()) {
                frame.put(row++, 2, line, style);
            }
        }
        return row;
    }

    /** "17 words, 8 s, grade 4.2; longest sentence 12 words". */
    static String measured(Report report) {
        return report.words() + (report.words() == 1 ? " word, " : " words, ") + Math.round(report.seconds()) + " s, " + grade(report) + "; longest sentence " + report.longest() + " words, "
                + Math.round(report.numbersPerMinute()) + " numbers/min";
    }

    static String grade(Report report) {
        OptionalDouble grade = report.grades().by(Readability.FLESCH_KINCAID);
        if (grade.isPresent()) {
            return String.format(Locale.ROOT, "reading grade %.1f", grade.getAsDouble());
        }
        OptionalDouble ease = report.grades().by(Readability.FERNANDEZ_HUERTA);
        return ease.isPresent() ? String.format(Locale.ROOT, "reading ease %.0f of 100", ease.getAsDouble()) : "no grade in this language";
    }
}
