package hobside.guide;

import hobside.file.Library;

/** The guides as they are shipped, read from foods/guides by the program's own reader. */
final class Shipped {

    static final GuideBook BOOK = Library.bundledGuides();

    private Shipped() {}
}
