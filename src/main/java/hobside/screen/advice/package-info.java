/** Advice: the next best change, the best plan for a goal, the frontier, the credit, and what does not help. */
package hobside.screen.advice;
