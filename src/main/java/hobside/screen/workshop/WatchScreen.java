package hobside.screen.workshop;

import hobside.dish.Change;
import hobside.dish.Names;
import hobside.file.Practices;
import hobside.practice.Card;
import hobside.practice.Kind;
import hobside.practice.Label;
import hobside.practice.Points;
import hobside.practice.ReportSheet;
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
import hobside.screen.ask.Question;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.practice.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A live demonstration is watched and marked, change by change, by the points of the rubric, with a note. */
record WatchScreen(WorkshopScreen back, String trainee, Sheet sheet, Spot spot) implements Screen {

    /** The marks of the change that is being told, and the note beside it. */
    record Sheet(Map<String, String> marks, String note) {

        static final Sheet EMPTY = new Sheet(Map.of(), "");
    }

    /** Which change of the plan, which point, and the last word said. */
    record Spot(int change, int point, String said) {}

    /** The keys of the sheet. */
    enum Action implements Keys.Bound {
        DONE("enter", "log it"),
        YES("y +", "there"),
        PART("p ~", "partly"),
        NO("n -", "not there"),
        NOTE("t", "note"),
        SKIP("tab", "other change"),
        BACK("escape q ctrl-c", "back");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    static Screen asked(WorkshopScreen back) {
        if (back.room().bench().demo().plan().told().isEmpty()) {
            return back.saying("The demo on the Bench has no changes yet; open the one that is given.");
        }
        return LineScreen.of(back, new Question("Watch a demonstration", "nickname", List.of("Who gives it."), back.trainee(), text -> {
            String name = text.isBlank() ? "" : Practices.nickname(text);
            return Practices.isNickname(name) ? Question.Reply.go(Next.to(new WatchScreen(back, name, Sheet.EMPTY, new Spot(0, 0, ""))))
                    : Question.Reply.wrong("Type a nickname of letters or digits.");
        }));
    }

    private Room room() {
        return back.room();
    }

    private List<Change> changes() {
        return room().bench().demo().plan().told();
    }

    private Change change() {
        return changes().get(spot.change());
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Logged logged) {
            WorkshopScreen there = new WorkshopScreen(room().hearing(logged.entry()), back.trainee(), back.cursor(), "");
            return Next.to(new WatchScreen(there, trainee, sheet, new Spot(spot.change(), spot.point(), logged.trouble().orElse(spot.said()))));
        }
        return message instanceof Message.KeyPressed pressed ? pressed(pressed.key()) : Next.to(this);
    }

    private Next pressed(Key key) {
        return Keys.action(Action.values(), key).map(this::act)
                .orElseGet(() -> Next.to(new WatchScreen(back, trainee, sheet, new Spot(spot.change(), Cursor.after(key, spot.point(), Points.all().size()), ""))));
    }

    private Next act(Action action) {
        return switch (action) {
            case DONE -> done();
            case YES -> Next.to(marked(Points.YES));
            case PART -> Next.to(marked(Points.PART));
            case NO -> Next.to(marked(Points.NO));
            case NOTE -> Next.to(note());
            case SKIP -> sheet.marks().isEmpty() ? Next.to(on("", Sheet.EMPTY)) : done();
            case BACK -> Next.to(back);
        };
    }

    private WatchScreen marked(String mark) {
        Map<String, String> marks = new TreeMap<>(sheet.marks());
        marks.put(Points.all().get(spot.point()), mark);
        int next = Math.min(Points.all().size() - 1, spot.point() + 1);
        return new WatchScreen(back, trainee, new Sheet(marks, sheet.note()), new Spot(spot.change(), next, ""));
    }

    private Screen note() {
        return LineScreen.of(this, new Question("A note", "note", List.of("One line beside this change."), sheet.note(),
                text -> Question.Reply.go(Next.to(new WatchScreen(back, trainee, new Sheet(sheet.marks(), text), spot)))));
    }

    private WatchScreen on(String said, Sheet other) {
        return new WatchScreen(back, trainee, other, new Spot((spot.change() + 1) % changes().size(), 0, said));
    }

    private Next done() {
        if (sheet.marks().isEmpty()) {
            return Next.to(new WatchScreen(back, trainee, sheet, new Spot(spot.change(), spot.point(), "Mark at least one point: y, p or n.")));
        }
        String dish = room().bench().desk().kept().name();
        Label label = new Label(new Card(Kind.WATCHED, change().kind().word()), 1, new Label.Origin(dish.isEmpty() ? "bench" : dish, room().now()));
        List<String> asked = new ArrayList<>(Points.all().stream().filter(sheet.marks()::containsKey).toList());
        Practices.Done done = new Practices.Done(label, Points.result(asked, sheet.marks(), sheet.note()));
        return Next.doing(on("Logged.", Sheet.EMPTY), new Work.Done(trainee, done));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "Watching " + trainee, Style.TITLE);
        frame.putRight(0, frame.width() - 1, "change " + (spot.change() + 1) + " of " + changes().size(), Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        var demo = room().bench().demo();
        frame.put(2, 1, Lines.fit(Names.title(change(), demo.dish(), demo.plan()), frame.width() - 2), Style.STRONG);
        for (int i = 0; i < Points.all().size(); i++) {
            Frame line = frame.part(new Area(4 + i, 0, 1, frame.width()));
            String mark = sheet.marks().getOrDefault(Points.all().get(i), "");
            String sign = mark.equals(Points.YES) ? "[+] there" : mark.equals(Points.PART) ? "[~] partly" : mark.equals(Points.NO) ? "[-] not there" : "[ ]";
            line.put(0, 3, ReportSheet.point(Points.all().get(i), room().syllabus().with().words()), Style.PLAIN);
            line.put(0, 36, sign, Style.PLAIN);
            Cursor.mark(line, i == spot.point());
        }
        frame.put(5 + Points.all().size(), 1, Lines.fit(sheet.note().isEmpty() ? "" : "Note: " + sheet.note(), frame.width() - 2), Style.QUIET);
        frame.put(frame.height() - 2, 1, Lines.fit(spot.said(), frame.width() - 2), Style.STRONG);
        Keys.line(frame, List.of(Action.values()));
    }
}
