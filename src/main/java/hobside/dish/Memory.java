package hobside.dish;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What has become of each item under one change or over one fire. A dish is worked out some hundred times for one ledger – each
 * uncertain factor at both its ends, after each change – and most items fare alike in most of them: that work is done once.
 *
 * <p>This is sound because an item never changes, and because only work that looks at nothing but its own item is remembered. What
 * an uncertain factor had a say in is remembered for each of its ends apart. A memory belongs to one cookery. It tells changes and
 * ingredients from each other by identity, so it is of use only where the same ones are tried again and again.
 */
public final class Memory {

    /** Remembers nothing, for a dish that is worked out once: remembering would cost more than it saves. */
    static final Memory NONE = new Memory(false);

    /**
     * A pot after a piece of work: with the one item that was worked on in it, or with all a dish begins with.
     *
     * @param blocked why the work could not be done; the pot is then as before
     * @param factors the uncertain factors that had a say in it
     */
    record Became(Pot pot, Optional<String> blocked, List<String> factors) {

        /** Done with a kit of its own, so that the factors it asked for can be told. */
        static Became of(Pot pot, Optional<String> blocked, Kit kit) {
            return new Became(pot, blocked, List.copyOf(kit.levels().met()));
        }

        static Became of(Pot pot, Kit kit) {
            return of(pot, Optional.empty(), kit);
        }

        Item item() {
            return pot.itemsInside().get(0);
        }
    }

    /** A piece of work: on which item – none before it is put in –, what is done, and which factor is moved if it matters. */
    private static final class Work {
        private final Item item;
        private final Object done;
        private final Levels.Moved moved;

        Work(Item item, Object done, Levels.Moved moved) {
            this.item = item;
            this.done = done;
            this.moved = moved;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Work work && item == work.item && done == work.done && moved.equals(work.moved);
        }

        @Override
        public int hashCode() {
            return (System.identityHashCode(item) * 31 + System.identityHashCode(done)) * 31 + moved.hashCode();
        }
    }

    private final boolean keeps;
    private final Map<Work, Became> known = new HashMap<>();

    private Memory(boolean keeps) {
        this.keeps = keeps;
    }

    static Memory empty() {
        return new Memory(true);
    }

    /** Whether it is worth asking. */
    boolean keeps() {
        return keeps;
    }

    /**
     * What became of an item when this was done to it before; null when it never was at these levels.
     *
     * @param item null before anything is put in
     * @param done the change, the fire or what is put in
     */
    Became known(Item item, Object done, Levels levels) {
        Became became = known.get(new Work(item, done, Levels.NOTHING));
        if (became == null || became.factors().contains(levels.moved().factor())) {
            became = known.get(new Work(item, done, levels.moved()));
        }
        if (became != null) {
            levels.note(became.factors());
        }
        return became;
    }

    /** Remembers what became of an item, and gives it back. */
    Became keep(Item item, Object done, Levels levels, Became became) {
        boolean matters = became.factors().contains(levels.moved().factor());
        known.put(new Work(item, done, matters ? levels.moved() : Levels.NOTHING), became);
        levels.note(became.factors());
        return became;
    }
}
