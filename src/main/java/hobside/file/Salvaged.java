package hobside.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A damaged file of which a part could be trusted: that part, and what is missing. What was read is as it was written; nothing in it
 * was guessed. Whoever shows it says what is missing.
 *
 * @param missing what was left out and why, a sentence each, the places first
 */
public record Salvaged<T>(T content, List<String> missing, List<InputProblem> problems) implements Read<T> {

    public Salvaged {
        missing = List.copyOf(missing);
        problems = List.copyOf(problems);
        if (missing.isEmpty()) {
            throw new IllegalArgumentException("a file of which nothing is missing is loaded");
        }
    }

    @Override
    public Optional<T> value() {
        return Optional.of(content);
    }

    @Override
    public <R> Read<R> map(Function<T, R> change) {
        return new Salvaged<>(change.apply(content), missing, problems);
    }
}
