package hobside.talk.check;

import hobside.ledger.Basis;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads what the words around a figure say of it: for how much of the dish, whether saved or there, and how sure. */
final class Context {

    private static final Pattern SERVE = Pattern.compile("\\b(?:plates?|serves?|servings?|bowls?|portions?|helpings?)\\b");
    private static final Pattern POT = Pattern.compile("\\b(?:pot|whole dish|whole pan|all together)\\b(?! of)");
    private static final Pattern HUNDRED = Pattern.compile("\\b(?:100 ?(?:g|grams?)|(?:a |one )?hundred grams?)\\b(?! (?:of|less|more))");
    private static final Pattern SAVED = Pattern.compile("\\b(?:less|fewer|sav(?:e|es|ed|ing)|tak(?:e|es|en|ing) [^,;:]{0,40}\\boff|takes? (?:another|away|off)|taken (?:off|away|out)"
            + "|took|goes? (?:down|up)|gone|went down|down by|fall(?:s|en)? by|drops? by|cut(?:s)? (?:off|by|the)|lower|rid of|los(?:e|es|t)|cheaper|dearer|more)\\b(?! than (?:a|the|half|two|three|\\d))");
    private static final Pattern MORE = Pattern.compile("\\b(?:more than|over|above|at least|well over|upwards of) (?:about |some )?$");
    private static final Pattern NEARLY = Pattern.compile("\\b(?:nearly|almost|not quite) (?:about |some )?$");
    private static final Pattern UNDER = Pattern.compile("\\b(?:less than|under|below|at most|up to) (?:about |some )?$");
    private static final Pattern NOW = Pattern.compile("\\b(?:now|down to|ends? (?:at|with|on)|end up with|comes? down to)\\b[^,;:]{0,30}$");
    private static final Pattern WAS = Pattern.compile("\\b(?:was|were|began|begun|started?|from|used to)\\b[^,;:]{0,12}$");

    private static final Pattern OFF = Pattern.compile("^(?: of [a-z]+(?: fat)?)? off\\b");
    private static final Pattern HOLDS = Pattern.compile("\\b(?:there (?:is|are)|holds?|held|has|have|had|gives?|contains?|get|gets)\\b[^,;:]{0,24}$");

    private Context() {}

    static boolean has(Pattern pattern, String text) {
        return pattern.matcher(text).find();
    }

    /** The bases that the sentence names; all of them when it names none. */
    static Set<Basis> bases(String sentence) {
        Set<Basis> bases = EnumSet.noneOf(Basis.class);
        note(bases, Basis.SERVE, SERVE, sentence);
        note(bases, Basis.POT, POT, sentence);
        note(bases, Basis.HUNDRED_GRAMS, HUNDRED, sentence);
        return bases.isEmpty() ? Told.anyBasis() : bases;
    }

    private static void note(Set<Basis> bases, Basis basis, Pattern pattern, String sentence) {
        if (has(pattern, sentence)) {
            bases.add(basis);
        }
    }

    static Told.Hedge hedge(String before) {
        return has(MORE, before) ? Told.Hedge.MORE : has(NEARLY, before) ? Told.Hedge.NEARLY
                : has(UNDER, before) ? Told.Hedge.UNDER : Told.Hedge.NONE;
    }

    /** Whether a figure tells of a movement or of what there is. A bare "was" or "from" before it always tells of what there was. */
    static Told.Meaning meaning(String sentence, int from, int to) {
        String before = sentence.substring(Math.max(0, from - 60), from);
        if (has(WAS, before)) {
            return Told.Meaning.AMOUNT;
        }
        if (has(NOW, before)) {
            return Told.Meaning.NOW;
        }
        String around = before.substring(clause(before)) + sentence.substring(from, until(sentence, to));
        return has(SAVED, around) || has(OFF, sentence.substring(to, until(sentence, to))) ? Told.Meaning.SAVED : has(HOLDS, before) ? Told.Meaning.AMOUNT : Told.Meaning.EITHER;
    }

    private static int clause(String before) {
        for (int i = before.length() - 1; i >= 0; i--) {
            if (",;:".indexOf(before.charAt(i)) >= 0) {
                return i;
            }
        }
        return 0;
    }

    private static int until(String sentence, int to) {
        int end = to;
        while (end < sentence.length() && end < to + 50 && ",;:".indexOf(sentence.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

}
