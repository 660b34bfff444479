package hobside.screen.packet;

import hobside.food.Doubt;
import hobside.food.Food;
import hobside.guide.Allergens;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Typed;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.screen.ask.Typing;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.read.ReadScreen;
import hobside.screen.shelf.FoodScreen;
import hobside.screen.shelf.ShelfScreen;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The form for a food from its packet. What is typed is read and checked at each key; it is written to the disk when it is accepted. */
public record PacketScreen(ShelfScreen shelf, PacketForm form, int cursor, String said) implements Screen {

    /** The keys of the form. */
    enum Action implements Keys.Bound {
        SAVE("ctrl-s f10", "put it on the shelf", "Write the food down. What is hard to believe is asked about first, and can be overruled with a reason."),
        NEXT("enter down tab", "next", "To the next line. Enter on the allergens opens their list, and on the last line it saves."),
        PREVIOUS("up back-tab", "", "To the line before."),
        FIRST("page-up", "", "To the first line."),
        LAST("page-down", "", "To the last line."),
        EMPTY("ctrl-u", "", "Empty the line: what is blank is unknown, never zero."),
        HELP("f1 ?", "help", "This page."),
        BACK("escape ctrl-c", "back", "Back to the shelf. When something has been typed, a second press leaves it.");

        private final Keys.Binding binding;

        Action(String keys, String brief, String help) {
            this.binding = new Keys.Binding(keys, brief, help);
        }

        @Override
        public Keys.Binding binding() {
            return binding;
        }
    }

    private static final String LEAVING = "What is typed here is not written down yet. Ctrl-s keeps it, Escape once more leaves it.";

    public static PacketScreen of(ShelfScreen shelf, PacketForm form) {
        return new PacketScreen(shelf, form, 0, "");
    }

    PacketRow row() {
        return PacketRow.ALL.get(cursor);
    }

    Bench bench() {
        return shelf.bench();
    }

    private PacketScreen at(int row, String words) {
        return new PacketScreen(shelf, form, Math.max(0, Math.min(PacketRow.ALL.size() - 1, row)), words);
    }

