package hobside.screen;

import java.util.Optional;

/** Carries out the work that screens ask for, one piece after another, and brings back the answer if there is one. */
@FunctionalInterface
public interface EffectRunner {
    Optional<Message> carryOut(Effect effect);
}
