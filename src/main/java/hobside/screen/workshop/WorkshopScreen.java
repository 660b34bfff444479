package hobside.screen.workshop;

import hobside.file.Practices;
import hobside.practice.Report;
import hobside.practice.ReportSheet;
import hobside.practice.WorkshopSet;
import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.practice.PracticeScreen;
import hobside.screen.practice.Room;
import hobside.screen.read.ReadScreen;
import hobside.talk.paper.TextSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a trainer does: the sets that are prepared, and everything about the group. */
public record WorkshopScreen(Room room, String trainee, int cursor, String said) implements Screen {

    /** Back to whoever was practising. */
    public static WorkshopScreen of(Room room, String trainee) {
        return new WorkshopScreen(room, trainee, 0, "");
    }

    WorkshopScreen saying(String words) {
        return new WorkshopScreen(room, trainee, cursor, words);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Practised practised) {
            return Next.to(new WorkshopScreen(room.hearing(practised), trainee, cursor, practised.told().words()));
        }
        return message instanceof Message.KeyPressed pressed ? pressed(pressed.key()) : Next.to(this);
    }

    /** The first row is to work without a set. */
    private int rows() {
        return room.kept().sets().size() + 1;
    }

    private Next pressed(Key key) {
        return Keys.action(WorkshopAction.values(), key).map(this::act)
                .orElseGet(() -> Next.to(new WorkshopScreen(room, trainee, Cursor.after(key, cursor, rows()), "")));
    }

    private Next act(WorkshopAction action) {
        return switch (action) {
            case RUN -> run();
            case PREPARE -> Next.to(Preparing.title(this));
            case REPORT -> Next.to(ReadScreen.page(this, "Report", width -> TextSheet.of(ReportSheet.of(Report.of(room.kept().results()),
                    room.syllabus().with().words()), width).lines().toList()));
            case PRINT -> Next.doing(saying("Writing..."), new Work.WriteReport(room.language()));
            case GATHER -> Next.to(gather());
            case WATCH -> Next.to(WatchScreen.asked(this));
            case ERASE -> Next.to(erase());
            case HELP -> Next.to(ReadScreen.help(this, "Workshop", List.of(WorkshopAction.values())));
            case BACK -> Next.to(PracticeScreen.of(room, room.trainees().contains(trainee) ? trainee : "", ""));
        };
    }

    private Next run() {
        Optional<WorkshopSet> set = cursor == 0 ? Optional.empty() : Optional.of(room.kept().sets().get(cursor - 1).set());
        Room there = room.at(set);
        return Next.to(PracticeScreen.of(there, trainee, set.map(each -> "The group works at: " + each.title() + ". n adds somebody.").orElse("Anything comes up.")));
    }

    private LineScreen gather() {
        return LineScreen.of(this, new Question("Gather results", "folder", List.of("The folder of a kitchen, of a stick, or one with many of them inside. Logs are copied, none is overwritten."), "",
                text -> text.isBlank() ? Question.Reply.wrong("Type the name of a folder.") : Question.Reply.go(Next.doing(saying("Gathering..."), new Work.GatherFrom(text)))));
    }

    private Screen erase() {
        List<Menu.Row> rows = new ArrayList<>();
        Report report = Report.of(room.kept().results());
        for (String name : room.trainees()) {
            rows.add(new Menu.Row(name, counted(report.answers(name), "answer"),
                    "Enter erases " + name + " for good: every log of this nickname here is replaced by a mark that also keeps old copies out."));
        }
        return MenuScreen.of(this, new Menu("Erase a person", "Nothing is erased before Enter.", rows,
                index -> Next.to(sure(room.trainees().get(index)))), 0);
    }

    /** What is erased does not come back, so that one key too many must not do it. */
    private Screen sure(String name) {
        return LineScreen.of(this, new Question("Erase " + name + " for good?", "type the name again", List.of("Escape leaves everything as it is."), "",
                text -> text.strip().equals(name) ? Question.Reply.go(Next.doing(saying("Erasing..."), new Work.Erase(name)))
                        : Question.Reply.wrong("That is not \"" + name + "\". Nothing is erased.")));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "Workshop", Style.TITLE);
        frame.putRight(0, frame.width() - 1, counted(room.trainees().size(), "trainee") + ", " + counted(room.kept().results().attempts().size(), "answer"), Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        frame.put(2, 1, "What the group works at:", Style.PLAIN);
        int shown = frame.height() - 7;
        int first = Lines.firstShown(cursor, rows(), shown);
        for (int i = 0; i < shown && first + i < rows(); i++) {
            row(frame.part(new Area(4 + i, 0, 1, frame.width())), first + i);
        }
        frame.put(frame.height() - 2, 1, Lines.fit(said, frame.width() - 2), Style.STRONG);
        Keys.line(frame, List.of(WorkshopAction.values()));
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private void row(Frame line, int index) {
        if (index == 0) {
            line.put(0, 3, "anything: each what is next for them", Style.PLAIN);
        } else {
            Practices.Prepared prepared = room.kept().sets().get(index - 1);
            line.put(0, 3, Lines.fit(prepared.set().title(), line.width() - 30), Style.PLAIN);
            WorkshopSet.Wanted wanted = prepared.set().wanted();
            String about = (wanted.kinds().isEmpty() ? "all kinds" : counted(wanted.kinds().size(), "kind")) + (wanted.level() == 0 ? "" : ", level " + wanted.level())
                    + (prepared.set().minutes() == 0 ? "" : ", " + prepared.set().minutes() + " min") + ", " + prepared.set().language();
            line.putRight(0, line.width() - 2, about, Style.QUIET);
        }
        Cursor.mark(line, index == cursor);
    }
}
