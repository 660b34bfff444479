package hobside.bench;

import java.util.Locale;

/** Prints plain tables; figures are always written with a point. */
final class Paper {

    private Paper() {}

    static void title(String words) {
        System.out.println();
        System.out.println(words);
        System.out.println("-".repeat(words.length()));
    }

    static void line(String format, Object... figures) {
        System.out.println(String.format(Locale.ROOT, format, figures).stripTrailing());
    }
}
