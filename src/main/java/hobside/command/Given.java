package hobside.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was given on the command line: options, and words in their order.
 *
 * @param valued options with a word after them, such as the folder of --kitchen
 * @param problem what is wrong with it, for the user; empty when nothing is
 */
public record Given(List<String> options, List<String> words, Map<String, String> valued, Optional<String> problem) {

    public static final String JSON = "--json";
    public static final String MARKDOWN = "--markdown";
    public static final String HTML = "--html";
    public static final String HANDOUT = "--handout";
    public static final String BENCH = "--bench";
    public static final String ORDER = "--order";
    public static final String HELP = "--help";
    public static final String VERSION = "--version";
    public static final String WARM_UP = "--warm-up";
    /** With the warm-up: only the screens that nearly every visit sees. */
    public static final String BRIEF = "--brief";
    public static final String KITCHEN = "--kitchen";
    public static final String AS = "--as";
    public static final String IN = "--in";
    public static final String YES = "--yes";
    public static final String GOAL = "--goal";
    public static final String AT_MOST = "--at-most";
    public static final String AIM = "--aim";
    public static final String KEEP = "--keep";

    private static final Set<String> VALUED = Set.of(KITCHEN, AS, IN, GOAL, AT_MOST, AIM, KEEP);

    private static final Set<String> KNOWN = Set.of(JSON, MARKDOWN, HTML, HANDOUT, BENCH, ORDER, HELP, VERSION, WARM_UP, BRIEF, YES, "--ascii", "--no-colour", "--accessible");

    public Given {
        options = List.copyOf(options);
        words = List.copyOf(words);
        valued = Map.copyOf(valued);
    }

    public static Given parse(List<String> arguments) {
        List<String> options = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Map<String, String> valued = new HashMap<>();
        Optional<String> problem = Optional.empty();
        for (int i = 0; i < arguments.size(); i++) {
            String each = arguments.get(i);
            if (VALUED.contains(each) && i + 1 < arguments.size()) {
                valued.put(each, arguments.get(++i));
            } else if (!each.startsWith("--")) {
                words.add(each);
            } else if (KNOWN.contains(each)) {
                options.add(each);
            } else {
                problem = Optional.of(complaint(each));
            }
        }
        return new Given(options, words, valued, problem);
    }

    /** What stands after an option. */
    public Optional<String> valued(String option) {
        return Optional.ofNullable(valued.get(option));
    }

    private static String complaint(String option) {
        if (option.equals(AS)) {
            return "--as needs a word after it: foods, prices, recipe or tables.";
        }
        if (option.equals(GOAL) || option.equals(AT_MOST)) {
            return option + " needs words in quotes after it, such as " + option + " \"6 g\".";
        }
        if (option.equals(AIM) || option.equals(KEEP)) {
            return option + " needs a word after it: " + (option.equals(AIM) ? "fewest, money, departure or saving." : "names of ingredients with commas between them.");
        }
        if (option.equals(IN)) {
            return "--in needs a language after it, such as en or es.";
        }
        return option.equals(KITCHEN) ? "--kitchen needs the name of a folder after it." : "There is no option " + printable(option) + ". hobside --help lists them.";
    }

    static String printable(String text) {
        StringBuilder safe = new StringBuilder();
        text.chars().limit(100).forEach(each -> safe.append(Character.isISOControl(each) ? '?' : (char) each));
        return safe.toString();
    }

    public Optional<String> kitchen() {
        return valued(KITCHEN);
    }

    public Optional<String> as() {
        return valued(AS);
    }

    /** The code of the language to print in. */
    public Optional<String> in() {
        return valued(IN);
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
