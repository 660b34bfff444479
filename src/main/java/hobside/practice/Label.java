package hobside.practice;

import hobside.measure.Worded;
import java.util.Optional;

/**
 * What an exercise is known by. The same label gives the same exercise on the same dish, prices and language.
 *
 * @param level 1 to 5
 */
public record Label(Card card, int level, Origin origin) {

    public static final int HARDEST = 5;

    /** The name of the dish it is drawn from, and the seed it is drawn by. */
    public record Origin(String dish, long seed) {}

    public Label {
        if (level < 1 || level > HARDEST) {
            throw new IllegalArgumentException("no level: " + level);
        }
    }

    public Kind kind() {
        return card.kind();
    }

    public String topic() {
        return card.topic();
    }

    /** "guess/trim/2/ropewalk-rib-pot/1234". */
    public String key() {
        return card.key() + "/" + level + "/" + origin.dish() + "/" + origin.seed();
    }

    /** Reads back what {@link #key} wrote. */
    public static Optional<Label> parse(String key) {
        String[] parts = key.split("/", -1);
        Optional<Kind> kind = Worded.parse(Kind.values(), parts[0]);
        boolean sound = parts.length == 5 && kind.isPresent() && !parts[1].isEmpty() && parts[2].length() == 1 && "12345".contains(parts[2])
                && isLong(parts[4]);
        return sound ? Optional.of(new Label(new Card(kind.get(), parts[1]), parts[2].charAt(0) - '0', new Origin(parts[3], Long.parseLong(parts[4]))))
                : Optional.empty();
    }

    private static boolean isLong(String digits) {
        try {
            return Long.toString(Long.parseLong(digits)).equals(digits);
        } catch (NumberFormatException none) {
            return false;
        }
    }
}
