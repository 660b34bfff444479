package hobside.screen;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the terminal around the program can do.
 *
 * @param showing with all signs, in ASCII, or told line by line
 * @param colour whether colours are wanted
 * @param typed the character set of what is typed, which may hold letters that cannot be shown
 * @param refusal why no screen can be drawn here, in a sentence for the user; empty when it can
 */
public record Surroundings(Showing showing, boolean colour, Charset typed, Optional<String> refusal) {
    /** Asks for plain ASCII. */
    public static final String ASCII = "--ascii";
    /** Asks for lines to be read aloud or on a Braille line; so does the environment variable ACCESSIBLE. */
    public static final String ACCESSIBLE = "--accessible";
    /** Asks for no colours. */
    public static final String NO_COLOUR = "--no-colour";

    private static final List<String> BLIND = List.of("", "dumb", "unknown");
    private static final List<String> COLOURLESS = List.of("vt52", "vt100", "vt102", "vt200", "vt220", "vt320", "vt420");

    /**
     * The facts to decide from.
     *
     * @param environment the environment variables
     * @param nativeEncoding the character set that Java found, or an empty text
     * @param system the name of the operating system
     * @param terminal whether both input and output are a terminal
     */
    public record Facts(Map<String, String> environment, String nativeEncoding, String system, boolean terminal) {
        String variable(String name) {
            return environment.getOrDefault(name, "");
        }
    }

    /** Decides from the facts and from the user's own wishes, which win. */
    public static Surroundings of(Facts facts, List<String> options) {
        return new Surroundings(
                isTold(facts, options) ? Showing.TOLD : !options.contains(ASCII) && showsUnicode(facts) ? Showing.SIGNS : Showing.ASCII,
                !options.contains(NO_COLOUR) && showsColour(facts),
                typed(facts),
                refusal(facts, isTold(facts, options)));
    }

    private static boolean isTold(Facts facts, List<String> options) {
        return options.contains(ACCESSIBLE) || !facts.variable("ACCESSIBLE").isEmpty();
    }

    /** Whether signs beyond ASCII arrive as they are meant. */
    public boolean unicode() {
        return showing == Showing.SIGNS;
    }

    private static boolean showsUnicode(Facts facts) {
        return !isAscii(locale(facts)) && isUtf8(encoding(facts));
    }

    /** Where only ASCII is spoken of, terminals send UTF-8 all the same; so they do where the name says nothing to Java. */
    private static Charset typed(Facts facts) {
        String encoding = encoding(facts);
        if (isAscii(locale(facts)) || isUtf8(encoding) || encoding.isEmpty()) {
            return StandardCharsets.UTF_8;
        }
        try {
            Charset named = Charset.forName(official(encoding));
            return named.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : named;
        } catch (IllegalArgumentException e) {
            return StandardCharsets.UTF_8;
        }
    }

    /** Locales also write ISO-8859-1 as iso88591. */
    private static String official(String encoding) {
        String bare = encoding.toLowerCase(Locale.ROOT).replace("-", "").replace("_", "");
        return bare.startsWith("iso8859") ? "ISO-8859-" + bare.substring("iso8859".length()) : encoding;
    }

    private static boolean isAscii(String locale) {
        return locale.equals("C") || locale.equals("POSIX");
    }

    /** What stands between the dot and the at sign of the locale, else what Java found. */
    private static String encoding(Facts facts) {
        String locale = locale(facts);
        int dot = locale.indexOf('.');
        int at = locale.indexOf('@');
        return dot < 0 ? facts.nativeEncoding() : locale.substring(dot + 1, at > dot ? at : locale.length());
    }

    /** The first of three variables that says anything, as the C library reads them. */
    private static String locale(Facts facts) {
        for (String name : List.of("LC_ALL", "LC_CTYPE", "LANG")) {
            if (!facts.variable(name).isEmpty()) {
                return facts.variable(name);
            }
        }
        return "";
    }

    private static boolean isUtf8(String encoding) {
        return encoding.toLowerCase(Locale.ROOT).replace("-", "").startsWith("utf8");
    }

    private static boolean showsColour(Facts facts) {
        String terminal = facts.variable("TERM");
        boolean mono = COLOURLESS.contains(terminal) || terminal.endsWith("-m") || terminal.endsWith("-mono");
        return facts.variable("NO_COLOR").isEmpty() && !mono;
    }

    private static Optional<String> refusal(Facts facts, boolean told) {
        if (facts.system().startsWith("Windows")) {
            return Optional.of("Hobside draws its screens on a Unix terminal. On Windows, please start it inside WSL.");
        }
        if (!facts.terminal()) {
            return Optional.of("Hobside's screens need a terminal, but its input or output goes to a file or another program."
                    + " Please start it in a terminal window.");
        }
        if (!told && BLIND.contains(facts.variable("TERM"))) {
            return Optional.of("Hobside cannot draw on this terminal (TERM is \"" + facts.variable("TERM") + "\")."
                    + " Please start it in an ordinary terminal window, or set TERM to what yours is, such as vt100.");
        }
        return Optional.empty();
    }
}
