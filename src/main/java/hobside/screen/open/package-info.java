/** Choosing what to work on: a saved demo of the kitchen folder, or a dish. */
package hobside.screen.open;
