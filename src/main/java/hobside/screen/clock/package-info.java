/** The running order over the Bench: lanes of hands, hobs and oven over time, what is done ahead, and what stands in the way. */
package hobside.screen.clock;
