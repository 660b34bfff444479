/** Text in letters so large that a presenter reads it from two metres away. */
package hobside.screen.letters;
