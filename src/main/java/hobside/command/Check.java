package hobside.command;

import hobside.file.Checker;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import java.util.List;

/** Lists all faults of all the files named. */
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
        streams.say(said(files.size(), problems.size()));
        return problems.isEmpty() ? Exit.DONE : Exit.BAD_INPUT;
    }

    private static String said(int files, int faults) {
        String looked = files == 1 ? "1 file looked at: " : files + " files looked at: ";
        return looked + (faults == 0 ? "no fault found." : faults == 1 ? "1 fault." : faults + " faults.") + "\n";
    }
}
