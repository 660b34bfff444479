package hobside.screen;

/** How frames are shown. A view may ask and say in words what it would draw. */
public enum Showing {
    /** With all signs. */
    SIGNS,
    /** In ASCII alone: what is made of blocks may then be made of letters instead. */
    ASCII,
    /** Read aloud or on a Braille line: words and numbers, nothing drawn. */
    TOLD
}
