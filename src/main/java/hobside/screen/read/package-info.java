/** Reading: the narrated script as it stands, and the help page of a screen. */
package hobside.screen.read;
