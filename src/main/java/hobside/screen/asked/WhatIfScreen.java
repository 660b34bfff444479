package hobside.screen.asked;

import hobside.food.Food;
import hobside.food.Shelf;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.ask.Cursor;
import hobside.screen.ask.FindScreen;
import hobside.screen.ask.Typing;
import hobside.screen.bench.Bench;
import hobside.stage.whatif.Notion;
import hobside.stage.whatif.Trial;
import hobside.stage.whatif.Ways;
import hobside.talk.Demo;
import hobside.talk.Stand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * "What if I use ... instead?": an ingredient, what is asked of it, and at once what that comes to beside the plan and the usual dish.
 * Nothing is changed until it is kept; one "what if" can be laid over another before that.
 *
 * @param laid what has been laid over the plan so far
 * @param at where one stands
 * @param trial what is shown: all that is laid, and what is under the cursor
 */
public record WhatIfScreen(Over over, List<Notion> laid, At at, Trial trial) implements Screen {

    /**
     * Where one stands: on the ingredients, on what may be asked of one, or typing an amount.
     *
     * @param problem what is wrong with what was typed
     */
    record At(Mode mode, Pick pick, Asked asked, Typing typing, String problem) {

        At in(Mode other) {
            return new At(other, pick, asked, Typing.EMPTY, "");
        }

        At with(Pick other) {
            return new At(mode, other, asked, typing, "");
        }

        At with(Asked other) {
            return new At(Mode.WAYS, pick, other, Typing.EMPTY, "");
        }

        At with(Typing other, String wrong) {
            return new At(mode, pick, asked, other, wrong);
        }
    }

    /**
     * What is asked about: an ingredient, the ways it may be asked, and the one under the cursor.
     *
     * @param about the id of the ingredient; empty for the pot as a whole
     */
    record Asked(String about, List<Ways.Way> ways, int cursor) {

        static final Asked NOTHING = new Asked("", List.of(), 0);

        Asked {
            ways = List.copyOf(ways);
        }

        Optional<Notion> notion() {
            return cursor < ways.size() ? Optional.of(ways.get(cursor).notion()) : Optional.empty();
        }

        boolean isOnFind() {
            return cursor == ways.size();
        }

        /** Two rows more than the ways: another food, and another amount. The pot as a whole has no amount. */
        int size() {
            return ways.size() + (about.isEmpty() ? 1 : 2);
        }

        /** On the row of another amount of the ingredient itself. */
        Asked onAmount() {
            return at(size() - 1);
        }

        Asked at(int row) {
            return new Asked(about, ways, row);
        }

        /** With one more way in front, under the cursor. */
        Asked with(Ways.Way way) {
            List<Ways.Way> more = new ArrayList<>(List.of(way));
            more.addAll(ways);
            return new Asked(about, more, 0);
        }
    }

    /** What one is doing. */
    enum Mode {
        CHOOSE, WAYS, AMOUNT
    }

    /** The id of the row that keeps all that is laid; no ingredient has such a name. */
    static final String KEEP = "\u0000keep";

    public static WhatIfScreen of(Screen back, Bench bench, Keep keep) {
        return fresh(Over.of(back, bench, keep), List.of());
    }

    private static WhatIfScreen fresh(Over over, List<Notion> laid) {
        Trial trial = over.whatIf().trial(laid);
        List<Ways.Row> rows = new ArrayList<>();
        if (!laid.isEmpty()) {
            rows.add(new Ways.Row(KEEP, "keep this", trial.title()));
        }
        rows.addAll(Ways.ingredients(trial.demo()));
        rows.add(new Ways.Row("", "the whole pot", "add a food; changes of the pot off and on"));
        At at = new At(Mode.CHOOSE, Pick.of(rows, laid.isEmpty() ? 0 : 1), Asked.NOTHING, Typing.EMPTY, "");
        return new WhatIfScreen(over, laid, at, trial);
    }

