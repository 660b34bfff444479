package hobside.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the best plan by putting the groups together one after the other and keeping, after each, only part plans that none
 * outdoes. This is exact, because within a frame everything adds up: what is outdone stays so, whatever is put to it.
 */
final class Search {

    /** When there is no more room, so many part plans go on at most, and so many at least. */
    private static final int WIDE = 1_000;

    private static final int NARROW = 10;

    private final Board board;
    private final long most;
    private long looked;
    private long leftOut = Long.MAX_VALUE;
    private State best;

    Search(Board board, long most) {
        this.board = board;
        this.most = most;
    }

    /** All that is left in a frame when every group has been put in. */
    List<State> all(Frame frame, Quest wide, boolean onlyBest) {
        List<List<Option>> groups = board.groups(frame);
        Quest quest = wide.without(slack(frame, wide, groups));
        List<List<State>> parts = parts(quest, groups);
        Ahead[] ahead = Ahead.of(parts, quest.width());
        List<State> states = List.of(quest.state(frame.start(), new Option(frame.start(), frame.settled())));
        states = possible(states, quest, ahead[0], onlyBest);
        for (int i = 0; i < parts.size() && !states.isEmpty(); i++) {
            states = Front.of(joined(roomFor(states, parts.get(i), ahead[i]), parts.get(i), new Sieve(quest, ahead[i + 1], onlyBest)));
        }
        return states;
    }

    void best(Frame frame, Quest quest) {
        for (State state : all(frame, quest, true)) {
            if (best == null || State.compare(state.key(), best.key()) < 0) {
                best = state;
            }
        }
    }

    State best() {
        return best;
    }

    long looked() {
        return looked;
    }

    /** The least first key that something left out could have come to; the largest number when nothing was left out. */
    long leftOut() {
        return leftOut;
    }

    /** Limits that no plan in this frame can break. */
    private static List<Row> slack(Frame frame, Quest quest, List<List<Option>> groups) {
        List<Row> slack = new ArrayList<>();
        for (Row row : quest.rows()) {
            double worst = Tally.weigh(row.weights(), frame.start());
            for (List<Option> group : groups) {
                worst += group.stream().mapToDouble(option -> Tally.weigh(row.weights(), option.adds())).max().orElse(0);
            }
            if (worst <= row.most()) {
                slack.add(row);
            }
        }
        return slack;
    }

    private static List<List<State>> parts(Quest quest, List<List<Option>> groups) {
        List<List<State>> parts = new ArrayList<>();
        for (List<Option> group : groups) {
            parts.add(Front.of(group.stream().map(option -> quest.state(option.adds(), option)).toList()));
        }
        parts.sort(Comparator.comparingInt(List::size));
        return parts;
    }

    /** What can still come: the least of the first key and of each limited sum. */
    private record Ahead(long key, long[] holds) {

        static Ahead[] of(List<List<State>> parts, int width) {
            Ahead[] ahead = new Ahead[parts.size() + 1];
            ahead[parts.size()] = new Ahead(0, new long[width]);
            for (int i = parts.size() - 1; i >= 0; i--) {
                ahead[i] = ahead[i + 1].plus(parts.get(i));
            }
            return ahead;
        }

        private Ahead plus(List<State> part) {
            long[] sums = holds.clone();
            for (int i = 0; i < sums.length; i++) {
                int at = i;
                sums[i] += part.stream().mapToLong(state -> state.holds()[at]).min().orElse(0);
            }
            return new Ahead(key + part.stream().mapToLong(state -> state.key()[0]).min().orElse(0), sums);
        }
    }

    /** What has no chance any more falls through. */
    private record Sieve(Quest quest, Ahead ahead, boolean onlyBest) {}

    private boolean isPossible(State state, Sieve sieve) {
        for (int i = 0; i < sieve.ahead().holds().length; i++) {
            if (state.holds()[i] + sieve.ahead().holds()[i] > sieve.quest().most(i)) {
                return false;
            }
        }
        return !sieve.onlyBest() || best == null || state.key()[0] + sieve.ahead().key() <= best.key()[0];
    }

    private List<State> possible(List<State> states, Quest quest, Ahead ahead, boolean onlyBest) {
        Sieve sieve = new Sieve(quest, ahead, onlyBest);
        return states.stream().filter(state -> isPossible(state, sieve)).toList();
    }

    private List<State> joined(List<State> states, List<State> part, Sieve sieve) {
        List<State> joined = new ArrayList<>();
        for (State state : states) {
            for (State more : part) {
                State both = state.plus(more);
                looked++;
                if (isPossible(both, sieve)) {
                    joined.add(both);
                }
            }
        }
        return joined;
    }

    /** All of them while there is room for what they would become, else the first ones; what that leaves out is noted. */
    private List<State> roomFor(List<State> states, List<State> part, Ahead ahead) {
        int narrow = (int) Math.max(NARROW, Math.min(WIDE, most));
        if (looked + (long) states.size() * part.size() <= most || states.size() <= narrow) {
            return states;
        }
        for (State state : states.subList(narrow, states.size())) {
            leftOut = Math.min(leftOut, state.key()[0] + ahead.key());
        }
        return states.subList(0, narrow);
    }
}
