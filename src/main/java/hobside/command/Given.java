package hobside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What was given on the command line: options, and words in their order.
 *
 * @param valued what --kitchen and --as name
 * @param problem what is wrong with it, for the user; empty when nothing is
 */
public record Given(List<String> options, List<String> words, Valued valued, Optional<String> problem) {

    /** Options with a word after them: the folder of --kitchen, the kind of --as. */
    public record Valued(Optional<String> kitchen, Optional<String> as) {}

    public static final String JSON = "--json";
    public static final String MARKDOWN = "--markdown";
    public static final String HELP = "--help";
    public static final String VERSION = "--version";
    public static final String WARM_UP = "--warm-up";
    public static final String KITCHEN = "--kitchen";
    public static final String AS = "--as";
    public static final String YES = "--yes";

    private static final Set<String> KNOWN = Set.of(JSON, MARKDOWN, HELP, VERSION, WARM_UP, YES, "--ascii", "--no-colour");

    public Given {
        options = List.copyOf(options);
        words = List.copyOf(words);
    }

    public static Given parse(List<String> arguments) {
        List<String> options = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Optional<String> kitchen = Optional.empty();
        Optional<String> as = Optional.empty();
        Optional<String> problem = Optional.empty();
        for (int i = 0; i < arguments.size(); i++) {
            String each = arguments.get(i);
            if (each.equals(KITCHEN) && i + 1 < arguments.size()) {
                kitchen = Optional.of(arguments.get(++i));
            } else if (each.equals(AS) && i + 1 < arguments.size()) {
                as = Optional.of(arguments.get(++i));
            } else if (!each.startsWith("--")) {
                words.add(each);
            } else if (KNOWN.contains(each)) {
                options.add(each);
            } else {
                problem = Optional.of(complaint(each));
            }
        }
        return new Given(options, words, new Valued(kitchen, as), problem);
    }

    private static String complaint(String option) {
        if (option.equals(AS)) {
            return "--as needs a word after it: foods, prices, recipe or tables.";
        }
        return option.equals(KITCHEN) ? "--kitchen needs the name of a folder after it." : "There is no option " + printable(option) + ". hobside --help lists them.";
    }

    static String printable(String text) {
        StringBuilder safe = new StringBuilder();
        text.chars().limit(100).forEach(each -> safe.append(Character.isISOControl(each) ? '?' : (char) each));
        return safe.toString();
    }

    public Optional<String> kitchen() {
        return valued.kitchen();
    }

    public Optional<String> as() {
        return valued.as();
    }

    public boolean has(String option) {
        return options.contains(option);
    }

    public Optional<String> first() {
        return words.isEmpty() ? Optional.empty() : Optional.of(words.get(0));
    }

    public List<String> rest() {
        return words.isEmpty() ? List.of() : words.subList(1, words.size());
    }
}
