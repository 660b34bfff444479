package hobside.talk.plain;

/**
 * Counts the syllables of a Spanish word by its spelling.
 *
 * <p>Rules of the <i>Ortografía</i> (from memory): a, e and o each carry a syllable; i and u lean on them (a diphthong) unless they
 * bear an accent beside one of them (maíz, país: two); two weak vowels are one syllable (ciudad: two). The u of que, qui, gue and
 * gui is mute, that of güe is not; h between vowels changes nothing; y is a vowel at the end only.
 */
final class SpanishSyllables {

    private SpanishSyllables() {}

    static int of(String word) {
        String sounded = sounded(word);
        int syllables = 0;
        int from = 0;
        for (int i = 0; i <= sounded.length(); i++) {
            if (i == sounded.length() || !isVowel(sounded.charAt(i))) {
                syllables += inGroup(sounded.substring(from, i));
                from = i + 1;
            }
        }
        return Math.max(1, syllables);
    }

    /** What is heard: without mute letters, and with i for a y that is a vowel. */
    private static String sounded(String word) {
        return word.replaceAll("qu(?=[eiéí])", "q").replaceAll("gu(?=[eiéí])", "g").replaceAll("(?<!c)h", "")
                .replaceAll("y(?![aeiouáéíóúü])", "i").replace('ü', 'u');
    }

    private static int inGroup(String vowels) {
        if (vowels.isEmpty()) {
            return 0;
        }
        int strong = 0;
        for (int i = 0; i < vowels.length(); i++) {
            strong += isStrong(vowels.charAt(i)) || "íú".indexOf(vowels.charAt(i)) >= 0 && isBesideStrong(vowels, i) ? 1 : 0;
        }
        return Math.max(1, strong);
    }

    private static boolean isBesideStrong(String vowels, int i) {
        return i > 0 && isStrong(vowels.charAt(i - 1)) || i + 1 < vowels.length() && isStrong(vowels.charAt(i + 1));
    }

    private static boolean isStrong(char c) {
        return "aeoáéó".indexOf(c) >= 0;
    }

    private static boolean isVowel(char c) {
        return isStrong(c) || "iuíúü".indexOf(c) >= 0;
    }
}
