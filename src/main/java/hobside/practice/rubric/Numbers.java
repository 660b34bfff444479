package hobside.practice.rubric;

import hobside.practice.rubric.Number.Hedge;
import hobside.practice.rubric.Number.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the numbers of an answer, in digits and in words, with their units and what stands before them. The words are those of the table. */
final class Numbers {

    private final Spotter spotter;
    private final Map<String, Double> counts;
    private final Map<String, Double> parts;

    Numbers(Spotter spotter, Concepts concepts) {
        this.spotter = spotter;
        this.counts = table(concepts.find("number.words").orElse(""));
        this.parts = table(concepts.find("number.parts").orElse(""));
    }

    private static Map<String, Double> table(String line) {
        Map<String, Double> table = new HashMap<>();
        for (String pair : line.strip().split("\\s+")) {
            int at = pair.indexOf('=');
            if (at > 0) {
                table.put(Text.plain(pair.substring(0, at)), Double.parseDouble(pair.substring(at + 1)));
            }
        }
        return table;
    }

    /** A number's value and how finely it was said, up to its last word. */
    private record Value(double value, double fine, int last, boolean share) {}

    List<Number> in(Heard heard) {
        List<Number> all = new ArrayList<>();
        int at = 0;
        while (at < heard.tokens().size()) {
            Value value = value(heard, at);
            if (value == null) {
                at++;
            } else {
                Number number = number(heard, at, value);
                if (number != null) {
                    all.add(number);
                    at = number.last();
                }
                at++;
            }
        }
        return all;
    }

    private String word(Heard heard, int at, int beside) {
        boolean there = at >= 0 && at < heard.tokens().size() && heard.isOneSentence(at, beside);
        return there ? heard.tokens().get(at).word() : "";
    }

    private boolean is(Heard heard, String group, int at) {
        for (int[] place : heard.places(spotter.slot("@" + group))) {
            if (place[0] <= at && at <= place[1]) {
                return true;
            }
        }
        return false;
    }

    /** Where the words of a group that begin here end; -1 when none do. */
    private int end(Heard heard, String group, int at) {
        for (int[] place : heard.places(spotter.slot("@" + group))) {
            if (place[0] == at) {
                return place[1];
            }
        }
        return -1;
    }

    private Value value(Heard heard, int at) {
        Token token = heard.tokens().get(at);
        if (end(heard, "unit-gram", at) == at && andHalf(heard, at + 1, at) >= 0) {
            return new Value(1, 0.25, at - 1, false);
        }
        if (token.isNumeral()) {
            return numeral(heard, at, token.word());
        }
        boolean article = is(heard, "one", at);
        Double part = parts.get(token.word());
        if (part != null && part >= 2) {
            return new Value(1 / part, 0, at, true);
        }
        if (!article && !counts.containsKey(token.word())) {
            return null;
        }
        Double after = parts.get(word(heard, at + 1, at));
        double count = article ? 1 : counts.get(token.word());
        if (after != null && count < after) {
            return new Value(count / after, 0, at + 1, true);
        }
        return article && !leads(heard, at + 1) ? null : words(heard, at);
    }

    /** Whether "a" is a number here: a gram, a hundred. */
    private boolean leads(Heard heard, int next) {
        return next < heard.tokens().size() && (unit(heard, next) != null || "100".equals(whole(word(heard, next, next - 1))));
    }

    private String whole(String word) {
        Double known = counts.get(word);
        return known == null ? "" : Long.toString(Math.round(known));
    }

    private Value numeral(Heard heard, int at, String word) {
        double value = digits(word);
        Value plain = new Value(value, fine(word, value), at, false);
        String next = word(heard, at + 1, at);
        int per = end(heard, "percent", at + 1);
        if (next.equals("%") || per >= 0) {
            return new Value(value / 100, 0.005, next.equals("%") ? at + 1 : per, true);
        }
        return half(heard, plain);
    }

    private static double digits(String word) {
        int sign = Math.max(word.lastIndexOf('.'), word.lastIndexOf(','));
        String bare = word.replaceAll("[.,]", "");
        bare = bare.substring(0, Math.min(15, bare.length()));
        if (sign < 0 || isGrouped(word, sign)) {
            return bare.chars().allMatch(digit -> digit >= '0' && digit <= '9') ? Double.parseDouble(bare) : 0;
        }
        String text = word.substring(0, sign).replaceAll("[.,]", "") + "." + word.substring(sign + 1);
        return text.chars().allMatch(digit -> digit == '.' || digit >= '0' && digit <= '9') ? Double.parseDouble(text) : 0;
    }

    /** Whether the last sign stands before three digits of a thousand: in 1,200, not in 0.125. */
    private static boolean isGrouped(String word, int sign) {
        return word.length() - sign == 4 && !word.startsWith("0");
    }

