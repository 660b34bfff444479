package hobside.practice;

import java.util.List;

/**
 * One exercise: what it is known by, the words in which it is put, what is to be done, and the sentences with which the truth is
 * told afterwards, whatever was answered.
 */
public record Exercise(Label label, Prompt prompt, Task task, List<String> truth) {

    /** Where the cook stands in the dish, and what is asked. */
    public record Prompt(String scene, String asked) {}

    public Exercise {
        truth = List.copyOf(truth);
    }
}
