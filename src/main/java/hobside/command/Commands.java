package hobside.command;

import hobside.talk.Demo;
import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Read;
import hobside.file.Scripts;
import hobside.file.Study;
import hobside.file.TotalsWriter;
import hobside.file.WordFiles;
import hobside.food.Food;
import hobside.food.Nutrient;
import hobside.talk.Written;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** The commands: totals, script, advise, check, foods, bring, give and gather. Answers go to one stream, complaints to the other. */
public final class Commands {

    private static final Set<String> NAMES = Set.of("totals", "script", "advise", "check", "foods", "bring", "give", "gather", "help");

    /** Where a command writes: its answers, its complaints, and what to do to a text that the terminal cannot show. */
    public record Streams(PrintStream answers, PrintStream complaints, UnaryOperator<String> shown) {

        void say(String text) {
            answers.print(shown.apply(text));
        }

        void complain(String text) {
            complaints.println(shown.apply(text));
        }
    }

    private final Given given;
    private final Kitchen kitchen;
    private final Streams streams;

    public Commands(Given given, Kitchen kitchen, Streams streams) {
        this.given = given;
        this.kitchen = kitchen;
        this.streams = streams;
    }

    /** Whether this is the name of a command and not of a dish. */
    public static boolean isCommand(String word) {
        return NAMES.contains(word);
    }

    public Exit run() {
        return switch (given.first().orElse("help")) {
            case "totals" -> onFile(this::totals);
            case "script" -> script();
            case "advise" -> advise();
            case "check" -> new Check(kitchen, streams).run(given.rest());
            case "foods" -> foods();
            case "bring" -> new BringCommand(kitchen, streams, given).run();
            case "give" -> new Give(kitchen, streams, given).run();
            case "gather" -> new Gather(kitchen, streams, given).run();
            default -> help();
        };
    }

    private Exit help() {
        streams.say(Help.TEXT);
        return Exit.DONE;
    }

    private interface OnDemo {
        void answer(Demo demo, Study study);
    }

    /** Reads the one file that is named and answers from it; its faults are listed all at once. */
    private Exit onFile(OnDemo then) {
        if (given.rest().size() != 1) {
            streams.complain(given.first().orElse("") + " needs the name of one dish or demo, such as: hobside " + given.first().orElse("") + " ropewalk-rib-pot");
            return Exit.BAD_INPUT;
        }
        Library library = Library.load(kitchen);
        warn(library.problems());
        Read<Demo> read = kitchen.demo(given.rest().get(0), library.shelf());
        warn(read.problems());
        read.value().ifPresent(demo -> then.answer(demo, Study.of(library)));
        return read.value().isPresent() ? Exit.DONE : Exit.BAD_INPUT;
    }

    private void warn(List<InputProblem> problems) {
        problems.forEach(problem -> streams.complain(problem.written()));
    }

    private void totals(Demo demo, Study study) {
        streams.say(given.has(Given.JSON) ? TotalsWriter.json(demo, study) : TotalsText.of(demo, study));
    }

    private Exit script() {
        Optional<String> unknown = given.in().filter(code -> !WordFiles.LANGUAGES.contains(code));
        if (unknown.isPresent()) {
            streams.complain("There are no words in the language \"" + Given.printable(unknown.get()) + "\"; there are "
                    + String.join(", ", WordFiles.LANGUAGES) + ".");
            return Exit.BAD_INPUT;
        }
        return onFile(this::print);
    }

    private void print(Demo demo, Study study) {
        Demo told = given.in().map(code -> demo.with(demo.script().in(code))).orElse(demo);
        Scripts.Paper paper = given.has(Given.HANDOUT) ? Scripts.Paper.HANDOUT : given.has(Given.BENCH) ? Scripts.Paper.BENCH : given.has(Given.ORDER) ? Scripts.Paper.ORDER : Scripts.Paper.SCRIPT;
        Scripts.Form form = given.has(Given.HTML) ? Scripts.Form.HTML : given.has(Given.MARKDOWN) ? Scripts.Form.MARKDOWN : Scripts.Form.TEXT;
        streams.say(Scripts.printed(Scripts.sheet(paper, told, study), form));
    }

    private Exit advise() {
        List<Exit> exits = new ArrayList<>();
        Exit read = onFile((demo, study) -> exits.add(new Advise(streams, given).answer(demo, study)));
        return exits.isEmpty() ? read : exits.get(0);
    }

    private Exit foods() {
        Library library = Library.load(kitchen);
        warn(library.problems());
        List<Food> found = library.shelf().find(String.join(" ", given.rest()), given.rest().isEmpty() ? Integer.MAX_VALUE : 20);
        found.forEach(food -> streams.say(line(food)));
        if (found.isEmpty()) {
            streams.complain("Nothing on the shelf fits these words. Try fewer letters, or another name of the food.");
        }
        return found.isEmpty() ? Exit.NO_ANSWER : Exit.DONE;
    }

    /** One food on one line: id, name, saturated fat and energy per 100 g, source. */
    private static String line(Food food) {
        return String.format("%-34s %-44s %8s %10s  %s%n", food.id(), food.name(), figure(food, Nutrient.FASAT), figure(food, Nutrient.ENERC),
                food.label().source().written());
    }

    private static String figure(Food food, Nutrient nutrient) {
        Optional<Double> known = food.composition().of(nutrient).isPresent()
                ? Optional.of(food.composition().of(nutrient).getAsDouble()) : Optional.empty();
        return known.map(value -> nutrient == Nutrient.ENERC ? Math.round(value) + " kJ" : Written.number(value) + " g").orElse("unknown");
    }
}
