package hobside.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The boxes of a card index (S. Leitner, So lernt man lernen, 1972): what was known moves one box on, what was missed goes back into
 * the first. A box further on is gone through less often. Leitner goes through a box when it is full; the days between are common
 * practice, no source, and so is that a miss comes back after three other exercises.
 */
public final class Boxes {

    public static final int COUNT = 5;

    private static final long DAY = 24L * 60 * 60 * 1000;

    /** Days until a card of each box is asked again. */
    private static final int[] DAYS = {0, 1, 3, 7, 14};

    /** So many other exercises lie between a miss and the next try. */
    private static final int BETWEEN = 3;

    /** After such a pause, in milliseconds, a new session has begun: two hours. */
    private static final long PAUSE = DAY / 12;

    private final Map<Card, Place> places;
    private final int count;
    private final long last;

    /** Where a card is: its box from 1, when and as which attempt it was last asked, and whether it was known then. */
    public record Place(int box, long at, int number, boolean known) {}

    private Boxes(Map<Card, Place> places, int count, long last) {
        this.places = places;
        this.count = count;
        this.last = last;
    }

    /** The boxes of one trainee after these attempts, in the order of their time. */
    public static Boxes of(List<Attempt> attempts) {
        Map<Card, Place> places = new LinkedHashMap<>();
        int number = 0;
        long last = Long.MIN_VALUE;
        for (Attempt attempt : attempts) {
            if (attempt.label().kind() != Kind.WATCHED) {
                number++;
                last = attempt.at();
                Place before = places.get(attempt.label().card());
                int box = attempt.isKnown() ? Math.min(COUNT, before == null ? 2 : before.box() + 1) : 1;
                places.put(attempt.label().card(), new Place(box, attempt.at(), number, attempt.isKnown()));
            }
        }
        return new Boxes(places, number, last);
    }

    /** The box of a card from 1 to {@value #COUNT}; 0 when it was never asked. */
    public int box(Card card) {
        Place place = places.get(card);
        return place == null ? 0 : place.box();
    }

    public Map<Card, Place> places() {
        return Map.copyOf(places);
    }

    /** What was missed in this session, long enough ago; the earliest first. */
    List<Card> missed(List<Card> among, long now) {
        List<Card> all = new ArrayList<>();
        for (Card card : among) {
            Place place = places.get(card);
            if (place != null && !place.known() && isThisSession(place, now) && count - place.number() >= BETWEEN) {
                all.add(card);
            }
        }
        all.sort((one, other) -> Integer.compare(places.get(one).number(), places.get(other).number()));
        return all;
    }

    private boolean isThisSession(Place place, long now) {
        return now - last < PAUSE && last - place.at() < DAY / 2;
    }

    /** What is to be asked again by now; what has waited longest beyond its time comes first. */
    List<Card> due(List<Card> among, long now) {
        List<Card> all = new ArrayList<>();
        for (Card card : among) {
            Place place = places.get(card);
            boolean waiting = place != null && (place.known() || !isThisSession(place, now));
            if (waiting && now >= dueAt(place)) {
                all.add(card);
            }
        }
        all.sort((one, other) -> Long.compare(dueAt(places.get(one)), dueAt(places.get(other))));
        return all;
    }

    /** When a card is due, in milliseconds since 1970. */
    private static long dueAt(Place place) {
        return place.at() + DAYS[place.box() - 1] * DAY;
    }

    /** What was asked already: the lowest box first, in it what was asked longest ago. */
    List<Card> weakest(List<Card> among) {
        List<Card> all = new ArrayList<>(among.stream().filter(places::containsKey).toList());
        all.sort((one, other) -> {
            int boxes = Integer.compare(places.get(one).box(), places.get(other).box());
            return boxes != 0 ? boxes : Integer.compare(places.get(one).number(), places.get(other).number());
        });
        return all;
    }
}
