package hobside.screen.practice;

import hobside.screen.Keys;

/** The keys of the list of who practises. */
enum PracticeAction implements Keys.Bound {
    PRACTISE("enter", "practise", "The next exercise for this person, and why it is that one."),
    NEW("n", "new person", "Somebody new: a nickname, asked once. It stays in this kitchen and can be erased."),
    PAGE("m", "how far", "How far this person has come: bars, boxes, what comes next."),
    LANGUAGE("l", "language", "Exercises and what is said back in the next language."),
    WORKSHOP("W", "workshop", "For trainers: prepare a set, gather results, report, watch a demonstration."),
    HELP("?", "help", "This page."),
    BACK("escape q X ctrl-c", "back", "Back to the Bench.");

    private final Keys.Binding binding;

    PracticeAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
