package hobside.food;

/** What the kitchen knows about cooking: how much fat flesh keeps, and the typical shares of trimming, pouring and frying. */
public record Cookery(FatKept fatKept, Factors factors) {}
