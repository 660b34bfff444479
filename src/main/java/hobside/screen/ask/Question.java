package hobside.screen.ask;

import hobside.screen.Next;
import java.util.List;
import java.util.Optional;

/**
 * A question that is answered by a line of text.
 *
 * @param title what it is about
 * @param label what stands in front of the field
 * @param hints sentences that help to answer
 * @param first what stands in the field to begin with
 */
public record Question(String title, String label, List<String> hints, String first, Then then) {

    /** What to do with the text: go on, or say what is wrong with it. */
    public interface Then {
        Reply with(String text);
    }

    /** Where it leads, or what is wrong and what would be right. */
    public record Reply(Optional<Next> next, String problem) {

        public static Reply go(Next next) {
            return new Reply(Optional.of(next), "");
        }

        public static Reply wrong(String problem) {
            return new Reply(Optional.empty(), problem);
        }
    }

    public Question {
        hints = List.copyOf(hints);
    }
}
