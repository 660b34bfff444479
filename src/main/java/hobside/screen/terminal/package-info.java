/**
 * The bytes of a terminal: modes, keys, colours and sizes. The only package that knows Lanterna, the library that
 * decodes keys and switches modes. Frames are painted by our own writer, which sends only what changed.
 */
package hobside.screen.terminal;
