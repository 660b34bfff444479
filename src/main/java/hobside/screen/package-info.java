/**
 * What stands on the screen and how it changes: frames of cells, keys, messages, and the one loop.
 *
 * <p>Here live pure values and the loop. The bytes of a real terminal, and the library that decodes its keys, live in
 * {@code hobside.screen.terminal} and nowhere else. Screens know neither.
 */
package hobside.screen;
