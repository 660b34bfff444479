package hobside.practice;

/**
 * What is learned together and comes back together: a kind of exercise about one topic.
 *
 * @param topic the word of a kind of change, such as {@code trim}; "order" where several are compared; {@code question:KEY} or
 *     {@code myth:KEY}
 */
public record Card(Kind kind, String topic) {

    public static final String ORDER = "order";
    public static final String QUESTION = "question:";
    public static final String MYTH = "myth:";

    public Card {
        if (topic.isEmpty() || topic.indexOf('/') >= 0) {
            throw new IllegalArgumentException("no topic: " + topic);
        }
    }

    /** "guess/trim". */
    public String key() {
        return kind.word() + "/" + topic;
    }
}
