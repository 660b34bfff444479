package hobside.screen.talk;

import hobside.file.Reviewed;
import hobside.screen.Screen;
import hobside.screen.read.ReadScreen;
import hobside.talk.check.Finding;
import hobside.talk.plain.Readability;
import hobside.talk.plain.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Everything that the check has to say of the whole talk, on a page to read. */
final class CheckPage {

    private CheckPage() {}

    static Screen of(TalkScreen talk) {
        Reviewed reviewed = Reviewed.of(talk.bench().demo(), talk.bench().desk().study());
        return ReadScreen.text(talk, "The check", lines(reviewed));
    }

    private static List<String> lines(Reviewed reviewed) {
        List<String> lines = new ArrayList<>();
        lines.add("IS IT TRUE?");
        if (!reviewed.checked()) {
            lines.add("Sentences are checked in English alone; figures in braces are the ledger's in any language.");
        }
        for (Reviewed.Remark remark : reviewed.remarks()) {
            Finding finding = remark.finding();
            lines.add("");
            lines.add(remark.section().heading() + ": " + (finding.found().isEmpty() ? "a caution is missing" : "\"" + finding.found() + "\""));
            lines.add("  " + finding.reason());
            lines.add("  Source: " + finding.source());
            lines.add("  Better: " + finding.better());
        }
        if (reviewed.remarks().isEmpty()) {
            lines.add("Nothing was found that the figures or the published rules do not bear out.");
        }
        lines.add("The check knows patterns, not meaning: what it does not find is not thereby true.");
        said(reviewed.report(), lines);
        return lines;
    }

    private static void said(Report report, List<String> lines) {
        lines.add("");
        lines.add("IS IT EASY TO SAY?");
        lines.add(Remarks.measured(report));
        lines.add(grades(report));
        report.tooLong().forEach(long_ -> lines.add("  " + long_.words() + " words in one breath: " + long_.sentence()));
        report.hardWords().forEach(hard -> lines.add("  \"" + hard.found() + "\" is plainer as \"" + hard.plain() + "\"."));
        if (report.tooLong().isEmpty() && report.hardWords().isEmpty()) {
            lines.add("No sentence is too long, and no word is on the list of hard words.");
        }
    }

    private static String grades(Report report) {
        List<String> grades = new ArrayList<>();
        for (Readability formula : Readability.values()) {
            OptionalDouble grade = report.grades().by(formula);
            grade.ifPresent(value -> grades.add(formula.title() + " " + String.format(Locale.ROOT, "%.1f", value)));
        }
        return grades.isEmpty() ? "No formula is known for this language." : String.join(", ", grades) + ". Aim: grade 6 or below.";
    }
}
