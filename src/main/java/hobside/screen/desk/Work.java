package hobside.screen.desk;

import hobside.dish.Demo;
import hobside.screen.Effect;

/** The work that screens ask of the disk. Each is answered by a message of {@link Answer}. */
public sealed interface Work extends Effect {

    /** Put the working copy away after a change; quick, and done after every change. */
    record Keep(Demo demo, String name) implements Work {}

    /** Save the demo and write its printed forms. */
    record Save(Demo demo, String name) implements Work {}

    /** List what can be opened. */
    record Look() implements Work {}

    /** Open one of what was listed. */
    record Open(Answer.Choice choice) implements Work {}
}
