package hobside.screen;

import java.util.Optional;

/** Asks that what is half typed be noted as it stands now, or wiped off when nothing is any more. It is answered only when it cannot be. */
public record Jot(Optional<Typed> typed) implements Effect {}