    private PacketScreen with(PacketForm other) {
        return new PacketScreen(shelf, other, cursor, "");
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.Told told) {
            return bench().below(message, bench -> heard(told, bench));
        }
        if (message instanceof Message.Pasted pasted) {
            return Next.to(typed(form.typing(row()).inserting(pasted.text().strip())));
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Keys.action(Action.values(), pressed.key()).map(action -> act(action, pressed.key())).orElseGet(() -> typed(pressed.key()));
        }
        return Next.to(this);
    }

    /** Once it is on the shelf, it is shown there; what could not be written stays here to be tried again. */
    private Screen heard(Message.Told told, Bench bench) {
        if (told.answer() instanceof Answer.Shelved shelved && shelved.fresh().isPresent()) {
            return FoodScreen.over(shelf, shelved.fresh().get(), bench);
        }
        return new PacketScreen(shelf.over(bench), form, cursor, bench.said());
    }

    private Next act(Action action, Key key) {
        return switch (action) {
            case SAVE -> save();
            case NEXT -> key.kind() == Key.Kind.ENTER ? enter() : Next.to(at(cursor + 1, ""));
            case PREVIOUS -> Next.to(at(cursor - 1, ""));
            case FIRST -> Next.to(at(0, ""));
            case LAST -> Next.to(at(PacketRow.ALL.size() - 1, ""));
            case EMPTY -> typed(key);
            case HELP -> Next.to(ReadScreen.help(this, "A food from its packet", List.of(Action.values())));
            case BACK -> isUntouched() || said.equals(LEAVING) ? Next.to(shelf) : Next.to(at(cursor, LEAVING));
        };
    }

    private boolean isUntouched() {
        return form.origin().old().map(old -> PacketForm.edit(old).equals(form)).orElseGet(() -> !form.hasFigure());
    }

    private Next enter() {
        if (row().equals(PacketRow.SAVE)) {
            return save();
        }
        return row().equals(PacketRow.ALLERGENS) ? Next.to(allergens(0)) : Next.to(at(cursor + 1, ""));
    }

    private Next typed(Key key) {
        return Next.to(typed(form.typing(row()).after(key)));
    }

    private PacketScreen typed(Typing typing) {
        return row().isTyped() && !typing.equals(form.typing(row())) ? with(form.with(row(), typing)) : at(cursor, "");
    }

    private Screen allergens(int at) {
        List<Menu.Row> rows = Allergens.KEYS.stream().map(key -> new Menu.Row((form.allergens().contains(key) ? "[x] " : "[ ] ") + Allergens.words(key), "",
                "Enter puts it in or takes it out, Escape goes back to the form. Chosen: " + PacketView.allergens(form) + ".")).toList();
        Menu menu = new Menu("Which allergens does the packet name?", "Makers' recipes differ: take them from this very packet.", rows,
                index -> Next.to(with(form.toggling(Allergens.KEYS.get(index))).allergens(index)));
        return MenuScreen.of(this, menu, at);
    }

    private Next save() {
        PacketReading reading = PacketReading.of(form);
        for (Map.Entry<PacketRow, String> each : reading.problems().entrySet()) {
            return Next.to(at(PacketRow.ALL.indexOf(each.getKey()), "Not yet: " + each.getValue()));
        }
        if (!form.hasFigure()) {
            return Next.to(at(PacketRow.ALL.indexOf(PacketRow.ALL.get(2)), "Not yet: there is no figure at all. Write at least one."));
        }
        List<Doubt> doubts = reading.doubts(bench().desk().study().packetRule());
        if (!doubts.isEmpty() && doubts.get(0).isImpossible()) {
            return Next.to(at(PacketRow.ALL.indexOf(PacketRow.of(doubts.get(0).about())), doubts.get(0).words()));
        }
        return doubts.isEmpty() ? put(reading.food(List.of())) : Next.to(askWhy(reading, doubts));
    }

    private Next put(Food food) {
        return Next.doing(at(cursor, "Writing it down..."), new Work.PutFood(food, form.origin().old()));
    }

    private Screen askWhy(PacketReading reading, List<Doubt> doubts) {
        String more = doubts.size() == 1 ? "" : " (and " + (doubts.size() - 1) + " more)";
        return LineScreen.of(this, new Question("Is it right all the same?" + more, "because",
                List.of(doubts.get(0).words(), "The reason is kept with the food. Escape goes back to the figures."), form.earlierReason(doubts), text -> text.isEmpty()
                        ? Reply.wrong("A check is only overruled with a reason: \"the packet says so; it is sweetened with maltitol\".")
                        : Reply.go(put(reading.food(overruled(doubts, text))))));
    }

    private static List<Doubt.Overruled> overruled(List<Doubt> doubts, String reason) {
        return doubts.stream().map(Doubt::check).distinct().map(check -> new Doubt.Overruled(check, reason)).toList();
    }

    @Override
    public Optional<Typed> typed() {
        Typed.About about = bench().whereTyped();
        String old = form.origin().old().map(Food::id).orElse("");
        return isUntouched() ? Optional.empty() : Optional.of(new Typed(new Typed.About(about.demo(), about.dish(), old), ASKED, form.noted()));
    }

    private static final String ASKED = "A food from its packet";

    /** The form over the shelf with what was typed into it when the program was stopped; empty when something else was. */
    public static Optional<Screen> goingOn(Bench bench, Typed left) {
        Optional<Food> old = bench.desk().study().shelf().food(left.about().spot());
        boolean gone = !left.about().spot().isEmpty() && old.isEmpty();
        if (!left.asked().equals(ASKED) || gone) {
            return Optional.empty();
        }
        return Optional.of(of(ShelfScreen.of(bench), old.map(PacketForm::edit).orElseGet(() -> PacketForm.blank("")).with(left.text())));
    }

    @Override
    public void view(Frame frame) {
        PacketView.draw(this, frame);
    }
}
