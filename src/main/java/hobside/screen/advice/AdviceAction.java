package hobside.screen.advice;

import hobside.screen.Keys;
import java.util.ArrayList;
import java.util.List;

/** What can be done with advice, on which page, and by which key. */
enum AdviceAction implements Keys.Bound {
    TAKE("enter", "take it", "Take this change, or this whole plan, over to the Bench; u there takes it back."),
    PAGE("tab", "next page", "Next change, best plan, frontier, credit, what does not help. The digits 1 to 5 go there at once."),
    PAGE_BACK("back-tab", "", "The page before."),
    RANK("o", "order", "Rank by saturated fat saved, by what each coin saves, by what each minute saves; on the credit page the order of telling."),
    GOAL("g", "goal", "What to reach: 6 g, a third less, 10 % of energy, 1.5 g per 100 g, a published claim."),
    AIM("m", "aim", "With the fewest changes, the least money, the least departure from the dish; or the most that can be saved."),
    KEEP("k", "keep", "Which ingredients must stay: without it, it is not our dish."),
    LIMITS("i", "limits", "How far it may go: taste, allergens, sharing, money, minutes, number of changes."),
    HELP("?", "help", "This page."),
    BACK("escape q A ctrl-c", "back", "Back to the Bench.");

    private final Keys.Binding binding;

    AdviceAction(String keys, String brief, String help) {
        this.binding = new Keys.Binding(keys, brief, help);
    }

    @Override
    public Keys.Binding binding() {
        return binding;
    }

    /** What the last line shows on a page. */
    static List<AdviceAction> lastLine(Tab tab) {
        List<AdviceAction> shown = new ArrayList<>(switch (tab) {
            case NEXT -> List.of(TAKE, PAGE, RANK, KEEP, LIMITS);
            case BEST -> List.of(TAKE, PAGE, GOAL, AIM, KEEP, LIMITS);
            case FRONTIER -> List.of(TAKE, PAGE, KEEP, LIMITS);
            case CREDIT -> List.of(PAGE, RANK);
            case MYTHS -> List.of(PAGE);
        });
        shown.addAll(List.of(HELP, BACK));
        return shown;
    }
}
