package hobside.talk.plain;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Counts the syllables of an English word: a table of odd words first, with their usual endings, then rules of spelling.
 *
 * <p>The rules are ours: every run of vowels is a syllable; a mute e at the end, before an ending or inside a compound is taken off;
 * vowels that are said apart (diet, various, going) are added.
 */
final class EnglishSyllables {

    private static final Pattern VOWELS = Pattern.compile("[aeiouyàáâäèéêëíîïóôöúûü]+");

    private static final Pattern MUTE_AT_THE_END = Pattern.compile(
            "(?<=[^aeiouy])(?<![^aeiouyrlw]l|[btcdg]r)e$|(?<=[^aeiouytd])(?<![^aeiouylrw]l|[btcd]r)ed$|"
                    + "(?<=[^aeiouysxzcg])(?<!ch|sh|[^aeiouylr]l|[btcdg]r)es$|[gq]ues?$");

    private static final Pattern MUTE_BEFORE_AN_ENDING = Pattern.compile(
            "(?<=[aeiouy][^aeiouy]|[aeiouy](st|nc|rc|rs|dg))e(ly|less|ful|fully|ness|ment|ments|some)$|ically$|^every");

    private static final Pattern MUTE_IN_A_COMPOUND = Pattern.compile(
            "^(some|home|whole|sauce|cheese|grape|spice|wine|life|house|make|take|side|time|price|base|case|lime|stove|plate|store|shore|"
                    + "bake|cake|smoke|nine|same|stone|wide|hide|safe|game|fire|ware|care|hare|share|guide|pipe|file|trade|frame|mile|score|"
                    + "rape|horse|goose|fore|lake|code|face|gate|there|here|where|else|ice)(?=[^aeiouy']+[aeiouy])"
                    + "(?!ness|ment|less|ful|some$|ly$|ry|rs)");

    private static final Pattern SAID_APART = Pattern.compile("(?<![tcsgr])ia(?!ge)|(?<!ar)ria(?!ge)|[tcs]ia(?=t)|(?<![tscgxln])io(?!us|ur)|"
            + "tios?$|(?<=[^tscgx])iou(?!r)|iu|iet(?!ies)|(?<!^p|^t|^f)ier(?=$|s$)|iest$|(?<![gh])eo(?![up])|[nr]eous|eum|(?<![gq])ue(?=[lt])|"
            + "(?<!q)uo(?!y)|(?<![qg])ua|(?<=[aeiouy])ing|(?<=[aeou])y(?=[aeiou])(?!ed$|es$|ing)|[cs]reat(?=[eio])|ie(?=n[ct])(?<![ctn]ie)|"
            + "liens?$|(?<=[^aeiou])y(?=ers?$|an)|po(?=e[mt])|^co(?=erc|eff|exi|inci|ord|oper)|"
            + "^re(?=act|ass|allo|open|us|in[stf]|org|arr|est|exp|app)");

    private static final Pattern MUFFLED = Pattern.compile("sms?$|thm|[dkpstvz]n't$|[^aeiouyrw]'(ll|ve)$|(s|x|z|ce|se|ge|ch|sh)'s$");

    private EnglishSyllables() {}

    static int of(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        OptionalInt odd = OddWords.of(plain);
        return odd.isPresent() ? odd.getAsInt() : Math.max(1, byRules(plain));
    }

    private static int byRules(String word) {
        String stem = word.replaceFirst("'s?$", "");
        int mute = count(MUTE_AT_THE_END, stem) + count(MUTE_BEFORE_AN_ENDING, stem) + count(MUTE_IN_A_COMPOUND, stem);
        return count(VOWELS, stem) - mute + count(SAID_APART, stem) + count(MUFFLED, word);
    }

    private static int count(Pattern pattern, String word) {
        Matcher matcher = pattern.matcher(word);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }
}
