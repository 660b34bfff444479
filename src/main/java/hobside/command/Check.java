package hobside.command;

import hobside.file.Checker;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Reviewed;
import hobside.file.Study;
import hobside.talk.Demo;
import hobside.talk.check.Finding;
import java.util.List;
import java.util.Optional;

/** Lists all faults of all the files named, and of demos what their talks say that is not borne out. */
final class Check {

    private final Kitchen kitchen;
    private final Commands.Streams streams;

    Check(Kitchen kitchen, Commands.Streams streams) {
        this.kitchen = kitchen;
        this.streams = streams;
    }

    Exit run(List<String> files) {
        if (files.isEmpty()) {
            streams.complain("check needs the names of the files to look at, such as: hobside check foods/own/*.json");
            return Exit.BAD_INPUT;
        }
        List<InputProblem> problems = new Checker(kitchen).faults(files);
        problems.forEach(problem -> streams.complain(problem.written()));
        int findings = problems.isEmpty() ? talks(files) : 0;
        streams.say(said(files.size(), problems.size()));
        if (findings > 0) {
            streams.say(findings == 1 ? "1 place in the talk is worth another look.\n" : findings + " places in the talks are worth another look.\n");
        }
        return !problems.isEmpty() ? Exit.BAD_INPUT : findings > 0 ? Exit.NO_ANSWER : Exit.DONE;
    }

    /** What the talks of demos among them say that the figures do not bear out. */
    private int talks(List<String> files) {
        Library library = Library.load(kitchen);
        Study study = Study.of(library);
        int findings = 0;
        for (String file : files) {
            if (!file.endsWith(".demo.json") && !kitchen.isSaved(file)) {
                continue;
            }
            Optional<Demo> demo = kitchen.demo(file, library.shelf()).value();
            for (Reviewed.Remark remark : demo.map(each -> Reviewed.of(each, study).remarks()).orElse(List.of())) {
                findings++;
                Finding finding = remark.finding();
                streams.complain(file + ": " + remark.section().heading() + ": \"" + finding.found() + "\": " + finding.reason()
                        + " (" + finding.source() + ") Better: " + finding.better());
            }
        }
        return findings;
    }

    private static String said(int files, int faults) {
        String looked = files == 1 ? "1 file looked at: " : files + " files looked at: ";
        return looked + (faults == 0 ? "no fault found." : faults == 1 ? "1 fault." : faults + " faults.") + "\n";
    }
}
