/** The Talk: the cues of the script one below the other, their words and details edited by hand. */
package hobside.screen.talk;
