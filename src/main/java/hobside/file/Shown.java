package hobside.file;

/** Makes a stranger's text fit to be shown: short, on one line, and without anything a terminal would obey. */
public final class Shown {

    public static final int MOST = 60;

    private Shown() {}

    /** The text with control characters written out and cut at 60 characters: a newline becomes {@code \n}, escape {@code \}{@code u001b}. */
    public static String of(String text) {
        StringBuilder plain = new StringBuilder(Math.min(text.length(), MOST) + 8);
        for (int i = 0; i < text.length(); i++) {
            String next = visible(text.charAt(i), isPaired(text, i));
            if (plain.length() + next.length() > MOST) {
                return plain.append("...").toString();
            }
            plain.append(next);
        }
        return plain.toString();
    }

    public static String quoted(String text) {
        return '"' + of(text) + '"';
    }

    /** True for characters that a terminal could obey, that turn the direction of writing, or that are only half of one. */
    public static boolean isHarmful(String text, int at) {
        char each = text.charAt(at);
        if (each < 0x20) {
            return true;
        }
        if (each < 0x7f) {
            return false;
        }
        boolean turns = each >= 0x202a && each <= 0x202e || each >= 0x2066 && each <= 0x2069;
        boolean separates = each == 0x2028 || each == 0x2029 || each == 0xfeff;
        return each <= 0x9f || turns || separates || Character.isSurrogate(each) && !isPaired(text, at);
    }

    private static boolean isPaired(String text, int at) {
        char each = text.charAt(at);
        if (Character.isHighSurrogate(each)) {
            return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
        }
        return Character.isLowSurrogate(each) && at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
    }

    private static String visible(char each, boolean paired) {
        if (each == '\n') {
            return "\\n";
        }
        if (each == '\t') {
            return "\\t";
        }
        boolean plain = paired || !isHarmful(String.valueOf(each), 0);
        return plain ? String.valueOf(each) : escaped(each);
    }

    /** A character as JSON escapes it: {@code \}{@code u001b}. */
    static String escaped(char each) {
        String digits = Integer.toHexString(each);
        return "\\u" + "0000".substring(digits.length()) + digits;
    }
}