    /** Half a step of the last digit that counts: 0.05 for 4.6, 0.5 for 29, 5 for 230. */
    private static double fine(String word, double value) {
        int sign = Math.max(word.lastIndexOf('.'), word.lastIndexOf(','));
        if (sign >= 0 && !isGrouped(word, sign)) {
            return 0.5 * Math.pow(10, sign + 1 - word.length());
        }
        double step = 1;
        while (value >= step * 100 && value % (step * 10) == 0) {
            step *= 10;
        }
        return step / 2;
    }

    /** "one hundred and fifty", "treinta y cinco", "two and a half". */
    private Value words(Heard heard, int at) {
        double sum = is(heard, "one", at) ? 1 : counts.get(heard.tokens().get(at).word());
        int last = at;
        while (true) {
            int next = is(heard, "and", last + 1) && sum >= 20 ? last + 2 : last + 1;
            Double more = counts.get(word(heard, next, at));
            if (more == null || next == at) {
                break;
            }
            if (more == 100 && sum < 10) {
                sum *= 100;
            } else if (sum >= 100 && sum % 100 == 0 && more < 100 || sum >= 20 && sum < 100 && sum % 10 == 0 && more < 10
                    || sum > 100 && sum % 10 == 0 && sum % 100 != 0 && more < 10) {
                sum += more;
            } else {
                break;
            }
            last = next;
        }
        return half(heard, new Value(sum, fine("", sum), last, false));
    }

    private Value half(Heard heard, Value value) {
        int end = andHalf(heard, value.last() + 1, value.last());
        return end < 0 ? value : new Value(value.value() + 0.5, 0.25, end, false);
    }

    /** Where "and a half" ends that begins here, in the sentence of the word beside it; -1 when it does not. */
    private int andHalf(Heard heard, int at, int beside) {
        int end = end(heard, "and-half", at);
        return end >= 0 && heard.isOneSentence(end, beside) ? end : -1;
    }

    /** A unit and its last word. */
    private record United(Unit unit, double factor, int last) {}

    private United unit(Heard heard, int at) {
        for (String[] row : UNITS) {
            int end = end(heard, row[0], at);
            if (end >= 0) {
                return new United(Unit.valueOf(row[1]), Double.parseDouble(row[2]), end);
            }
        }
        return null;
    }

    private static final String[][] UNITS = {{"unit-cent", "COIN", "0.01"}, {"unit-coin", "COIN", "1"}, {"unit-gram", "GRAM", "1"},
        {"unit-milligram", "MILLIGRAM", "0.001"}, {"unit-kilojoule", "KILOJOULE", "1"}, {"unit-kilocalorie", "KILOCALORIE", "1"},
        {"unit-teaspoon", "TEASPOON", "4.6"}, {"unit-kilo", "KILO", "1000"}, {"unit-kitchen", "KITCHEN", "1"}};

    private Number number(Heard heard, int at, Value value) {
        int next = value.last() + 1;
        while (next < heard.tokens().size() && next < value.last() + 4 && is(heard, "filler", next)) {
            next++;
        }
        United unit = next < heard.tokens().size() && heard.isOneSentence(next, at) ? unit(heard, next) : null;
        Hedge hedge = hedge(heard, at, value.last());
        if (unit == null) {
            int half = value.share() ? -1 : andHalf(heard, next, at);
            return half >= 0 ? null : new Number(value.value(), value.fine(), at, value.last(), value.share() ? Unit.SHARE : Unit.BARE, hedge);
        }
        int half = value.share() ? -1 : andHalf(heard, unit.last() + 1, at);
        double whole = value.value() + (half >= 0 ? 0.5 : 0);
        double fine = value.share() ? value.value() / 4 : half >= 0 ? 0.25 : value.fine();
        return new Number(whole * unit.factor(), fine * unit.factor(), at, half >= 0 ? half : unit.last(), unit.unit(), hedge);
    }

    private Hedge hedge(Heard heard, int at, int last) {
        for (int i = Math.max(0, at - 4); i < at; i++) {
            if (heard.isOneClause(i, at)) {
                Hedge hedge = is(heard, "under", i) && before(i, at) ? Hedge.UNDER : is(heard, "nearly", i) ? Hedge.NEARLY
                        : is(heard, "over", i) && before(i, at) ? Hedge.MORE : is(heard, "about", i) ? Hedge.ABOUT : Hedge.NONE;
                if (hedge != Hedge.NONE) {
                    return hedge;
                }
            }
        }
        return is(heard, "about", last + 1) || is(heard, "about", last + 2) ? Hedge.ABOUT : Hedge.NONE;
    }

    /** "under" and "over" stand right before what they hedge. */
    private static boolean before(int hedge, int at) {
        return at - hedge <= 3;
    }
}
