package hobside.screen.bench;

import hobside.screen.Keys;
import java.util.List;

/** What can be done on the Bench, where, and by which key. */
enum BenchAction implements Keys.Bound {
    CHOOSE(Side.DISH, "enter", "changes", "See the changes that make sense for this ingredient, each with its effect, and take one."),
    DETAIL(Side.PLAN, "enter", "more", "See one change in full: why, what it does not do, its range, its fair share of the credit."),
    SWITCH(Side.BOTH, "tab right left", "side", "Go over to the other side: the dish, or the plan."),
    UP(Side.BOTH, "up k", "", "One row up."),
    DOWN(Side.BOTH, "down j", "", "One row down."),
    TOP(Side.BOTH, "home page-up", "", "To the first row."),
    BOTTOM(Side.BOTH, "end page-down", "", "To the last row."),
    ON_OFF(Side.PLAN, "space", "off/on", "Switch a change off, and on again, to see what it is worth."),
    EARLIER(Side.PLAN, "<", "", "Tell this change earlier. The totals at the end stay the same."),
    LATER(Side.PLAN, ">", "", "Tell this change later."),
    ADD(Side.DISH, "a", "add", "Write an ingredient into the dish: search for the food, then say how much."),
    SAVE(Side.BOTH, "s", "save", "Save the demo and write its script, as text and as Markdown, to the scripts folder."),
    BOARD(Side.BOTH, "b", "board", "Show the running total in large digits that an audience can read."),
    TALK(Side.BOTH, "t", "talk", "The talk: its cues, their words and times, what the check says; read it as it is printed."),
    EDIT(Side.BOTH, "e", "edit", "Change the amount of an ingredient, or the amount in a change."),
    COOK(Side.DISH, "c", "", "Say how this ingredient is cooked in the dish: browned, fried, roasted, simmered..."),
    WEIGH(Side.BOTH, "w", "weigh", "Give the weight your scale shows for what came off. It beats the typical figure. On the dish's side it is about the change taken last."),
    NOTE(Side.BOTH, "n", "note", "Write a note of your own beside a change; it goes into the script."),
    REMOVE(Side.BOTH, "x delete", "out", "Take the ingredient out of the dish, or the change out of the plan."),
    ADVICE(Side.BOTH, "A", "advice", "Advice: the next best change, the best plan for a goal, the frontier, the credit, what does not help."),
    CLOCK(Side.BOTH, "C", "clock", "The running order: who does what when, what is done ahead, whether it fits the slot. Rehearse and give the demonstration from there."),
    REHEARSE(Side.BOTH, "R", "rehearse", "Rehearse the talk cue by cue against its planned times; read how it went, and compare runs."),
    LIVE(Side.BOTH, "L", "live", "Give the talk before an audience; a talk that was broken off is gone on with."),
    PRACTICE(Side.BOTH, "X", "practice", "Practise explaining a change: exercises for trainees, and workshops for trainers."),
    UNDO(Side.BOTH, "u", "undo", "Take back the last step, as often as you like."),
    REDO(Side.BOTH, "r", "", "Do again what was taken back."),
    FOODS(Side.BOTH, "f", "foods", "The shelf: look up a food, write one down from its packet, price it."),
    PRICES(Side.BOTH, "P", "", "Price lists: choose one, take prices in a shop, compare two, see what is paid at the till."),
    BASIS(Side.BOTH, "p", "", "Show the figures for one serve, for the whole pot, or for 100 g as cooked."),
    GUIDE(Side.BOTH, "g", "", "Choose the published guide that a serve is held against."),
    STEPS(Side.BOTH, "y", "", "Write the steps of the method: what is done, at which stage, how long it takes."),
    SERVES(Side.BOTH, "v", "", "Say how many serves the dish gives as its people cook it."),
    NAME(Side.BOTH, "m", "", "Give the dish another name."),
    OPEN(Side.BOTH, "o", "open", "Open another dish or a saved demo; what you did here is kept."),
    NEW(Side.BOTH, "N", "", "Write a new dish from nothing."),
    HELP(Side.BOTH, "?", "help", "This page."),
    LEAVE(Side.BOTH, "q ctrl-c", "leave", "Leave. Nothing is lost: every step is kept as you go.");

    /** Which side of the Bench an action belongs to. */
    enum Side {
        DISH,
        PLAN,
        BOTH;

        boolean covers(Side side) {
            return this == BOTH || this == side;
        }
    }

    private final Side side;
    private final Keys.Binding binding;

    BenchAction(Side side, String keys, String brief, String help) {
        this.side = side;
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }

    /** What the last line shows, the most wanted first; help and the way out end it. */
    static List<BenchAction> lastLine(Side side) {
        return side == Side.DISH ? List.of(CHOOSE, SWITCH, ADD, SAVE, TALK, CLOCK, LIVE, ADVICE, EDIT, BOARD, UNDO, OPEN, REMOVE, REHEARSE, PRACTICE, HELP, LEAVE)
                : List.of(DETAIL, SWITCH, ON_OFF, EDIT, WEIGH, TALK, CLOCK, LIVE, ADVICE, NOTE, REMOVE, UNDO, SAVE, BOARD, REHEARSE, PRACTICE, HELP, LEAVE);
    }

    boolean isOn(Side where) {
        return side.covers(where);
    }
}