    public WhatIfScreen {
        laid = List.copyOf(laid);
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return pressed(pressed.key());
        }
        if (message instanceof Message.Pasted pasted) {
            return at.mode() == Mode.AMOUNT ? Next.to(typed(at.typing().inserting(pasted.text().strip()))) : Next.to(this);
        }
        return Over.relayed(over.back(), message, back -> new WhatIfScreen(over.with(back), laid, at, trial));
    }

    private Next pressed(Key key) {
        Optional<WhatIfAction> action = WhatIfAction.of(at.mode(), key);
        return action.isPresent() ? act(action.get()) : Next.to(moved(key));
    }

    private Next act(WhatIfAction action) {
        return switch (action) {
            case ASK -> chosen();
            case KEEP_WAY -> kept();
            case KEEP_AMOUNT -> keptAmount();
            case ANOTHER, ANOTHER_AMOUNT -> Next.to(another());
            case FIND -> find();
            case AMOUNT -> Next.to(amount(Typing.EMPTY));
            case LET_GO -> Next.to(fresh(over, laid));
            case BACK -> laid.isEmpty() ? Next.to(over.back()) : Next.to(fresh(over, trial.withoutLast()));
            case OUT -> Next.to(over.back());
        };
    }

    private Next chosen() {
        Ways.Row row = at.pick().chosen();
        if (row.id().equals(KEEP)) {
            return over.keep().keep(trial.demo(), said());
        }
        Asked asked = new Asked(row.id(), Ways.of(base(), row.id(), beside(), shelf()), 0);
        return Next.to(tried(at.with(asked)));
    }

    private String said() {
        return "Kept: " + trial.title() + ".";
    }

    /** The demo with all that is laid so far, before what is under the cursor. */
    private Demo base() {
        return laid.isEmpty() ? over.demo() : laid.get(laid.size() - 1).demo();
    }

    private Stand.Beside beside() {
        return over.whatIf().ground().beside();
    }

    private Shelf shelf() {
        return over.bench().desk().demoShelf();
    }

    /** What is under the cursor is laid over the rest and tried. */
    private WhatIfScreen tried(At other) {
        return new WhatIfScreen(over, laid, other, over.whatIf().trial(with(other.asked().notion())));
    }

    private List<Notion> with(Optional<Notion> notion) {
        List<Notion> all = new ArrayList<>(laid);
        notion.ifPresent(all::add);
        return all;
    }

    private Next kept() {
        if (at.asked().notion().isEmpty()) {
            return at.asked().isOnFind() ? find() : Next.to(amount(Typing.EMPTY));
        }
        Optional<String> blocked = blocked(at.asked().notion().get());
        return blocked.isPresent() ? Next.to(wrong(blocked.get())) : over.keep().keep(trial.demo(), said());
    }

    private Optional<String> blocked(Notion notion) {
        return over.whatIf().blocked(notion).map(why -> "That cannot be kept: " + why);
    }

    private WhatIfScreen wrong(String problem) {
        return new WhatIfScreen(over, laid, at.with(at.typing(), problem), trial);
    }

    private Next keptAmount() {
        boolean tried = trial.laid().size() > laid.size();
        return tried ? over.keep().keep(trial.demo(), said())
                : Next.to(wrong("Write how much of it, such as half, 300 g, 2 cups or +1."));
    }

    private WhatIfScreen another() {
        return trial.laid().size() == laid.size() ? wrong("Choose something first; Tab then lays another over it.") : fresh(over, trial.laid());
    }

    private Next find() {
        String about = at.asked().about();
        List<Food> likely = Ways.likely(base(), about, beside(), shelf());
        Shelf shelf = likely.isEmpty() ? shelf() : Shelf.of(first(likely));
        String title = about.isEmpty() ? "What if we add: find the food" : "What if, in its place: find the food";
        return Next.to(FindScreen.of(this, new FindScreen.Search(title, shelf, WhatIfScreen::found)));
    }

    private List<Food> first(List<Food> likely) {
        List<Food> all = new ArrayList<>(likely);
        all.addAll(shelf().foods().stream().filter(food -> !likely.contains(food)).toList());
        return all;
    }

    /** The search knows the screen below it as it is by now. */
    private static Next found(Screen here, Food food) {
        WhatIfScreen below = (WhatIfScreen) ((FindScreen) here).back();
        Ways.Way way = Ways.found(below.base(), below.at.asked().about(), food, below.beside());
        return Next.to(below.tried(below.at.with(below.at.asked().with(way))));
    }

    /** Typing an amount: of the ingredient, or of the food under the cursor that would take its place. */
    private WhatIfScreen amount(Typing typing) {
        return measured().isEmpty() ? wrong("The pot as a whole has no amount. Choose a food for it first.")
                : new WhatIfScreen(over, laid, at.in(Mode.AMOUNT), trial).typed(typing);
    }

    /** A number typed at once is about the ingredient itself, whatever food is under the cursor. */
    private WhatIfScreen ofItself() {
        return new WhatIfScreen(over, laid, at.with(at.asked().onAmount()), trial);
    }

    /** Whose amount is asked: what the way under the cursor brings in, or the ingredient itself. */
    private String measured() {
        return at.asked().about().isEmpty() ? at.asked().notion().flatMap(Notion::change).map(change -> change.of()).orElse("") : at.asked().about();
    }

    private WhatIfScreen typed(Typing typing) {
        Demo demo = at.asked().notion().map(Notion::demo).orElseGet(this::base);
        Optional<Notion> notion = Ways.amount(demo, measured(), typing.text(), beside().tongue());
        String problem = notion.isPresent() || typing.text().isBlank() ? "" : "Not an amount yet. Such as half, 300 g, 2 cups, 75 % or +1.";
        return new WhatIfScreen(over, laid, at.with(typing, problem), over.whatIf().trial(with(notion)));
    }

    private WhatIfScreen moved(Key key) {
        return switch (at.mode()) {
            case CHOOSE -> new WhatIfScreen(over, laid, at.with(at.pick().after(key)), trial);
            case WAYS -> isDigit(key) && !at.asked().about().isEmpty() ? ofItself().amount(Typing.EMPTY.after(key)) : tried(at.with(at.asked().at(Cursor.after(key, at.asked().cursor(), at.asked().size()))));
            case AMOUNT -> typed(at.typing().after(key));
        };
    }

    private static boolean isDigit(Key key) {
        return key.kind() == Key.Kind.CHARACTER && (Character.isDigit(key.codePoint()) || key.types('+'));
    }

    @Override
    public void view(Frame frame) {
        WhatIfView.draw(this, frame);
        Keys.line(frame, WhatIfAction.lastLine(at.mode()));
    }
}
