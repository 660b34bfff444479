package hobside.screen.desk;

import hobside.dish.Change;
import hobside.talk.Demo;
import hobside.dish.Ingredient;
import hobside.dish.Kit;
import hobside.dish.Pot;
import hobside.dish.Working;
import hobside.food.Food;
import hobside.food.Shelf;
import hobside.file.Study;
import hobside.ledger.Ledger;
import java.util.List;
import java.util.Optional;

/** The demo on the desk with its ledger, its past, and where it is kept. The ledger is worked out once for each state. */
public final class Desk {

    private final Study study;
    private final Demo demo;
    private final Past past;
    private final Kept kept;
    private final Ledger ledger;
    private final Pot before;
    private final Pot now;

    /** The name of its file, empty while nothing has been changed, and what the title line says of it. */
    public record Kept(String name, String words) {

        public static final Kept NOT_YET = new Kept("", "not changed yet");

        private static final String LOST = "NOT KEPT";

        /** The last step could not be put away. */
        public Kept lost() {
            return new Kept(name, LOST);
        }

        public boolean isLost() {
            return words.equals(LOST);
        }
    }

    private Desk(Study study, Demo demo, Past past, Kept kept) {
        this.study = study;
        this.demo = demo;
        this.past = past;
        this.kept = kept;
        this.ledger = Ledger.of(demo.dish(), demo.plan(), study.books());
        this.before = pot(List.of());
        this.now = pot(demo.plan().told());
    }

    private Desk(Desk same, Kept kept) {
        this.study = same.study;
        this.demo = same.demo;
        this.past = same.past;
        this.kept = kept;
        this.ledger = same.ledger;
        this.before = same.before;
        this.now = same.now;
    }

    private Pot pot(List<Change> changes) {
        return Working.of(demo.dish(), changes, Kit.typical(study.books().cookery())).pot();
    }

    public static Desk of(Study study, Demo demo, Kept kept) {
        return new Desk(study, demo, Past.NONE, kept);
    }

    public Study study() {
        return study;
    }

    /** The foods of the shelf together with those that this dish brings along. */
    public Shelf demoShelf() {
        List<Food> own = demo.dish().ingredients().stream().map(Ingredient::food)
                .filter(food -> study.shelf().food(food.id()).isEmpty()).toList();
        return own.isEmpty() ? study.shelf() : study.shelf().with(own);
    }

    public Demo demo() {
        return demo;
    }

    public Kept kept() {
        return kept;
    }

    public Ledger ledger() {
        return ledger;
    }

    /** The pot as it is cooked here, before any change. */
    public Pot before() {
        return before;
    }

    /** The pot when everything that is switched on has been done. */
    public Pot now() {
        return now;
    }

    /** The desk with the demo changed; the old state can be gone back to. */
    public Desk changed(Demo other) {
        return new Desk(study, other, past.leaving(demo), kept);
    }

    public Optional<Desk> undone() {
        return past.previous().map(before -> new Desk(study, before, past.goingBack(demo), kept));
    }

    public Optional<Desk> redone() {
        return past.next().map(after -> new Desk(study, after, past.goingOn(demo), kept));
    }

    /** The same work, reckoned with other foods and prices at hand. What has been done can still be undone. */
    public Desk with(Study other) {
        return new Desk(other, demo, past, kept);
    }

    public Desk kept(Kept other) {
        return new Desk(this, other);
    }
}
