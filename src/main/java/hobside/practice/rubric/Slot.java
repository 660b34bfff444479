package hobside.practice.rubric;

import java.util.List;

/** One place of a phrase: any of these words, or words in a row, by their numbers in the lexicon. */
record Slot(int number, List<int[]> rows, boolean isNo) {}
