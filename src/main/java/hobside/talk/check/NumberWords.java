package hobside.talk.check;

import java.util.Map;

/** Numbers as people write and say them: "1,000", "4.6", "twenty-five", "a hundred", "two and a half", "half a". */
final class NumberWords {

    /** How a number begins. Looked at first, because most words of a sentence are none, and a look is quicker than all that follows. */
    private static final String BEGINS = "(?=\\d|an? |hal|hun|one|t(?:w|en|h[ir])|f[oi]|s[ei]|e[il]|ni)";

    /** A regular expression for one number; {@link #value} reads what it matched. */
    static final String PATTERN = BEGINS + "(?:(?:a|one|two|three|four|nine) (?:third|quarter|fifth|tenth)s? of an?|\\d{1,3}(?:[ ,]\\d{3})+(?!\\d)(?:\\.\\d+)?|\\d+(?:[.]\\d+)?|half an?"
            + "|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?"
            + "|(?:a |one |two |three |four |five |six |seven |eight |nine )?hundred(?: and (?:fifty|twenty|ten))?"
            + "|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen"
            + "|one|two|three|four|five|six|seven|eight|nine|an?)(?: and a half)?";

    /** A regular expression for one share of something. */
    static final String SHARE = BEGINS + "(?:(?:a|one|two|three|four|five|seven|nine) (?:half|third|thirds|quarter|quarters|fifth|fifths|sixth|eighth|eighths|tenth|tenths)"
            + "|half|\\d+(?:\\.\\d+)? ?(?:%|per ?cent)|(?:ten|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))? per ?cent)";

    private static final Map<String, Integer> WORDS = Map.ofEntries(
            Map.entry("a", 1), Map.entry("an", 1), Map.entry("one", 1), Map.entry("two", 2), Map.entry("three", 3), Map.entry("four", 4),
            Map.entry("five", 5), Map.entry("six", 6), Map.entry("seven", 7), Map.entry("eight", 8), Map.entry("nine", 9), Map.entry("ten", 10),
            Map.entry("eleven", 11), Map.entry("twelve", 12), Map.entry("thirteen", 13), Map.entry("fourteen", 14), Map.entry("fifteen", 15),
            Map.entry("sixteen", 16), Map.entry("seventeen", 17), Map.entry("eighteen", 18), Map.entry("nineteen", 19), Map.entry("twenty", 20),
            Map.entry("thirty", 30), Map.entry("forty", 40), Map.entry("fifty", 50), Map.entry("sixty", 60), Map.entry("seventy", 70),
            Map.entry("eighty", 80), Map.entry("ninety", 90));

    private static final Map<String, Integer> PARTS = Map.of("half", 2, "third", 3, "quarter", 4, "fifth", 5, "sixth", 6, "eighth", 8, "tenth", 10);

    private NumberWords() {}

    /** The number that {@link #PATTERN} matched. */
    static double value(String small) {
        int part = small.indexOf(" of a");
        if (part > 0) {
            return share(small.substring(0, part));
        }
        if (small.startsWith("half a")) {
            return 0.5;
        }
        boolean half = small.endsWith(" and a half");
        String number = half ? small.substring(0, small.length() - " and a half".length()) : small;
        return (Character.isDigit(number.charAt(0)) ? digits(number) : words(number)) + (half ? 0.5 : 0);
    }

    private static double digits(String number) {
        return Double.parseDouble(number.replace(",", "").replace(" ", ""));
    }

    private static double words(String number) {
        double sum = 0;
        for (String word : number.split("[- ]")) {
            if (word.equals("hundred")) {
                sum = 100 * Math.max(1, sum);
            } else {
                sum += WORDS.getOrDefault(word, 0);
            }
        }
        return sum;
    }

    /** How finely a number was said: half a step of its last digit that counts; 0.05 for 4.6, 0.5 for 29, 5 for 230, 50 for 2,100. */
    static double fineness(String small, double value) {
        int point = small.indexOf('.');
        if (small.contains(" of a")) {
            return value / 4;
        }
        if (point >= 0) {
            return 0.5 * Math.pow(10, point + 1 - small.length());
        }
        if (value != Math.rint(value)) {
            return 0.25;
        }
        double step = 1;
        while (value >= step * 100 && value % (step * 10) == 0) {
            step *= 10;
        }
        return step / 2;
    }

    /** The share that {@link #SHARE} matched, from 0 to 1. */
    static double share(String small) {
        int percent = Math.max(small.indexOf('%'), Math.max(small.indexOf("per"), 0));
        if (percent > 0) {
            return value(small.substring(0, percent).strip()) / 100;
        }
        String[] words = small.split(" ");
        String part = words[words.length - 1];
        int of = PARTS.getOrDefault(part.endsWith("s") ? part.substring(0, part.length() - 1) : part, 1);
        return WORDS.getOrDefault(words[0], 1) / (double) of;
    }
}
