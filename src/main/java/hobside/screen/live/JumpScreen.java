package hobside.screen.live;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Glyphs;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.Typing;
import hobside.stage.run.Planning;
import hobside.stage.run.Standing;
import hobside.talk.Cue;
import hobside.talk.Talk;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The parts and cues of a talk to jump to; what is typed is looked for. Cues that were dropped are shown faint, with a word. */
public final class JumpScreen implements Screen {

    private static final int FIRST_ROW = 4;

    private final Onstage back;
    private final Typing typing;
    private final int cursor;

    /** A line of the list: a part, by its first cue, or a cue. */
    private record Row(String cue, String label, String words, boolean part) {}

    /** The keys of the list. */
    enum Action implements Keys.Bound {
        GO("enter", "jump there"),
        BACK("escape ctrl-c", "back"),
        MOVE("down up", "choose");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    private JumpScreen(Onstage back, Typing typing, int cursor) {
        this.back = back;
        this.typing = typing;
        this.cursor = cursor;
    }

    /** With the cursor on the cue one is on. */
    public static JumpScreen of(Onstage back) {
        JumpScreen all = new JumpScreen(back, Typing.EMPTY, 0);
        return new JumpScreen(back, Typing.EMPTY, all.here());
    }

    private int here() {
        String cue = back.playing().standing().cue().orElse("");
        List<Row> rows = rows();
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).part() && rows.get(i).cue().equals(cue)) {
                return i;
            }
        }
        return 0;
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return message.isNews() ? back.update(message).over(below -> below instanceof Onstage there ? new JumpScreen(there, typing, cursor) : below) : Next.to(this);
    }

    private Next pressed(Key key) {
        if (Action.BACK.binding().isFor(key)) {
            return Next.to(back);
        }
        List<Row> rows = rows();
        if (Action.GO.binding().isFor(key)) {
            return rows.isEmpty() ? Next.to(this) : back.jumping(rows.get(cursor).cue());
        }
        Typing typed = typing.after(key);
        boolean same = typed.text().equals(typing.text());
        return Next.to(same ? new JumpScreen(back, typed, Cursor.after(key, cursor, Math.max(1, rows.size()))) : new JumpScreen(back, typed, 0).onFirst());
    }

    /** On the first line that has the letters itself: the heading of a part whose cues have them is passed by. */
    private JumpScreen onFirst() {
        List<Row> rows = rows();
        for (int i = 0; i < rows.size(); i++) {
            if (has(rows.get(i).words(), wanted())) {
                return new JumpScreen(back, typing, i);
            }
        }
        return this;
    }

    private String wanted() {
        return typing.text().strip().toLowerCase(Locale.ROOT);
    }

    private List<Row> rows() {
        String wanted = wanted();
        List<Row> rows = new ArrayList<>();
        for (Talk.Section section : back.playing().sections()) {
            List<Row> cues = Planning.cues(section).stream().filter(cue -> has(cue.words(), wanted) || has(section.heading(), wanted)).map(this::row).toList();
            if (!cues.isEmpty()) {
                rows.add(new Row(Planning.cues(section).get(0).key(), "", section.heading(), true));
                rows.addAll(cues);
            }
        }
        return rows;
    }

    private static boolean has(String words, String wanted) {
        return words.toLowerCase(Locale.ROOT).contains(wanted);
    }

    private Row row(Cue cue) {
        String label = back.playing().bench().desk().study().words(back.playing().bench().demo().script().language()).say("talk.cue." + cue.kind().word());
        return new Row(cue.key(), label, cue.words(), false);
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "Jump to", Style.TITLE);
        frame.horizontal(1, 0, frame.width() - 1);
        frame.put(2, 1, "look for", Style.PLAIN);
        typing.draw(frame, 2, 10, Math.min(40, frame.width() - 12));
        List<Row> rows = rows();
        if (rows.isEmpty()) {
            frame.put(FIRST_ROW, 3, "No cue has these letters.", Style.PLAIN);
        }
        int room = frame.height() - FIRST_ROW - 2;
        int first = Lines.firstShown(cursor, rows.size(), room);
        for (int i = 0; i < room && first + i < rows.size(); i++) {
            draw(frame.part(new Area(FIRST_ROW + i, 0, 1, frame.width())), rows.get(first + i), first + i == cursor);
        }
        Keys.line(frame, List.of(Action.values()));
    }

    private void draw(Frame line, Row row, boolean here) {
        if (row.part()) {
            line.put(0, 3, Lines.fit(row.words(), line.width() - 4), Style.HEADING);
        } else {
            String fate = fate(row.cue());
            boolean dropped = fate.equals("dropped");
            int end = line.width() - 1 - (fate.isEmpty() ? 0 : fate.length() + 2);
            int at = line.put(0, 5, row.label(), dropped ? Style.QUIET : Style.STRONG) + 1;
            line.put(0, Math.max(at, 16), Lines.fit(row.words(), end - Math.max(at, 16)), dropped ? Style.QUIET : Style.PLAIN);
            line.putRight(0, line.width() - 1, fate, Style.QUIET);
        }
        Cursor.mark(line, here);
    }

    private String fate(String cue) {
        Standing standing = back.playing().standing();
        if (standing.cue().filter(cue::equals).isPresent()) {
            return Glyphs.LEFT + " here";
        }
        if (standing.dropped().contains(cue)) {
            return "dropped";
        }
        if (standing.already().contains(cue)) {
            return "done already";
        }
        return standing.said().contains(cue) ? String.valueOf(Glyphs.TICK) : standing.skipped().contains(cue) ? "skipped" : "";
    }
}
