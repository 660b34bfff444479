package hobside.bench;

import hobside.file.Harm;
import hobside.file.bring.Importers;
import java.io.IOException;
import java.util.Locale;

/** Tries millions of mutants of real files on every reader and importer. Arguments: how many (5,000,000), and the first seed (1,000,000). */
final class HarmBench {

    private HarmBench() {}

    public static void main(String[] args) throws IOException {
        long cases = args.length > 0 ? Long.parseLong(args[0]) : 5_000_000;
        long first = args.length > 1 ? Long.parseLong(args[1]) : 1_000_000;
        Harm harm = Importers.with(new Harm());
        long longest = 0;
        long before = System.nanoTime();
        for (long seed = first; seed < first + cases; seed++) {
            longest = Math.max(longest, harm.once(seed));
        }
        System.out.printf(Locale.ROOT, "%d mutants in %.0f s: no reader threw, none told a control character; the slowest took %.0f ms; most memory %d MiB%n", cases,
                (System.nanoTime() - before) / 1e9, longest / 1e6, Runtime.getRuntime().totalMemory() >> 20);
    }
}
