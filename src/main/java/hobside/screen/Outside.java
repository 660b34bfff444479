package hobside.screen;

import java.time.InstantSource;

/**
 * The world outside the screens.
 *
 * @param effects carries out the work that screens ask for
 * @param clock the time of day
 * @param onForcedExit runs once when the program is made to stop before the user leaves: the terminal closed or the system
 *     asked it to end. It may run on another thread than the effects, but hardly ever beside one.
 */
public record Outside(EffectRunner effects, InstantSource clock, Runnable onForcedExit) {}
