/** The running total in digits made of blocks, for an audience. */
package hobside.screen.board;
