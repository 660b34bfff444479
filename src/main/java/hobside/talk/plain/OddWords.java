package hobside.talk.plain;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * English words whose spelling misleads the rules, cooking words above all, and their usual endings (recipes, reheated).
 *
 * <p>Syllables from memory; where two ways of saying a word are usual, the fuller one, so that no grade looks easier than it is.
 */
final class OddWords {

    private static final Pattern HISS = Pattern.compile("(s|x|z|ce|se|ge|ch|sh)$");

    private static final Map<String, Integer> SYLLABLES = new TreeMap<>();

    static {
        put(1, """
                ache aisle bathe breathe brie eye isle priest roux scythe sieve soothe whose""");
        put(2, """
                acne argue baguette biscuit bouquet brioche business cafe caffeine café canoe chaos cliche cliché cocoa colonel
                conscience conscious create crouton cruel cyan diet doing dual duet duo embed entree entrée evening eyelet
                fashion fillet fluid frontier fuel genius giant going gratin gruel gruyere gruyère hygiene iron issue julienne
                liaise likewise lion liquor lychee maybe naive naked neon nougat oboe pate paté piquant poem puree purée pâté
                quiet ragout ragoût rescue riot risen roulade ruin sacred saute sauté science shallot soldier solely someone
                sorbet souffle soufflé soya sundae takeoff theatre thereof tilde tissue toward triage trial value venue vial
                virtue wednesday wicked""");
        put(3, """
                adobe albeit alien anyone apache area avenue average barbecue bechamel beforehand beverage bouillon béchamel
                cacao calzone camera carrier casual caveat cereal chocolate consomme consommé continue coyote crudites crudités
                element everyone familiar family fettuccine fiery forever fricassee genuine heroine however idea implement
                influence lasagna lasagne likeliest likelihood linear linguine manioc media museum nuclei pancreas patio peony
                poetry polio porcini preamble premium quinoa radio realise realize recipe reliant revenue rosemary sauerkraut
                scientist sesame sierra simile suicide supplement tamale theory unforeseen usefulness whatever whenever wherever
                whoever""");
        put(4, """
                anaemia apostrophe arithmetic bolognese catastrophe diabetes entirety focaccia guacamole initiative jalapeno jalapeño
                karaoke mascarpone minestrone provolone realistic reality resilient scientific society temperature teriyaki
                variety vegetable""");
        put(5, "arithmetical");
        put(7, "monounsaturated polyunsaturated");
    }

    private OddWords() {}

    private static void put(int syllables, String words) {
        for (String word : words.strip().split("\\s+")) {
            SYLLABLES.put(word, syllables);
        }
    }

    /** The syllables of an odd word, alone or with an ending that the rules would read as part of it. */
    static OptionalInt of(String word) {
        Integer known = SYLLABLES.get(word);
        return known != null ? OptionalInt.of(known) : withEnding(word);
    }

    private static OptionalInt withEnding(String word) {
        for (Ending ending : ENDINGS) {
            if (word.endsWith(ending.letters())) {
                String stem = word.substring(0, word.length() - ending.letters().length()) + ending.instead();
                Integer known = SYLLABLES.get(stem);
                if (known != null) {
                    return OptionalInt.of(known + (ending.adds() || isHissed(stem, ending) ? 1 : 0));
                }
            }
        }
        return OptionalInt.empty();
    }

    /** A plural after a hiss, or a past after t or d, is heard as a syllable: businesses, avoided. */
    private static boolean isHissed(String stem, Ending ending) {
        return switch (ending.letters().replace("'", "")) {
            case "s", "es" -> HISS.matcher(stem).find();
            case "d", "ed" -> stem.endsWith("t") || stem.endsWith("d") || stem.endsWith("te") || stem.endsWith("de");
            default -> false;
        };
    }

    /** An ending, what it stands instead of in the stem, and whether it always adds a syllable. */
    private record Ending(String letters, String instead, boolean adds) {}

    private static final List<Ending> ENDINGS = List.of(new Ending("'s", "", false), new Ending("s", "", false), new Ending("es", "", false),
            new Ending("ies", "y", false), new Ending("d", "", false), new Ending("ed", "", false), new Ending("ing", "", true),
            new Ending("ing", "e", true), new Ending("ly", "", true));
}
