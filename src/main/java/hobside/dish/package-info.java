/**
 * Dishes and the changes made to them: the pot is worked out here, stage by stage, and every change is one sealed case.
 * Pure values; money, guides and words live further along.
 */
package hobside.dish;
