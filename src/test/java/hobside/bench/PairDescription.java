package hobside.bench;

import hobside.food.CookingMethod;
import hobside.food.MeltClass;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads the class and the cooking method out of the wording of a published raw and cooked pair. */
record PairDescription(MeltClass melts, CookingMethod method) {
    private static final Pattern FISH = word("fish|finfish|shellfish|crustaceans?|mollus[kc]s?|salmon|tuna|crab|shrimp|squid");
    private static final Pattern BACON = word("bacon|breakfast strips|salt pork|fatback");
    private static final Pattern SAUSAGE =
            word("sausages?|frankfurters?|wieners?|hot dogs?|bratwurst|bockwurst|kielbasa|chorizo|salami|bologna");
    private static final Pattern TINNED = word("canned|tinned|luncheon meat");
    private static final Pattern OFFAL = word("variety meats|giblets|gizzards?|livers?|hearts?|kidneys?|brains?|tripe|tongues?|"
            + "sweetbreads?|thymus|pancreas|spleen|lungs?|testes|chitterlings|feet|tails?");
    private static final Pattern MINCE = word("ground|minced?|crumbles|hamburger|patty|patties|meatballs?");
    private static final Pattern POULTRY =
            word("chickens?|turkeys?|ducks?|goose|geese|quails?|pheasants?|squab|pigeon|guinea|capons?|poultry");
    private static final Pattern GAME = word("game|deer|venison|elk|bison|buffalo|rabbit|hare|boar|moose|caribou|antelope|goat|horse|"
            + "squirrel|emu|ostrich|bear|beaver|muskrat|opossum|raccoon|beefalo|kangaroo|alligator");
    private static final Pattern PORK = word("pork|ham|gammon");
    private static final Pattern LAMB = word("lamb|mutton|hogget|sheep");

    /** The class and method of one pair; a coating in batter or breadcrumbs means frying in deep fat. */
    static PairDescription of(String rawDescription, String cookingMethod, String coating) {
        return new PairDescription(
                meltsOf(rawDescription.toLowerCase(Locale.ROOT)),
                methodOf(cookingMethod.toLowerCase(Locale.ROOT), coating.toLowerCase(Locale.ROOT)));
    }

    private static MeltClass meltsOf(String text) {
        if (has(FISH, text)) {
            return MeltClass.FISH;
        } else if (has(BACON, text)) {
            return MeltClass.BACON;
        } else if (has(SAUSAGE, text)) {
            return MeltClass.SAUSAGE;
        } else if (has(TINNED, text)) {
            return MeltClass.TINNED_MEAT;
        } else if (has(OFFAL, text) && !text.contains("and giblets")) {
            return MeltClass.OFFAL;
        }
        return animalOf(text, has(MINCE, text));
    }

    /** Minced game has no class of its own; a "cornish game hen" is a chicken. */
    private static MeltClass animalOf(String text, boolean mince) {
        if (has(POULTRY, text)) {
            return mince ? MeltClass.POULTRY_MINCE : MeltClass.POULTRY_CUT;
        } else if (has(GAME, text)) {
            return MeltClass.GAME_CUT;
        } else if (has(PORK, text)) {
            return mince ? MeltClass.PORK_MINCE : MeltClass.PORK_CUT;
        } else if (has(LAMB, text)) {
            return mince ? MeltClass.LAMB_MINCE : MeltClass.LAMB_CUT;
        } else if (mince) {
            return MeltClass.BEEF_MINCE;
        }
        return text.contains("veal") ? MeltClass.VEAL_CUT : MeltClass.BEEF_CUT;
    }

    private static CookingMethod methodOf(String text, String coating) {
        String all = text + " " + coating;
        if (text.contains("fried") && (all.contains("batter") || all.contains("bread"))) {
            return CookingMethod.DEEP_FRIED;
        }
        return WORDS.stream()
                .filter(entry -> text.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(CookingMethod.ROASTED);
    }

    /** The first wording that occurs decides, so that "pan-broiled crumbles" is browned and "pan-broiled" is fried. */
    private static final List<Map.Entry<String, CookingMethod>> WORDS = List.of(
            Map.entry("microwav", CookingMethod.MICROWAVED),
            Map.entry("crumbles", CookingMethod.PAN_BROWNED),
            Map.entry("brown", CookingMethod.PAN_BROWNED),
            Map.entry("deep", CookingMethod.DEEP_FRIED),
            Map.entry("pan-broil", CookingMethod.PAN_FRIED),
            Map.entry("fried", CookingMethod.PAN_FRIED),
            Map.entry("saut", CookingMethod.PAN_FRIED),
            Map.entry("griddle", CookingMethod.PAN_FRIED),
            Map.entry("broil", CookingMethod.GRILLED),
            Map.entry("grill", CookingMethod.GRILLED),
            Map.entry("barbecue", CookingMethod.GRILLED),
            Map.entry("brais", CookingMethod.BRAISED),
            Map.entry("stew", CookingMethod.STEWED),
            Map.entry("steam", CookingMethod.STEAMED),
            Map.entry("simmer", CookingMethod.BOILED),
            Map.entry("boil", CookingMethod.BOILED),
            Map.entry("poach", CookingMethod.BOILED),
            Map.entry("moist heat", CookingMethod.BOILED),
            Map.entry("loaf", CookingMethod.BAKED),
            Map.entry("bake", CookingMethod.BAKED),
            Map.entry("dry heat", CookingMethod.BAKED),
            Map.entry("roast", CookingMethod.ROASTED),
            Map.entry("rotisserie", CookingMethod.ROASTED));

    private static boolean has(Pattern pattern, String text) {
        return pattern.matcher(text).find();
    }

    private static Pattern word(String alternatives) {
        return Pattern.compile("\\b(" + alternatives + ")\\b");
    }
}
