/** The method of the dish, step by step: what is done, at which stage, and how long it takes. */
package hobside.screen.steps;
