package hobside.screen.workshop;

import hobside.file.Limits;
import hobside.practice.Kind;
import hobside.practice.Label;
import hobside.practice.WorkshopSet;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question;
import hobside.screen.desk.Work;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The questions by which a set is prepared: its title, what is practised, how hard, on which dish, how long. */
final class Preparing {

    private final WorkshopScreen back;
    private final String title;

    private Preparing(WorkshopScreen back, String title) {
        this.back = back;
        this.title = title;
    }

    static Screen title(WorkshopScreen back) {
        return LineScreen.of(back, new Question("A new set", "title", List.of("Such as: Tuesday group, first evening."), "", text ->
                text.isBlank() || text.length() > Limits.NAME ? Question.Reply.wrong("Type a title of at most " + Limits.NAME + " characters.")
                        : Question.Reply.go(Next.to(new Preparing(back, text).kinds(List.of())))));
    }

    private Words words() {
        return back.room().syllabus().with().words();
    }

    /** Each kind is put in or taken out; the first row goes on. */
    private Screen kinds(List<Kind> chosen) {
        List<Menu.Row> rows = new ArrayList<>();
        rows.add(new Menu.Row("go on with these", chosen.isEmpty() ? "all kinds" : chosen.size() + (chosen.size() == 1 ? " kind" : " kinds"), "Nothing chosen means all of them."));
        for (Kind kind : Kind.DRAWN) {
            rows.add(new Menu.Row((chosen.contains(kind) ? "[x] " : "[ ] ") + words().say("exercise.kind." + kind.word()), "", "Enter puts it in or takes it out."));
        }
        return MenuScreen.of(back, new Menu(title, "What is practised?", rows, index -> Next.to(index == 0 ? levels(chosen) : kinds(toggled(chosen, index)))), 0);
    }

    private static List<Kind> toggled(List<Kind> chosen, int index) {
        Kind kind = Kind.DRAWN.get(index - 1);
        List<Kind> other = new ArrayList<>(chosen);
        if (!other.remove(kind)) {
            other.add(kind);
        }
        return other;
    }

    private Screen levels(List<Kind> kinds) {
        List<Menu.Row> rows = new ArrayList<>(List.of(new Menu.Row("as each one gets on", "", "Three right in a row make it harder, two missed make it easier.")));
        for (int level = 1; level <= Label.HARDEST; level++) {
            rows.add(new Menu.Row("level " + level, level == 1 ? "easiest" : level == Label.HARDEST ? "hardest" : "", "The same level for all."));
        }
        return MenuScreen.of(back, new Menu(title, "How hard?", rows, level -> Next.to(dishes(kinds, level))), 0);
    }

    private Screen dishes(List<Kind> kinds, int level) {
        List<String> names = new ArrayList<>(back.room().kept().demos().keySet());
        List<Menu.Row> rows = new ArrayList<>(List.of(new Menu.Row("all of them", "", "Exercises are drawn from every dish of this kitchen.")));
        names.forEach(name -> rows.add(new Menu.Row(name, "", back.room().kept().demos().get(name).dish().name())));
        return MenuScreen.of(back, new Menu(title, "On which dish?", rows, index -> Next.to(minutes(new WorkshopSet.Wanted(kinds, List.of(),
                index == 0 ? List.of() : List.of(names.get(index - 1)), level)))), 0);
    }

    private Screen minutes(WorkshopSet.Wanted wanted) {
        return LineScreen.of(back, new Question(title, "minutes each", List.of("How long each one has; 0 leaves it open."), "0", text -> {
            boolean number = text.matches("\\d{1,3}");
            return number ? Question.Reply.go(Next.doing(back.saying("Saving..."),
                    new Work.PutSet(new WorkshopSet(title, wanted, Integer.parseInt(text), back.room().language()))))
                    : Question.Reply.wrong("Type a whole number of minutes, such as 15.");
        }));
    }
}
