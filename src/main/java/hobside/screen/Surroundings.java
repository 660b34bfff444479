package hobside.screen;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the terminal around the program can do.
 *
 * @param showing with all signs, in ASCII, or told line by line
 * @param colour whether colours are wanted
 * @param refusal why no screen can be drawn here, in a sentence for the user; empty when it can
 */
public record Surroundings(Showing showing, boolean colour, Optional<String> refusal) {
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
        String locale = locale(facts);
        if (locale.equals("C") || locale.equals("POSIX")) {
            return false;
        }
        int dot = locale.indexOf('.');
        return isUtf8(dot < 0 ? facts.nativeEncoding() : locale.substring(dot + 1));
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
