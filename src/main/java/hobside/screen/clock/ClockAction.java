package hobside.screen.clock;

import hobside.screen.Keys;

/** What can be done on the Clock screen, and by which key. */
enum ClockAction implements Keys.Bound {
    SLOT("t", "slot", "How many minutes there are on stage. What must be done ahead is worked out anew."),
    HALL("k", "hall", "How many hobs and ovens there are, and whether somebody helps."),
    SHOWN("space enter", "ahead/stage", "How a step is given: as it fits, whole on stage, begun there and a finished pot brought in, or done ahead."),
    WHO("w", "who", "Whose hands do a step: as it fits, the presenter's or the helper's."),
    MINUTES("d", "minutes", "How long a step takes, and for how many of its minutes hands are busy."),
    PLACE("o", "", "Where a step goes on: on the bench, on a hob, in the oven, in the cold."),
    MEANWHILE("m", "", "Whether a step can go on beside the one before it."),
    OVER("v", "", "Whether you can speak to people while your hands are busy with it."),
    EARLIEST("e", "", "The minute before which it may not begin."),
    LATEST("l", "", "The minute by which it must be over."),
    RETOLD("r", "", "Tell the changes in the order that was found to take less time."),
    OPEN("z", "", "Let the program decide about this task again."),
    PRINT("p", "print", "Read the running order from top to bottom, with what is done ahead and who does what when."),
    REHEARSE("R", "rehearse", "Rehearse the talk in this order, against the clock."),
    LIVE("L", "live", "Give the demonstration."),
    UNDO("u ctrl-z", "undo", "Take back the last step, as often as you like."),
    REDO("y ctrl-y", "", "Do again what was taken back."),
    SAVE("s", "save", "Save the demo and write its papers."),
    HELP("?", "help", "This page."),
    BACK("escape q C ctrl-c", "back", "Back to the Bench.");

    private final Keys.Binding binding;

    ClockAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
