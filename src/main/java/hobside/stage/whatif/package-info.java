/** Answers on the spot: what a plan would come to with something else, what can stand in for what is missing, and what was prepared for a question. */
package hobside.stage.whatif;
