package hobside.words;

import java.util.ArrayList;
import java.util.List;

/**
 * When a number takes a certain form of a word, written as in the plural rules of Unicode (UTS #35, part 3, "Language plural
 * rules"): conditions such as {@code n % 10 = 2..4 and n % 100 != 12..14}, joined by {@code and} and {@code or}.
 *
 * <p>The operands are n (the number), i (its whole part), v (how many decimals are seen) and f (the decimals as a whole number).
 */
final class PluralRule {

    private static final double NEAR = 1e-9;

    private final List<List<Condition>> either;

    private PluralRule(List<List<Condition>> either) {
        this.either = either;
    }

    /** One comparison: an operand, perhaps its remainder, and the values it may, or may not, have. */
    private record Condition(char operand, int modulus, boolean in, List<double[]> spans) {

        boolean holds(Number number) {
            double value = number.operand(operand);
            double left = modulus == 0 ? value : value % modulus;
            boolean within = false;
            for (double[] span : spans) {
                boolean whole = span[0] == span[1] || left == Math.rint(left);
                within |= whole && left >= span[0] - NEAR && left <= span[1] + NEAR;
            }
            return within == in;
        }
    }

    /** A number as it is written, for "1.0" may take another form than "1". */
    record Number(String written) {

        double operand(char operand) {
            String decimals = written.contains(".") ? written.substring(written.indexOf('.') + 1) : "";
            return switch (operand) {
                case 'n' -> Math.abs(Double.parseDouble(written));
                case 'i' -> Math.floor(Math.abs(Double.parseDouble(written)));
                case 'v' -> decimals.length();
                case 'f' -> decimals.isEmpty() ? 0 : Double.parseDouble(decimals);
                default -> throw new IllegalArgumentException("no operand of a plural rule is called " + operand);
            };
        }
    }

    /** Reads a rule; throws an {@link IllegalArgumentException} that names what it cannot read. */
    static PluralRule parse(String text) {
        List<List<Condition>> either = new ArrayList<>();
        for (String all : text.split("\\bor\\b")) {
            List<Condition> conditions = new ArrayList<>();
            for (String one : all.split("\\band\\b")) {
                conditions.add(condition(one.strip()));
            }
            either.add(conditions);
        }
        return new PluralRule(either);
    }

    private static Condition condition(String text) {
        boolean in = !text.contains("!=");
        String[] sides = text.split(in ? "=" : "!=");
        if (sides.length != 2 || sides[0].isBlank()) {
            throw new IllegalArgumentException("a plural rule reads like \"n = 1\" or \"i % 10 = 2..4\", not \"" + text + "\"");
        }
        String[] left = sides[0].strip().split("\\s*%\\s*");
        List<double[]> spans = new ArrayList<>();
        for (String span : sides[1].strip().split("\\s*,\\s*")) {
            String[] ends = span.split("\\.\\.");
            spans.add(new double[] {Double.parseDouble(ends[0]), Double.parseDouble(ends[ends.length - 1])});
        }
        return new Condition(left[0].charAt(0), left.length > 1 ? Integer.parseInt(left[1]) : 0, in, spans);
    }

    boolean holds(String number) {
        Number read = new Number(number);
        return either.stream().anyMatch(all -> all.stream().allMatch(condition -> condition.holds(read)));
    }
}
