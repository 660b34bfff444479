/** The Shelf: looking up a food, seeing it in full, and going from there to its packet and its price. */
package hobside.screen.shelf;
