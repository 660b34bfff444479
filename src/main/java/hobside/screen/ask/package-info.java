/** Asking the user for something while the work stays in sight: a line of text, one of a list, or a food of the shelf. */
package hobside.screen.ask;
