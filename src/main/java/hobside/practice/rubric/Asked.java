package hobside.practice.rubric;

/**
 * A question from the audience.
 *
 * @param key its key in the questions or the myths, such as {@code cheese}; anything else for a question of one's own
 * @param question as it was asked
 * @param prepared the answer that the talk has ready; empty where there is none
 */
public record Asked(String key, String question, String prepared) {}
