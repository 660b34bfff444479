/** The Live screen: the cue in large letters, the running board, the clock; and what both this and the rehearsal show. */
package hobside.screen.live;
