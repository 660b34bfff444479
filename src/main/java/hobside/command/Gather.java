package hobside.command;

import hobside.file.Kitchen;
import hobside.file.Practices;
import hobside.file.WordFiles;
import hobside.practice.Report;
import hobside.practice.ReportSheet;
import hobside.talk.paper.HtmlSheet;
import hobside.talk.paper.TextSheet;
import hobside.words.Words;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Puts the practice logs of a folder together, into the kitchen or into a folder of its own, and reports on them. */
final class Gather {

    private final Kitchen kitchen;
    private final Commands.Streams streams;
    private final Given given;

    Gather(Kitchen kitchen, Commands.Streams streams, Given given) {
        this.kitchen = kitchen;
        this.streams = streams;
        this.given = given;
    }

    Exit run() {
        List<String> words = given.rest();
        String as = given.as().orElse(given.has(Given.HTML) ? "html" : "text");
        boolean known = List.of("text", "csv", "html").contains(as) && given.in().map(WordFiles.LANGUAGES::contains).orElse(true);
        if (words.isEmpty() || words.size() > 2 || !known) {
            streams.complain("gather needs a folder with practice logs, and if they are not to go into the kitchen another folder: hobside gather FOLDER [INTO]; "
                    + "--as text, csv or html; --in " + String.join(" or ", WordFiles.LANGUAGES));
            return Exit.BAD_INPUT;
        }
        try {
            return gathered(words, as);
        } catch (InvalidPathException noFolder) {
            streams.complain("That is not the name of a folder.");
            return Exit.BAD_INPUT;
        }
    }

    private Exit gathered(List<String> words, String as) {
        Path from = Path.of(words.get(0));
        Practices.Gathered gathered = words.size() == 1 ? kitchen.practices().gather(from) : Practices.gather(from, Path.of(words.get(1)));
        gathered.found().problems().forEach(problem -> streams.complain(problem.written()));
        streams.complain((gathered.copied() == 1 ? "1 log" : gathered.copied() + " logs") + " copied, " + gathered.known() + " there already.");
        Report report = Report.of(gathered.found().results());
        streams.say(text(report, WordFiles.read(given.in().orElse("en")), as));
        return report.trainees().isEmpty() ? Exit.NO_ANSWER : Exit.DONE;
    }

    private static String text(Report report, Words words, String as) {
        return switch (as) {
            case "csv" -> ReportSheet.csv(report, words);
            case "html" -> HtmlSheet.of(ReportSheet.of(report, words));
            default -> TextSheet.of(ReportSheet.of(report, words));
        };
    }
}
