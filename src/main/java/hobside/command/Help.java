package hobside.command;

/** What the program says about itself when it is asked. */
final class Help {

    static final String TEXT = String.join("\n",
            "Hobside: adapt a familiar dish one change at a time, with a running total, and take home the script.",
            "",
            "  hobside                       the Bench, with the last demo or a bundled dish",
            "  hobside DISH                  the Bench with this dish or demo",
            "  hobside totals FILE           the totals at the start and after each change",
            "  hobside totals FILE --json    the same for programs (shape: foods/FORMATS.md)",
            "  hobside script FILE           the narrated script as text; --markdown, --html: in that form;",
            "                                --handout for the audience, --bench for setting out, --order for who does",
            "                                what when; --in es: in Spanish",
            "  hobside advise FILE           the next best changes; --goal \"a third less\" or --at-most \"6 g\": the best plan,",
            "                                --aim departure|fewest|money|saving, --keep ribs,onions; --json",
            "  hobside check FILE...         all faults of food, price, dish and demo files; what a talk says amiss",
            "  hobside foods WORDS           search the shelf",
            "  hobside bring FILE|FOLDER     look at a table of foods or prices (CSV), a recipe (JSON-LD) or a folder of",
            "                                FoodData Central tables; --as foods|prices|recipe|tables; --yes takes it",
            "  hobside give DISH [FILE]      a dish as a recipe for others; give prices, give foods: a table",
            "  hobside gather FOLDER [INTO]  put practice logs of many machines together and report; --as text|csv|html",
            "",
            "FILE is a dish or a demo: a file, the name of a saved demo, or a bundled dish (ropewalk-rib-pot,",
            "lantern-night-pumpkin-pot, lock-keepers-potato-bake).",
            "",
            "  --kitchen DIR                 the folder with your foods, dishes and scripts",
            "                                (else HOBSIDE_KITCHEN, else this folder if it holds foods and scripts,",
            "                                else hobside-kitchen in your home folder)",
            "  --ascii, --no-colour          plain letters, no colours",
            "  --accessible                  one fact a line, for screen readers and Braille lines (or ACCESSIBLE=1)",
            "  --version, --help",
            "",
            "Exit codes: 0 done, 1 no answer, 2 bad input or use.",
            "");

    private Help() {}
}
