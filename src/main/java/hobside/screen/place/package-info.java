/** Where work is kept when the kitchen may only be read: one question before the Bench. */
package hobside.screen.place;
