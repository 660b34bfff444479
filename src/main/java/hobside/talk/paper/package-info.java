/** Everything on paper: one model of a sheet, what stands on the script, the handout and the bench sheet, and one renderer a format. */
package hobside.talk.paper;
