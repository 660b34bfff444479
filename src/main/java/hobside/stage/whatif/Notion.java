package hobside.stage.whatif;

import hobside.dish.Change;
import hobside.talk.Demo;
import java.util.Optional;

/**
 * One "what if": the demo as it would be, and what it is called.
 *
 * @param demo with the plan as it would be; nothing else of the demo is touched
 * @param title in a few words, for the screen
 * @param did the same as it is said aloud after "if we", in the language of the talk
 * @param change what stands in the plan for it; empty when something was only switched off or put back
 */
public record Notion(Demo demo, String title, String did, Optional<Change> change) {}
