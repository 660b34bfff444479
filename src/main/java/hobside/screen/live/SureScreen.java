package hobside.screen.live;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.desk.Work;
import hobside.stage.run.Happening.What;

/** Asks whether a key was meant that would interrupt the talk. Enter means yes; any other key stays where one is. */
record SureScreen(LiveScreen back, Meant meant) implements Screen {

    private static final int ROWS = 6;

    /** What was asked for. */
    enum Meant {
        LEAVE("Leave?", "Enter leaves; the run can be gone on with. e ends it for good and shows how it went. Any other key stays."),
        ANEW("Begin anew?", "Enter ends the run that was broken off and begins a new one. Any other key stays.");

        private final String title;
        private final String words;

        Meant(String title, String words) {
            this.title = title;
            this.words = words;
        }
    }

    static SureScreen leaving(LiveScreen back) {
        return new SureScreen(back, Meant.LEAVE);
    }

    static SureScreen anew(LiveScreen back) {
        return new SureScreen(back, Meant.ANEW);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        return message.isNews() ? back.update(message).over(below -> below instanceof LiveScreen there ? new SureScreen(there, meant) : below) : Next.to(this);
    }

    private Next pressed(Key key) {
        if (key.kind() == Key.Kind.ENTER) {
            return switch (meant) {
                case LEAVE -> Next.doing(back.playing().bench().saying("The talk is not over. L goes on with it at the same cue."), new Work.LeaveTalk());
                case ANEW -> Starting.anew(back.playing().bench());
            };
        }
        return meant == Meant.LEAVE && key.types('e') ? back.happening(What.OVER, "", "") : Next.to(back);
    }

    @Override
    public void view(Frame frame) {
        back.view(frame);
        Frame panel = frame.part(new Area(frame.height() - ROWS, 0, ROWS, frame.width()));
        panel.fill(' ', Style.PLAIN);
        panel.horizontal(0, 0, panel.width() - 1);
        panel.put(1, 2, meant.title, Style.TITLE);
        int row = 3;
        for (String line : Lines.wrap(meant.words, panel.width() - 4)) {
            panel.put(row++, 2, line, Style.STRONG);
        }
    }
}
