package hobside.stage;

import hobside.stage.Cooking.Stepped;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What is done before the audience comes.
 *
 * @param steps the work, in the order of the method
 * @param swaps keys of the steps on stage at whose end a pot that was made ahead is brought in
 * @param minutes of work and cooking, one step after another
 */
public record Ahead(List<Item> steps, List<String> swaps, int minutes) {

    /**
     * A step that is done ahead.
     *
     * @param second whether it is also shown on stage, so that it is done with a second lot of food
     */
    public record Item(String key, String label, int minutes, boolean second) {}

    public Ahead {
        steps = List.copyOf(steps);
        swaps = List.copyOf(swaps);
    }

    /** Whether food has to be bought twice: a pot is shown being made, and another is brought in. */
    public boolean takesSecondLot() {
        return !swaps.isEmpty();
    }

    static Ahead of(Scene scene, List<Way> ways) {
        List<Stepped> steps = scene.steps();
        List<Item> items = new ArrayList<>();
        for (int index : needed(steps, ways)) {
            Stepped step = steps.get(index);
            items.add(new Item(step.key(), scene.label(step), step.step().minutes(), ways.get(index) != Way.AHEAD));
        }
        return new Ahead(items, swaps(steps, ways), minutes(steps, ways));
    }

    /** Minutes of work and cooking that these ways leave to be done ahead. */
    static int minutes(List<Stepped> steps, List<Way> ways) {
        int minutes = 0;
        for (int index : needed(steps, ways)) {
            minutes += steps.get(index).step().minutes();
        }
        return minutes;
    }

    /** A pot that is brought in has been through every step that it waits for. */
    private static TreeSet<Integer> needed(List<Stepped> steps, List<Way> ways) {
        TreeSet<Integer> needed = new TreeSet<>();
        for (int i = 0; i < ways.size(); i++) {
            if (ways.get(i) != Way.WHOLE) {
                add(i, steps, needed);
            }
        }
        return needed;
    }

    private static void add(int index, List<Stepped> steps, TreeSet<Integer> needed) {
        if (needed.add(index)) {
            steps.get(index).after().forEach(before -> add(before, steps, needed));
        }
    }

    /** Where a step follows on stage that was not made ready there: a begun pot, or one of which steps in between were done ahead. */
    static List<String> swaps(List<Stepped> steps, List<Way> ways) {
        List<String> swaps = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            boolean gap = ways.get(i) == Way.AHEAD && steps.get(i).after().stream()
                    .anyMatch(before -> ways.get(before) == Way.WHOLE && !steps.get(before).prepares());
            if (ways.get(i) == Way.BEGUN || gap) {
                swaps.add(steps.get(i).key());
            }
        }
        return swaps;
    }
}
