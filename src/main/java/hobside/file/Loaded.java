package hobside.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A file that was read without a fault. */
public record Loaded<T>(T content) implements Read<T> {

    @Override
    public Optional<T> value() {
        return Optional.of(content);
    }

    @Override
    public List<InputProblem> problems() {
        return List.of();
    }

    @Override
    public <R> Read<R> map(Function<T, R> change) {
        return new Loaded<>(change.apply(content));
    }
}
