package hobside.screen.practice;

import hobside.file.Practices;
import hobside.file.WordFiles;
import hobside.practice.Progress;
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
import hobside.screen.ask.Question;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.read.ReadScreen;
import hobside.screen.workshop.WorkshopScreen;
import java.util.ArrayList;
import java.util.List;

/**
 * Who practises: the list of nicknames, and somebody new.
 *
 * @param names the nicknames; those that have answered nothing yet are here only
 */
public record PracticeScreen(Room room, List<String> names, int cursor, String said) implements Screen {

    public PracticeScreen {
        names = List.copyOf(names);
    }

    /** From the Bench: the disk is asked first. */
    public static Next opening(Bench bench) {
        return Next.doing(new Opening(bench), new Work.LookAtPractice());
    }

    /** The Bench while the disk is looked at. */
    private record Opening(Bench bench) implements Screen {

        @Override
        public Next update(Message message) {
            if (message instanceof Message.Told told && told.answer() instanceof Answer.Practised practised) {
                return Next.to(of(Room.of(bench, practised), "", practised.told().words()));
            }
            return message instanceof Message.Told ? bench.below(message, Opening::new) : Next.to(message instanceof Message.KeyPressed ? bench : this);
        }

        @Override
        public void view(Frame frame) {
            bench.view(frame);
        }
    }

    /** The list with the cursor on this nickname. */
    public static PracticeScreen of(Room room, String trainee, String said) {
        List<String> names = new ArrayList<>(room.trainees());
        if (!trainee.isEmpty() && !names.contains(trainee)) {
            names.add(trainee);
        }
        return new PracticeScreen(room, names, Math.max(0, names.indexOf(trainee)), said);
    }

    /** The next exercise of this trainee. */
    static Next next(Room room, String trainee) {
        return room.next(trainee).map(asking -> Next.to(asking.screen()))
                .orElseGet(() -> Next.to(of(room, trainee, "These dishes give no exercise of that kind. W changes the set.")));
    }

    /** Another exercise of the same card, by a seed of its own. */
    static Next another(Asking asking) {
        var label = asking.exercise().label();
        return asking.room().syllabus().draw(label.card(), label.level(), label.origin().seed() + 1)
                .map(exercise -> Next.to(new Asking(asking.room(), asking.trainee(), exercise, asking.reason()).screen())).orElseGet(() -> Next.to(asking.screen()));
    }

    /** The next one of the list sits down. */
    static Next nextPerson(Room room, String trainee) {
        PracticeScreen list = of(room, trainee, "");
        int next = list.names().isEmpty() ? 0 : (list.cursor() + 1) % list.names().size();
        return Next.to(new PracticeScreen(room, list.names(), next, "Next: " + list.names().get(next) + ". Enter begins; n for somebody new."));
    }

    private PracticeScreen with(Room other, String words) {
        return new PracticeScreen(other, names, cursor, words);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return message instanceof Message.Told ? room.bench().below(message, bench -> with(room.over(bench), said)) : Next.to(this);
    }

    private Next pressed(Key key) {
        return Keys.action(PracticeAction.values(), key).map(this::act)
                .orElseGet(() -> Next.to(new PracticeScreen(room, names, Cursor.after(key, cursor, Math.max(1, names.size())), "")));
    }

    private Next act(PracticeAction action) {
        return switch (action) {
            case PRACTISE -> names.isEmpty() ? Next.to(asked()) : next(room, names.get(cursor));
            case NEW -> Next.to(asked());
            case PAGE -> Next.to(names.isEmpty() ? with(room, "Nobody has practised yet.") : MyPage.of(this, room, names.get(cursor)));
            case LANGUAGE -> language();
            case WORKSHOP -> Next.to(WorkshopScreen.of(room, names.isEmpty() ? "" : names.get(cursor)));
            case HELP -> Next.to(ReadScreen.help(this, "Practice", List.of(PracticeAction.values())));
            case BACK -> Next.to(room.bench());
        };
    }

    private Next language() {
        List<String> codes = WordFiles.LANGUAGES;
        Room other = room.in(codes.get((codes.indexOf(room.language()) + 1) % codes.size()));
        return Next.to(with(other, "Exercises are in " + other.syllabus().with().words().say("language.name") + " now."));
    }

    private LineScreen asked() {
        List<String> hints = List.of("A nickname, no full name. It stays in this kitchen; the workshop page can erase it.");
        return LineScreen.of(this, new Question("Who is practising?", "nickname", hints, "", text -> {
            String name = text.isBlank() ? "" : Practices.nickname(text);
            return Practices.isNickname(name) ? Question.Reply.go(next(room, name)) : Question.Reply.wrong("Type a nickname of letters or digits.");
        }));
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "Practice · " + room.bench().demo().dish().name(), Style.TITLE);
        frame.putRight(0, frame.width() - 1, room.kept().set().map(WorkshopSet::title).orElse("anything") + " · " + room.language(), Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
        frame.put(2, 1, Lines.fit("Explain a change so that others understand it. Who is practising?", frame.width() - 2), Style.PLAIN);
        int rows = frame.height() - 7;
        int first = Lines.firstShown(cursor, names.size(), rows);
        for (int i = 0; i < rows && first + i < names.size(); i++) {
            row(frame.part(new Area(4 + i, 0, 1, frame.width())), names.get(first + i), first + i == cursor);
        }
        if (names.isEmpty()) {
            frame.put(4, 3, "Nobody yet. Enter asks for a nickname.", Style.QUIET);
        }
        frame.put(frame.height() - 2, 1, Lines.fit(said, frame.width() - 2), Style.STRONG);
        Keys.line(frame, List.of(PracticeAction.values()));
    }

    private void row(Frame line, String name, boolean here) {
        Progress progress = Progress.of(room.of(name));
        line.put(0, 3, Lines.fit(name, 30), Style.PLAIN);
        line.putRight(0, line.width() - 2, progress.attempts() + (progress.attempts() == 1 ? " answer" : " answers") + progress.inARow().map(row -> ", the last " + row + " right").orElse(""), Style.QUIET);
        Cursor.mark(line, here);
    }
}
