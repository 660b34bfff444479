package hobside.food;

import java.util.Set;

/** English plurals of the nouns that kitchens count in. */
public final class Plural {

    private static final Set<String> UNCHANGED = Set.of("large", "medium", "small", "g", "kg", "ml", "l", "lb", "oz", "tsp", "tbsp", "");

    private Plural() {}

    /** "tin" → "tins", "bunch" → "bunches", "leaf" → "leaves", "large" → "large". */
    public static String of(String noun) {
        if (UNCHANGED.contains(noun)) {
            return noun;
        }
        if (noun.endsWith("eaf") || noun.endsWith("oaf") || noun.endsWith("alf")) {
            return noun.substring(0, noun.length() - 1) + "ves";
        }
        if (ends(noun, "ch", "sh", "s", "x", "tato", "mato")) {
            return noun + "es";
        }
        return endsInSoundedY(noun) ? noun.substring(0, noun.length() - 1) + "ies" : noun + "s";
    }

    private static boolean ends(String noun, String... endings) {
        for (String ending : endings) {
            if (noun.endsWith(ending)) {
                return true;
            }
        }
        return false;
    }

    /** "berry" and "kidney" differ in the letter before the y. */
    private static boolean endsInSoundedY(String noun) {
        return noun.length() > 1 && noun.endsWith("y") && "aeiou".indexOf(noun.charAt(noun.length() - 2)) < 0;
    }
}
