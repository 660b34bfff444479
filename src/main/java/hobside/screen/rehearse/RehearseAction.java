package hobside.screen.rehearse;

import hobside.screen.Keys;

/** What can be done while rehearsing, and by which key. */
enum RehearseAction implements Keys.Bound {
    ON("space enter right page-down", "on", "This cue is done: on to the next. At the end: the report."),
    BACK("left backspace page-up", "back", "Back to the cue before."),
    STUMBLED("s", "stumbled", "Mark this cue: you stumbled here."),
    TOO_LONG("t", "too long", "Mark this cue: it is too long."),
    PAUSE("p", "pause", "Stop the clock, and let it run again."),
    JUMP("j", "jump", "Jump to a part or a cue; typing looks for it."),
    SKIP("x", "skip", "Leave this cue out this time and go on."),
    NOTE("n", "note", "Write a line to remember; it stands in the report."),
    MORE("down", "", "Scroll down in words that are too long for the screen."),
    LESS("up", "", "Scroll up in them."),
    HELP("?", "help", "This page."),
    END("escape ctrl-c", "end", "End this run here and read its report. All runs are kept.");

    private final Keys.Binding binding;

    RehearseAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
