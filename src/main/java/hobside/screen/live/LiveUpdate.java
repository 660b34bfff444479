package hobside.screen.live;

import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.screen.asked.AskedScreen;
import hobside.screen.asked.MissingScreen;
import hobside.screen.asked.WhatIfScreen;
import hobside.screen.board.BoardScreen;
import hobside.screen.read.ReadScreen;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Standing;
import java.util.List;

/** What each key does on the Live screen. */
final class LiveUpdate {

    private LiveUpdate() {}

    static Next of(LiveScreen live, Key key) {
        return Keys.action(LiveAction.values(), key).map(action -> act(live, action)).orElseGet(() -> Next.to(live));
    }

    private static Next act(LiveScreen live, LiveAction action) {
        Standing standing = live.playing().standing();
        return switch (action) {
            case ON -> on(live);
            case BACK -> standing.previous().map(cue -> live.happening(What.BACK, cue, "")).orElseGet(() -> Next.to(live.saying("This is the first cue.")));
            case JUMP -> Next.to(JumpScreen.of(live));
            case SKIP -> onCue(live, What.SKIP);
            case ALREADY -> onCue(live, What.ALREADY);
            case LATE -> Next.to(LateScreen.of(live));
            case TAKE_BACK -> standing.dropped().isEmpty() ? Next.to(live.saying("Nothing is dropped.")) : live.happening(What.TAKEN_BACK, "", "");
            case PAUSE -> live.happening(standing.isPaused() ? What.GO_ON : What.PAUSE, "", "");
            case BOARD -> Next.to(new BoardScreen(live, live.playing().bench(), live.playing().told()));
            case WHAT_IF -> Next.to(WhatIfScreen.of(live, live.playing().bench(), live::keeping));
            case MISSING -> Next.to(MissingScreen.of(live, live.playing().bench(), live::keeping));
            case ASKED -> Next.to(AskedScreen.of(live, live.playing().bench(), live::asked));
            case NOTE -> Next.to(note(live));
            case CARE -> CareMenu.of(live);
            case MORE -> Next.to(live.scrolled(live.scroll() + 1));
            case LESS -> Next.to(live.scrolled(live.scroll() - 1));
            case ANEW -> Next.to(live.resumed() ? SureScreen.anew(live) : live);
            case HELP -> Next.to(ReadScreen.help(live, "Live", List.of(LiveAction.values())));
            case LEAVE -> Next.to(SureScreen.leaving(live));
        };
    }

    /** On to the next cue; after the last one, the run is over. */
    private static Next on(LiveScreen live) {
        Standing standing = live.playing().standing();
        return standing.cue().map(cue -> live.happening(What.ON, cue, "")).orElseGet(() -> live.happening(What.OVER, "", ""));
    }

    private static Next onCue(LiveScreen live, What what) {
        return live.playing().standing().cue().map(cue -> live.happening(what, cue, "")).orElseGet(() -> Next.to(live));
    }

    private static LineScreen note(LiveScreen live) {
        String cue = live.playing().standing().cue().orElse("");
        return LineScreen.of(live, new Question("A note", "note", List.of("One line; it stands in the report of this run."), "",
                text -> text.isBlank() ? Reply.go(Next.to(live)) : Reply.go(live.happening(What.NOTE, cue, text))));
    }
}
