package hobside.practice;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How far one trainee has come, found from the log alone, and what to do next. */
public final class Progress {

    /** After so many known in a row on a level the next one is a level harder; after so many missed in a row a level easier (our own choice). */
    private static final int UP = 3;
    private static final int DOWN = 2;

    /** So many known in a row are worth a word. */
    private static final int WORTH_A_WORD = 2;

    private final Map<Kind, Tally> kinds;
    private final Map<String, Tally> topics;
    private final Boxes boxes;
    private final int attempts;
    private final int row;

    /**
     * The answers to one kind of exercise or about one topic.
     *
     * @param level the level that comes next, from 1 to 5
     * @param row known ones in a row at the end, on the level; negative when they were missed
     */
    public record Tally(int count, double score, int level, int row) {

        private static final Tally NONE = new Tally(0, 0, 1, 0);

        /** The mean score of all answers, 0 to 1. */
        public double share() {
            return count == 0 ? 0 : score / count;
        }

        private Tally and(Attempt attempt) {
            boolean known = attempt.isKnown();
            int longer = known ? Math.max(0, row) + 1 : Math.min(0, row) - 1;
            int next = Math.max(1, Math.min(Label.HARDEST, longer == UP ? level + 1 : longer == -DOWN ? level - 1 : level));
            boolean turned = longer == UP || longer == -DOWN;
            return new Tally(count + 1, score + attempt.result().score(), next, turned ? 0 : longer);
        }
    }

    /**
     * What to do next.
     *
     * @param reason the key of the sentence that says why
     */
    public record Next(Card card, int level, long seed, String reason) {}

    private Progress(Map<Kind, Tally> kinds, Map<String, Tally> topics, Boxes boxes, int[] counted) {
        this.kinds = kinds;
        this.topics = topics;
        this.boxes = boxes;
        this.attempts = counted[0];
        this.row = counted[1];
    }

    /** Of the attempts of one trainee in the order of their time. */
    public static Progress of(List<Attempt> attempts) {
        Map<Kind, Tally> kinds = new EnumMap<>(Kind.class);
        Map<String, Tally> topics = new LinkedHashMap<>();
        int row = 0;
        for (Attempt attempt : attempts) {
            kinds.put(attempt.label().kind(), kinds.getOrDefault(attempt.label().kind(), Tally.NONE).and(attempt));
            topics.put(attempt.label().topic(), topics.getOrDefault(attempt.label().topic(), Tally.NONE).and(attempt));
            row = attempt.isKnown() ? row + 1 : 0;
        }
        return new Progress(kinds, topics, Boxes.of(attempts), new int[] {attempts.size(), row});
    }

    public int attempts() {
        return attempts;
    }

    public Tally of(Kind kind) {
        return kinds.getOrDefault(kind, Tally.NONE);
    }

    /** The topics that were met, in the order in which they came up. */
    public Map<String, Tally> topics() {
        return Map.copyOf(topics);
    }

    public Boxes boxes() {
        return boxes;
    }

    /** How many were known in a row at the end, where that is worth a word; a row that is broken is not told. */
    public Optional<Integer> inARow() {
        return row >= WORTH_A_WORD ? Optional.of(row) : Optional.empty();
    }

    /**
     * The next best exercise among these cards: first what was missed a little while ago, then what is due, then something new of the
     * kind that was met least, last what has had least luck.
     *
     * @param now milliseconds since 1970
     */
    public Optional<Next> next(List<Card> cards, long now) {
        return first(boxes.missed(cards, now), "missed")
                .or(() -> first(boxes.due(cards, now), "due"))
                .or(() -> fresh(cards).map(card -> next(card, "new")))
                .or(() -> first(boxes.weakest(cards), boxes.weakest(cards).stream().anyMatch(card -> boxes.box(card) == 1) ? "weak" : "again"));
    }

    private Optional<Next> first(List<Card> cards, String reason) {
        return cards.stream().findFirst().map(card -> next(card, reason));
    }

    /** By the number of answers so far, so that no exercise is drawn twice in a row. */
    private Next next(Card card, String reason) {
        return new Next(card, of(card.kind()).level(), attempts + 1L, reason);
    }

    private Optional<Card> fresh(List<Card> cards) {
        Card least = null;
        for (Card card : cards) {
            boolean fewer = least == null || of(card.kind()).count() < of(least.kind()).count();
            if (boxes.box(card) == 0 && fewer) {
                least = card;
            }
        }
        return Optional.ofNullable(least);
    }
}
