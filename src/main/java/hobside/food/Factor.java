package hobside.food;

import hobside.measure.Range;

/** A typical figure of the kitchen with its spread and where it comes from; a weighed figure always beats it. */
public record Factor(Range range, String source) {}
