package hobside.screen.open;

import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import java.util.List;

/** The menu of saved demos, newest first, and of dishes. */
public final class OpenScreen {

    private OpenScreen() {}

    public static Screen of(Bench bench, Answer.Choices choices) {
        List<Menu.Row> rows = choices.choices().stream().map(choice -> row(choice, choices.kitchen())).toList();
        return MenuScreen.of(bench, new Menu("Open", "Saved demos first, the newest on top; then dishes.", rows,
                index -> Next.doing(bench, new Work.Open(choices.choices().get(index)))), 0);
    }

    private static Menu.Row row(Answer.Choice choice, String kitchen) {
        return switch (choice.kind()) {
            case DEMO -> new Menu.Row(choice.title(), "demo " + choice.name(), "Saved as " + choice.name() + " in the scripts folder of " + kitchen + ", with its plan.");
            case OWN_DISH -> new Menu.Row(choice.title(), "your dish", "From " + choice.name() + " in your kitchen folder, " + kitchen + ", as it is cooked.");
            case BUNDLED_DISH -> new Menu.Row(choice.title(), "bundled dish", "A dish of the Ropewalk Kitchen in Ostrey Landing, an invented town. "
                    + "Its prices are invented too.");
        };
    }
}
