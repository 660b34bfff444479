package hobside.screen.talk;

import hobside.screen.Keys;

/** What can be done on the Talk screen, and by which key. */
enum TalkAction implements Keys.Bound {
    WORDS("enter e", "words", "Write the words of this cue. Live figures such as {saved} follow the dish."),
    EARLIER("<", "", "Move this cue earlier, over the edge of its section too."),
    LATER(">", "", "Move this cue later."),
    CHECK("c", "check", "Hold all words against the ledger and the published rules, and see how easy they are to say."),
    PRINT("p", "print", "Read the whole script as it is printed."),
    ADD("a", "add", "Add a cue of your own after this one."),
    OUT("x delete", "out", "Leave this cue out. Cautions cannot be left out, only put in other words."),
    JOIN("j", "join", "Put this cue and the next together as one. Ctrl-T while writing splits one in two."),
    KIND("k", "kind", "Say, Do, Show or Ask."),
    MUST("m", "must", "Whether it must be kept, or may be dropped when time runs short."),
    WHO("w", "", "Who does it: presenter or helper."),
    SECONDS("d", "", "How many seconds the hands are busy with it, beside speaking."),
    THINGS("i", "", "What has to be at hand for it: equipment, and props to be shown."),
    LANGUAGE("l", "", "Tell it in another language."),
    HERE("h", "", "What an ingredient is called here: shown beside its usual name."),
    RATE("R", "", "How fast you speak, in words a minute, and how long the slot is."),
    BACK_TO_FIRST("z", "", "Write this cue as the program does again."),
    ALL_BACK("Z", "", "Bring back everything that was left out."),
    UNDO("u ctrl-z", "undo", "Take back the last step, as often as you like."),
    REDO("r ctrl-y", "", "Do again what was taken back."),
    SAVE("s", "save", "Save the demo and write its script."),
    REHEARSE("T", "rehearse", "Rehearse the talk against its planned times."),
    LIVE("L", "live", "Give the talk before an audience."),
    HELP("?", "help", "This page."),
    BACK("escape q t ctrl-c", "back", "Back to the Bench.");

    private final Keys.Binding binding;

    TalkAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
