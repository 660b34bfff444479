package hobside.screen.live;

import hobside.stage.run.Happening;

/** What is said to the presenter after a key. */
public final class Said {

    private Said() {}

    public static String of(Happening happening) {
        return switch (happening.what()) {
            case SKIP -> "Skipped. Left goes back to it.";
            case ALREADY -> "Passed by: done already.";
            case PAUSE -> "Paused. p goes on.";
            case GO_ON -> "Going on.";
            case STUMBLED -> "Marked: stumbled here.";
            case TOO_LONG -> "Marked: too long.";
            case NOTE -> "Noted.";
            case ASKED -> "The question is noted.";
            case DROPPED -> dropped(happening.keys().size()) + " u brings them back.";
            case TAKEN_BACK -> "Nothing is dropped any more.";
            case CARE_DONE -> "Noted, with the time.";
            case OUT -> "The samples are out from now on.";
            case KEPT -> happening.text();
            case ON, BACK, JUMP, CARE_ASKED, CLOCK, RESUMED, OVER -> "";
        };
    }

    private static String dropped(int cues) {
        return cues == 1 ? "One cue is dropped." : cues + " cues are dropped.";
    }
}
