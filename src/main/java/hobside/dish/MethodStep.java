package hobside.dish;

/** One step of a dish's method: its stage, what is done, and about how many minutes it takes. */
public record MethodStep(Stage stage, String words, int minutes) {}
