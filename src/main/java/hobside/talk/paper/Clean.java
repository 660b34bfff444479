package hobside.talk.paper;

import java.util.List;

/**
 * Words as they may stand on a sheet: on one line, without control characters, signs that turn the direction of writing, and halves
 * of characters, whoever typed them.
 */
final class Clean {

    /** Joins letters in some scripts and pictures; the only invisible signs that are kept. */
    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;

    private static final int ZERO_WIDTH_JOINER = 0x200D;

    private Clean() {}

    static String text(String typed) {
        StringBuilder clean = new StringBuilder(typed.length());
        typed.codePoints().forEach(each -> {
            if (isGap(each)) {
                clean.append(' ');
            } else if (isSeen(each)) {
                clean.appendCodePoint(each);
            }
        });
        return clean.toString();
    }

    static List<String> all(List<String> typed) {
        return typed.stream().map(Clean::text).toList();
    }

    private static boolean isGap(int sign) {
        int type = Character.getType(sign);
        return sign == '\n' || sign == '\t' || sign == '\r' || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
    }

    private static boolean isSeen(int sign) {
        return switch (Character.getType(sign)) {
            case Character.CONTROL, Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE -> false;
            case Character.FORMAT -> sign == ZERO_WIDTH_NON_JOINER || sign == ZERO_WIDTH_JOINER;
            default -> true;
        };
    }
}
