package hobside.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a file: {@link Loaded} with its value, {@link Rejected} with all its faults at once, or, where a reader says so,
 * {@link Salvaged} with what can be trusted of a damaged one.
 */
public sealed interface Read<T> permits Loaded, Rejected, Salvaged {

    /** What was read; empty when the file was rejected. */
    Optional<T> value();

    /** The faults of the file in the order of its lines; empty when it was loaded. */
    List<InputProblem> problems();

    <R> Read<R> map(Function<T, R> change);

    /** Loaded when no problem was found and there is a value. */
    static <T> Read<T> of(Optional<T> value, Problems problems) {
        if (problems.isEmpty()) {
            if (value.isEmpty()) {
                throw new IllegalStateException("neither a value nor a problem");
            }
            return new Loaded<>(value.get());
        }
        return new Rejected<>(problems.all());
    }
}
