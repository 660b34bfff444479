package hobside.screen.practice;

import hobside.file.Practices;
import hobside.practice.Points;
import hobside.practice.ReportSheet;
import hobside.practice.Ruling;
import hobside.practice.rubric.Feedback;
import hobside.practice.rubric.Found;
import hobside.practice.rubric.Judged;
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
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.read.ReadScreen;
import hobside.talk.Script;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the rubric says of an answer in own words, point by point. A person's mark stands above it. */
record MarkedScreen(Asking asking, Feedback feedback, Map<String, String> marks, Spot spot) implements Screen {

    /**
     * Where one stands.
     *
     * @param attempt the id of the line in the log; empty until the disk has answered, and then nothing can be overruled yet
     * @param spoken whether it was said aloud, so that the rubric has nothing to say
     */
    record Spot(int row, String attempt, boolean spoken, String said) {}

    /** The keys of the page. */
    enum Action implements Keys.Bound {
        ON("enter", "next exercise", "The next exercise, and why it is that one."),
        OVERRULE("o", "overrule", "The trainee says: this point was there, partly there, not there. Each press goes on; the rubric's own mark stays in the log."),
        TRAINER("O", "trainer", "The same, said by the trainer. The latest mark holds."),
        MODEL("a", "model answer", "An answer that would do."),
        PERSON("n", "next person", "The next one of the list practises."),
        MINE("m", "my page", "How far one has come."),
        HELP("?", "help", "This page."),
        BACK("escape q ctrl-c", "back", "Back to the list of who practises.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    MarkedScreen {
        marks = new LinkedHashMap<>(marks);
    }

    static MarkedScreen of(Asking asking, Feedback feedback, Map<String, String> marks) {
        return new MarkedScreen(asking, feedback, marks, new Spot(0, "", false, ""));
    }

    static MarkedScreen spoken(Asking asking, Feedback feedback, Map<String, String> marks) {
        return new MarkedScreen(asking, feedback, marks, new Spot(0, "", true, "Mark yourself: o goes through there, partly there, not there."));
    }

    /** Those that were asked for, in their order. */
    private List<Judged> rows() {
        List<String> asked = Points.asked(asking.exercise().label());
        return feedback.points().stream().filter(judged -> asked.contains(judged.point().word())).toList();
    }

    private Judged here() {
        return rows().get(spot.row());
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told && told.answer() instanceof Answer.Logged logged) {
            Spot there = new Spot(spot.row(), spot.attempt().isEmpty() ? logged.entry().id() : spot.attempt(), spot.spoken(), logged.trouble().orElse(spot.said()));
            return Next.to(new MarkedScreen(asking.in(asking.room().hearing(logged.entry())), feedback, marks, there));
        }
        return message instanceof Message.KeyPressed pressed ? pressed(pressed.key()) : Next.to(this);
    }

    private Next pressed(Key key) {
        return Keys.action(Action.values(), key).map(this::act).orElseGet(() -> Next.to(new MarkedScreen(asking, feedback, marks,
                new Spot(Cursor.after(key, spot.row(), rows().size()), spot.attempt(), spot.spoken(), ""))));
    }

    private Next act(Action action) {
        return switch (action) {
            case ON -> PracticeScreen.next(asking.room(), asking.trainee());
            case OVERRULE -> overruled(Ruling.By.TRAINEE);
            case TRAINER -> overruled(Ruling.By.TRAINER);
            case MODEL -> Next.to(ReadScreen.text(this, "An answer that would do", List.of(feedback.model().text())));
            case PERSON -> PracticeScreen.nextPerson(asking.room(), asking.trainee());
            case MINE -> Next.to(MyPage.of(this, asking.room(), asking.trainee()));
            case HELP -> Next.to(ReadScreen.help(this, "Practice", List.of(Action.values())));
            case BACK -> Next.to(PracticeScreen.of(asking.room(), asking.trainee(), ""));
        };
    }

    private Next overruled(Ruling.By by) {
        if (spot.attempt().isEmpty()) {
            return Next.to(this);
        }
        String point = here().point().word();
        String mark = switch (marks.getOrDefault(point, "")) {
            case Points.YES -> Points.PART;
            case Points.PART -> Points.NO;
            default -> Points.YES;
        };
        Map<String, String> other = new LinkedHashMap<>(marks);
        other.put(point, mark);
        Screen after = new MarkedScreen(asking, feedback, other, new Spot(spot.row(), spot.attempt(), spot.spoken(), "Marked by the " + by.word() + ". Both marks are in the log."));
        return Next.doing(after, new Work.Ruled(asking.trainee(), new Practices.Ruled(spot.attempt(), new Ruling.Marked(point, mark, by))));
    }

    /** The truth check knows English patterns only; what was said aloud it did not hear. */
    private boolean isChecked() {
        return spot.spoken() || asking.room().language().equals(Script.FIRST_LANGUAGE);
    }

    private Words words() {
        return asking.room().syllabus().with().words();
    }

    /** A sign beside the word, so that nothing hangs on colour. */
    private static String sign(String mark) {
        return switch (mark) {
            case Points.YES -> "+";
            case Points.PART -> "~";
            case Points.NO -> "-";
            case "unsure" -> "?";
            default -> ".";
        };
    }

    @Override
    public void view(Frame frame) {
        String right = asking.named();
        frame.put(0, 1, Lines.fit("Practice · " + asking.trainee(), frame.width() - right.length() - 4), Style.TITLE);
        frame.putRight(0, frame.width() - 1, right, Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        List<Judged> rows = rows();
        for (int i = 0; i < rows.size(); i++) {
            Frame line = frame.part(new Area(2 + i, 0, 1, frame.width()));
            String mark = marks.getOrDefault(rows.get(i).point().word(), "");
            line.put(0, 3, sign(mark) + " " + ReportSheet.point(rows.get(i).point().word(), words()), Style.PLAIN);
            line.put(0, 34, words().find("practice.mark." + mark).orElse(mark) + (mark.equals(rows.get(i).mark().word()) || spot.spoken() ? "" : " (overruled)"), Style.PLAIN);
            Cursor.mark(line, i == spot.row());
        }
        frame.horizontal(2 + rows.size(), 0, frame.width() - 1);
        detail(frame, 3 + rows.size());
        frame.put(frame.height() - 2, 1, Lines.fit(spot.said().isEmpty() ? "a shows the whole example." : spot.said(), frame.width() - 2), spot.said().isEmpty() ? Style.QUIET : Style.STRONG);
        Keys.line(frame, List.of(Action.values()));
    }

    /** The words that counted, what is missing, and how it was judged. */
    private void detail(Frame frame, int from) {
        Judged judged = here();
        List<String> lines = new ArrayList<>();
        feedback.truth().forEach(finding -> lines.add("- Not true: \"" + finding.found() + "\" – " + finding.reason()));
        if (!spot.spoken()) {
            for (Found found : judged.found()) {
                lines.add("\"" + found.words() + "\" – " + found.why());
            }
            lines.add(judged.how());
        }
        lines.addAll(judged.missing());
        if (!isChecked()) {
            lines.add("Figures and promises are checked in English only: let somebody read this who knows.");
        }
        int row = from;
        for (String line : lines) {
            row = Sheet.put(frame, row, line, Style.PLAIN);
        }
        if (row < frame.height() - 4 && !feedback.model().text().isEmpty()) {
            Sheet.put(frame, row + 1, "For example: " + feedback.model().text(), Style.QUIET);
        }
    }
}
