package hobside.screen.workshop;

import hobside.screen.Keys;

/** The keys of the workshop. */
enum WorkshopAction implements Keys.Bound {
    RUN("enter", "run", "Work at this set: each of the list practises in turn, n on a feedback page goes to the next person."),
    PREPARE("n", "new", "Prepare a set: a title, what is practised, how hard, on which dishes."),
    REPORT("r", "report", "Who can explain what, the commonest misunderstandings, and what to teach next."),
    PRINT("p", "write", "Write the report into the folder practice: as text, as a page to print, and as a table."),
    GATHER("g", "gather", "Copy the practice logs of another folder, such as a stick, into this kitchen. Nothing is overwritten or lost."),
    WATCH("w", "watch", "Mark a live demonstration, change by change, by the points of the rubric."),
    ERASE("e", "erase", "Erase a person and everything that was logged of that nickname."),
    HELP("?", "help", "This page."),
    BACK("escape q W ctrl-c", "back", "Back to the list of who practises.");

    private final Keys.Binding binding;

    WorkshopAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
