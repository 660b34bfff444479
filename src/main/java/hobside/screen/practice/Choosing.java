package hobside.screen.practice;

import hobside.screen.Keys;

/** The keys of an exercise in which something is chosen. */
enum Choosing implements Keys.Bound {
    TAKE("enter", "take it", "This is my answer. A digit takes an answer at once."),
    LIFT("space", "", "In an order: take a row in hand, move it with the arrows, and put it down."),
    LARGE("L", "large", "Question and answers in large letters, for a group."),
    OTHER("x", "another", "Leave this exercise and have another one; it is not logged."),
    HELP("?", "help", "This page."),
    BACK("escape q ctrl-c", "back", "Back to the list of who practises. What was answered is logged.");

    private final Keys.Binding binding;

    Choosing(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }
}
