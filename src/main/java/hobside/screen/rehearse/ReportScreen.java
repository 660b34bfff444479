package hobside.screen.rehearse;

import hobside.screen.Frame;
import hobside.screen.Lines;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Style;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.live.Playing;
import hobside.screen.live.RunPage;
import hobside.screen.read.ReadScreen;
import hobside.stage.run.Compared;
import java.util.ArrayList;
import java.util.List;

/** The report of a rehearsal: a page to read, a key to lay the runs side by side, and one to put a run away that was none. */
record ReportScreen(ReadScreen page, Compared compared, Playing playing) implements Screen {

    private static final int FIRST = 3;

    /** With all runs there are, this one among them. */
    static Next of(Playing playing, Answer.Runs runs) {
        Compared compared = Compared.of(runs.runs(), playing.talk());
        ReadScreen page = ReadScreen.page(playing.bench().saying("The rehearsal is kept with the demo."), "How it went",
                width -> RunPage.lines(playing, width, shorten(playing, compared, runs.troubles(), width)));
        return Next.to(new ReportScreen(page, compared, playing));
    }

    /** What to shorten first, from all runs. */
    private static List<String> shorten(Playing playing, Compared compared, List<String> troubles, int width) {
        List<String> lines = new ArrayList<>();
        troubles.forEach(trouble -> lines.addAll(Lines.wrap(trouble, width)));
        if (!compared.shortenFirst().isEmpty()) {
            lines.add(compared.runs().size() == 1 ? "SHORTEN FIRST" : "SHORTEN FIRST, FROM " + compared.runs().size() + " RUNS");
        }
        for (Compared.Shorten each : compared.shortenFirst().subList(0, Math.min(FIRST, compared.shortenFirst().size()))) {
            lines.add("   " + Lines.fit(playing.cue(each.cue()).words(), width - 3));
            lines.add("      " + each.reasons().said() + (each.must() ? "" : "; may be dropped"));
        }
        lines.add("");
        return lines;
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed && pressed.key().types('c')) {
            return Next.to(ComparePage.of(this, compared));
        }
        if (message instanceof Message.KeyPressed pressed && pressed.key().types('x')) {
            return Next.doing(playing.bench().saying("This run was put away: it does not count."), new Work.PutAway(playing.run().head().demo()));
        }
        return page.update(message).over(next -> next instanceof ReadScreen read ? new ReportScreen(read, compared, playing) : next);
    }

    @Override
    public void view(Frame frame) {
        page.view(frame);
        frame.put(0, frame.width() - 36, "x", Style.KEY);
        frame.put(0, frame.width() - 34, "put this run away", Style.QUIET);
        frame.put(0, frame.width() - 15, "c", Style.KEY);
        frame.putRight(0, frame.width() - 1, "compare runs", Style.QUIET);
    }
}
