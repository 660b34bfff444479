package hobside.screen.live;

import hobside.screen.Keys;

/** What can be done on the Live screen, and by which key. A presenter's clicker sends page-down and page-up. Every other key does nothing. */
enum LiveAction implements Keys.Bound {
    ON("space enter right page-down", "on", "This cue is done: on to the next. At the end: the run is over."),
    BACK("left backspace page-up", "back", "Back to the cue before."),
    JUMP("j", "jump", "Jump to a part or a cue; typing looks for it."),
    SKIP("x", "skip", "Leave this cue out and go on."),
    LATE("l", "late", "Late? See which cues could be dropped to end on time; Enter drops them."),
    CARE("c", "care", "A caution is seen to: a core temperature reached, samples out now."),
    BOARD("b", "board", "The running total in large digits over the whole screen."),
    WHAT_IF("w", "what if", "Somebody asks what another food or amount would do: try it, and keep it or not."),
    ASKED("q", "asked", "Somebody asks: find the prepared answer, or note the question."),
    MISSING("m", "missing", "Something is missing or spoilt: see what can stand in for it."),
    NOTE("n", "note", "Write a line to remember; it stands in the report of this run."),
    ALREADY("a", "already", "What this cue does has been done already: pass it by and go on."),
    PAUSE("p", "pause", "Pause, and go on. The clock of the hall runs on."),
    TAKE_BACK("u", "undrop", "Bring back the cues that were dropped."),
    MORE("down", "", "Scroll down in words that are too long for the screen."),
    LESS("up", "", "Scroll up in them."),
    ANEW("N", "", "Begin anew, right after an old run was gone on with."),
    HELP("?", "help", "This page."),
    LEAVE("escape ctrl-c", "leave", "Leave the talk; it can be gone on with at the same cue.");

    private final Keys.Binding binding;

    LiveAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
