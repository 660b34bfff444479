package hobside.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A file that was not taken over, with every fault that was found in it. */
public record Rejected<T>(List<InputProblem> problems) implements Read<T> {

    public Rejected {
        problems = List.copyOf(problems);
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("a file is not rejected without a reason");
        }
    }

    @Override
    public Optional<T> value() {
        return Optional.empty();
    }

    @Override
    public <R> Read<R> map(Function<T, R> change) {
        return new Rejected<>(problems);
    }
}
