package hobside.screen.terminal;

import hobside.screen.Style;

/**
 * How each {@link Style} looks. Backgrounds are never set, and of the eight old colours only those that can be read on
 * dark and on light are used. All of it can be told apart without colour, or need not be.
 */
enum Palette {
    COLOUR {
        @Override
        String attributes(Style style) {
            return switch (style) {
                case GOOD -> BOLD + GREEN;
                case WARN -> BOLD + RED;
                case KEY -> BOLD + MAGENTA;
                case PLAIN, QUIET, STRONG, TITLE, HEADING, CURSOR, FIELD, BOARD -> MONOCHROME.attributes(style);
            };
        }
    },
    MONOCHROME {
        @Override
        String attributes(Style style) {
            return switch (style) {
                case PLAIN, QUIET -> "";
                case STRONG, TITLE, KEY, GOOD, BOARD -> BOLD;
                case HEADING, FIELD -> UNDERLINED;
                case WARN -> BOLD + UNDERLINED;
                case CURSOR -> REVERSED;
            };
        }
    };

    private static final String BOLD = ";1";
    private static final String UNDERLINED = ";4";
    private static final String REVERSED = ";7";
    private static final String RED = ";31";
    private static final String GREEN = ";32";
    private static final String MAGENTA = ";35";

    /** The ECMA-48 numbers for a style, each after a semicolon. */
    abstract String attributes(Style style);

    /** The control sequence that ends any style before and starts this one. */
    String begin(Style style) {
        return "\033[0" + attributes(style) + "m";
    }
}
