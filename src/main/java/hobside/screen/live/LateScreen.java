package hobside.screen.live;

import hobside.screen.Frame;
import hobside.screen.Keys;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.stage.run.CatchUp;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.talk.Cue;
import java.util.List;

/** Which cues could be dropped so that the talk ends on time, worked out when the key was pressed. Enter drops them. */
record LateScreen(LiveScreen back, Outlook outlook) implements Screen {

    private static final int LIST = 6;

    /** How long the talk would go on as it is, how long it may, and what is proposed; milliseconds. */
    record Outlook(long remaining, long left, CatchUp.Answer answer) {

        boolean isLate() {
            return remaining > left;
        }
    }

    /** The keys of the proposal. */
    enum Action implements Keys.Bound {
        DROP("enter", "drop them"),
        BACK("escape l ctrl-c left backspace page-up", "leave it as it is");

        private final Keys.Binding binding;

        Action(String keys, String brief) {
            this.binding = new Keys.Binding(keys, brief, brief);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    static LateScreen of(LiveScreen live) {
        Playing playing = live.playing();
        List<CatchUp.Remaining> remainder = playing.remainder();
        long left = playing.left();
        CatchUp.Answer answer = CatchUp.of(remainder, (int) Math.floorDiv(left, 1_000L));
        return new LateScreen(live, new Outlook(CatchUp.ends(remainder) * 1_000L, left, answer));
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(this::act).orElseGet(() -> Next.to(this));
        }
        return message.isNews() ? back.update(message).over(below -> below instanceof LiveScreen live ? new LateScreen(live, outlook) : below) : Next.to(this);
    }

    private Next act(Action action) {
        return switch (action) {
            case DROP -> outlook.answer().drop().isEmpty() ? Next.to(back) : back.happening(What.DROPPED, "", Happening.text(outlook.answer().drop()));
            case BACK -> Next.to(back);
        };
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 1, "To end on time", Style.TITLE);
        frame.putRight(0, frame.width() - 1, Minutes.of(back.playing().standing().elapsed(back.playing().now())) + " of " + Minutes.of(back.playing().allowed()), Style.STRONG);
        frame.horizontal(1, 0, frame.width() - 1);
        int row = 2;
        for (String line : Lines.wrap(prospect(), frame.width() - 4)) {
            frame.put(row++, 2, line, Style.STRONG);
        }
        list(frame);
        frame.horizontal(frame.height() - 4, 0, frame.width() - 1);
        frame.put(frame.height() - 3, 2, Lines.fit(end(), frame.width() - 4), Style.STRONG);
        Keys.line(frame, List.of(Action.values()));
    }

    private String prospect() {
        String left = outlook.left() >= 0 ? Minutes.of(outlook.left()) + " are left." : "The time was up " + Minutes.of(-outlook.left()) + " ago.";
        String all = " What is still to come takes " + Minutes.of(outlook.remaining());
        return left + all + (outlook.isLate() ? ": " + Minutes.of(outlook.remaining() - outlook.left()) + " too long." : ".");
    }

    private void list(Frame frame) {
        List<String> drop = outlook.answer().drop();
        int room = frame.height() - LIST - 4;
        for (int i = 0; i < drop.size() && i < room; i++) {
            boolean more = i == room - 1 && drop.size() > room;
            if (more) {
                frame.put(LIST + i, 2, "and " + (drop.size() - i) + " more", Style.PLAIN);
            } else {
                cue(frame, LIST + i, back.playing().cue(drop.get(i)));
            }
        }
        if (drop.isEmpty()) {
            frame.put(LIST, 2, outlook.isLate() ? "There is nothing that may be dropped." : "Nothing need be dropped.", Style.PLAIN);
        }
    }

    private void cue(Frame frame, int row, Cue cue) {
        frame.putRight(row, 8, Minutes.of(back.playing().planned(cue.key())), Style.STRONG);
        frame.put(row, 10, Lines.fit(cue.words(), frame.width() - 12), Style.PLAIN);
    }

    private String end() {
        CatchUp.Answer answer = outlook.answer();
        if (answer.drop().isEmpty()) {
            return "Enter goes back.";
        }
        String cues = answer.drop().size() == 1 ? "Without this cue" : "Without these " + answer.drop().size() + " cues";
        return answer.late() == 0 ? cues + " it ends on time." : cues + " it is still " + Minutes.of(answer.late() * 1_000L) + " late.";
    }
}
