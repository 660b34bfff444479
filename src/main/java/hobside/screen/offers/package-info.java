/** The changes offered for an ingredient or the pot, each with its effect, and one change of the plan in full. */
package hobside.screen.offers;
