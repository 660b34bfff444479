package hobside.talk.check;

import hobside.talk.check.Finding.Kind;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The table of wordings that no figure can make true, each with its reason, its source and better words. Small letters throughout.
 * {now} in the better words stands for what a serve holds at that place of the talk. Compiled when first used.
 */
final class Patterns {

    /**
     * One wording.
     *
     * @param needs one of these must be in the sentence, else the pattern is not tried: it is what makes the check quick
     * @param unless when this is found in the sentence, the wording is meant otherwise
     */
    record Row(Kind kind, Guard guard, List<String> needs, Pattern words, Pattern unless, Because because) {

        boolean mayBeIn(String small) {
            for (String need : needs) {
                if (small.contains(need)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Why it is wrong, who says so, and what to say instead. */
    record Because(String reason, String source, String better) {}

    private static final String NEVER = "(?!)";
    private static final String PRACTICE = "common practice, no source";
    private static final String COCHRANE = "Cochrane review CD011737.pub3 (2020)";
    private static final String OILS = "USDA National Nutrient Database, SR26";
    private static final String MINCE = "USDA National Nutrient Database, SR26: ground beef crumbles, pan-browned";
    private static final String RECIPES = "UNU/INFOODS, Rand et al. 1991, recipe calculation, Fig. 1";
    private static final String RESPECT = "national food guidelines that keep the tradition, such as Grenada's, guideline 7 (2020; second-hand)";

    private static final Because NOT_NONE = new Because("Hardly any food or dish is without fat; little is not none.", OILS, "{now}");
    private static final Because ALL_OUT = new Because("Only loose or melted fat can leave: of pan-browned mince of 20 % fat 57 % of the fat stays, of mince of 10 % fat 82 %.",
            MINCE, "Only the fat that has melted leaves; the meat keeps its own.");
    private static final Because NOT_ALL = new Because("\"Always\", \"never\" and \"all\" seldom hold for food: it depends on which food, how much, and how it is cooked.", PRACTICE,
            "Say which food, and how much: {now}");
    private static final Because PLANTS = new Because("Coconut oil (86.5 g of saturated fat per 100 g), palm kernel oil, cocoa butter, palm oil (49.3 g) and shea butter come from plants; so does"
            + " sunflower oil with 10.3 g.", OILS, "Most oils from seeds are mostly unsaturated; coconut and palm fat are not.");
    private static final Because RISK = new Because("Studies bear out a lower risk of heart events in large groups over two years and more, and no promise to any one person.",
            COCHRANE, "Eating less saturated fat lowers the risk of heart events; for your own health ask a doctor or dietitian.");
    private static final Because LIVES = new Because("Less saturated fat lowered combined heart events (risk ratio 0.83, 0.70 to 0.98), but deaths hardly or not at all (0.96, 0.90 to 1.03).",
            COCHRANE, "Eating less saturated fat lowers the risk of heart events.");
    private static final Because MEDICINE = new Because("This is cooking, not treatment; what somebody may eat or leave off is for doctors and dietitians.", PRACTICE,
            "If you are ill or take medicine, ask your doctor or dietitian first.");
    private static final Because WATER = new Because("Water changes how thick it is, and so the figure per 100 g. It takes no fat out: the pot holds what was put in.", RECIPES,
            "Water alone takes nothing out; the pot holds as much fat as before.");
    private static final Because LEAN = new Because("Lean says how much fat meat has by itself. Pouring off takes the melted fat and leaves what is inside.", MINCE,
            "Only melted fat leaves; this does not turn it into lean meat.");
    private static final Because ENERGY = new Because("All oils and pure fats have about the same energy, 884 kcal per 100 g (coconut oil 862): changing the kind of fat changes the saturated fat.",
            OILS, "The energy hardly changes; what changes is the kind of fat.");
    private static final Because CHOLESTEROL = new Because("Cholesterol and saturated fat are two things: coconut oil has no cholesterol and 86.5 g of saturated fat per 100 g.", OILS,
            "No cholesterol says nothing about saturated fat: look at the figure for saturated fat.");
    private static final Because SHAMING = new Because("People stop listening when they or their food are put down. Keep the dish, and make small changes.", RESPECT,
            "It is a dish people love, and it still is. You can have it less often, a little less of it, or with one of these changes.");

    static final List<Row> ROWS = List.of(
            // Absolutes.
            row(Kind.ABSOLUTE, Guard.NONE, "fat", "(?<!next to )\\b(?:absolutely no|no|zero|not any|not (?:a|one) (?:gram|trace|drop|bit) of|without any|0 (?:g|grams)(?: of)?|hasn't any|contains? nothing but healthy)"
                    + " (?:saturated |any |bad )?fats?\\b(?! (?:to|for|edge|is lost|goes|of its))", "\\b(?:label|packet|would not|not true|wrong|no fat to)\\b", NOT_NONE),
            row(Kind.ABSOLUTE, Guard.BEFORE, "fat", "\\b(?:completely|totally|entirely|absolutely|wholly|100 ?(?:%|per ?cent)) (?:free (?:of|from) |without |clear of |rid of |un)?(?:any |all |saturated )*(?:fat|saturated)",
                    NEVER, NOT_NONE),
            row(Kind.ABSOLUTE, Guard.BEFORE, "fat", "\\ball (?:of )?(?:the |its |that )?(?:saturated )?fat (?:is|has|was|will be) (?:now )?(?:gone|out|away|removed|off|left the|poured|taken|drained)", NEVER, ALL_OUT),
            row(Kind.ABSOLUTE, Guard.BEFORE, "fat", "\\bevery (?:last )?(?:drop|gram|bit|trace) of (?:the |its |saturated )*fat (?:is|has|goes|comes|was)", NEVER, ALL_OUT),
            row(Kind.ABSOLUTE, Guard.BEFORE, "remov|tak|get|wash|rid", "\\b(?:removes?|takes? (?:out|off|away)|gets? rid of|gets? out|washes (?:out|off|away)) (?:all|every (?:bit|drop|gram) of|the whole of) (?:of )?(?:the |its )?(?:saturated )?fat\\b",
                    "\\b(?:drain|pour|tip|skim)", ALL_OUT),
            row(Kind.ABSOLUTE, Guard.BEFORE, "every |all |any ", "\\b(?:every|all|any) (?:kind of )?(?:[a-z]+ ){0,2}(?:fats?|oils?|greens?|plants?|animal fats?) (?:is|are|has|have|holds?|contains?) (?:[a-z]+ )?(?:unsaturated|saturated|healthy|healthier|good|bad|harmless|harmful|low|no )",
                    NEVER, PLANTS),
            row(Kind.ABSOLUTE, Guard.BEFORE, "plant|vegetable|seed", "\\b(?:plant|vegetable|seed) (?:fats?|oils?)(?: [a-z]+)? (?:is|are|has|have|contains?|holds?) (?:all |always |only )?(?:unsaturated|healthy|harmless|no |free|good for)", "\\bmost(?:ly)?\\b", PLANTS),
            row(Kind.ABSOLUTE, Guard.NONE, "never|always", "\\b(?:never|always) (?:[a-z]+ ){0,2}?(?:harmful|harmless|bad|good|better|worse|health(?:y|ier)|unhealthy|lower|higher|less|leaner|lighter|contains?|holds?|saturated|unsaturated|low|lowers?|raises?|clogs?|fat-free)\\b",
                    "\\b(?:not always|hot fat|burning|sink|knife|board|thermometer|lid|hands)\\b", NOT_ALL),
            row(Kind.ABSOLUTE, Guard.BEFORE, "the only", "\\bthe only (?:ones?|thing|foods?|oils?|fats?|plants?|way|dish(?:es)?|meat)\\b[^.]*\\b(?:fat|saturated|unsaturated|health|healthy|heart|cholesterol|salt)", NEVER, NOT_ALL),
            row(Kind.ABSOLUTE, Guard.BEFORE, "only|nothing but|pure", "\\b(?:contains? only|holds? only|has only|nothing but|purely?|pure) (?:[a-z]+ )?(?:unsaturated|saturated|healthy|good fat|goodness|health)", NEVER, NOT_ALL),
            row(Kind.ABSOLUTE, Guard.NONE, "none|nothing", "\\b(?:none|nothing) (?:of it )?(?:is |at all )?(?:left|remains?|stays?) (?:in|inside|on) (?:the |your )?(?:meat|pot|plate|pan|dish|food)", "\\b(?:heat|water|time|raw|pink)\\b", ALL_OUT),
            row(Kind.ABSOLUTE, Guard.BEFORE, "complete|total|entire|absolute|perfect|100", "\\b(?:completely|totally|entirely|absolutely|perfectly|100 ?(?:%|per ?cent)) (?:healthy|harmless|unsaturated|good for|natural|safe for your)", NEVER, NOT_ALL),
            row(Kind.ABSOLUTE, Guard.BEFORE, "coconut|palm", "\\b(?:coconut|palm)(?: oil| fat| cream| milk)? (?:is|are) (?:[a-z]+ )?(?:healthy|good for|harmless|unsaturated|free)", "\\bmostly\\b", PLANTS),
            row(Kind.ABSOLUTE, Guard.BEFORE, "cannot|can't|no harm|as much as", "\\b(?:cannot|can't|can not) (?:possibly )?(?:harm|hurt|do you any harm|be bad)|\\bdoes no harm\\b|\\beat as much (?:of it )?as you (?:like|want|please)", NEVER, NOT_ALL),
            // Medical promises.
            row(Kind.PROMISE, Guard.BEFORE, "prevent|stop|avoid|ward|fight|beat|combat", "\\b(?:prevents?|preventing|stops?|fights?|beats?|combats?|wards? off|avoids?|rules? out) (?:[a-z]+ ){0,2}?(?:heart|attacks?|strokes?|diseases?|diabetes|cancer|illness|high blood|blocked|clogged)", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "away|at bay", "\\bkeeps? (?:[a-z]+ ){0,3}?(?:heart|attacks?|strokes?|diseases?|diabetes|cancer|illness|doctor)s? (?:[a-z]+ )?(?:away|at bay)", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "cure|heal|treat|revers", "\\b(?:cures?|heals?|treats?|reverses?|(?:will|can|to) (?:cure|heal|treat|reverse)) (?:[a-z]+ ){0,3}?(?:heart|arter|disease|diabet|cholesterol|blood|pressure|cancer|illness|body|you|people|anything|everything|it\\b)",
                    "\\bburn\\b|\\btreats? (?:you|people|it)\\b", RISK),
            row(Kind.PROMISE, Guard.BEFORE, "sav", "\\bsav(?:es?|ed|ing) (?:[a-z]+ )?(?:lives|life)\\b", NEVER, LIVES),
            row(Kind.PROMISE, Guard.BEFORE, "cholesterol|blood pressure|blood sugar|blood fats", "\\b(?:lowers?|lowering|brings? down|cuts?|reduces?|improves?|normali[sz]es?|fix(?:es)?|controls?) (?:[a-z]+ ){0,2}?(?:cholesterol|blood pressure|blood sugar|blood fats)", "\\b(?:may|can help|might|risk)\\b", RISK),
            row(Kind.PROMISE, Guard.BEFORE, "cholesterol|blood pressure|blood sugar", "\\b(?:cholesterol|blood pressure|blood sugar) (?:will|goes|comes|falls|drops)(?: go| come| fall| drop)?", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "protect|shield|guard", "\\b(?:protects?|protecting|shields?|guards?|safeguards?) (?:[a-z]+ ){0,3}?(?:from|against|heart|hearts|arteries)\\b", "\\b(?:apron|glove|gloves|cloth|spit|spitting|burns?|steam|hands|splash|flies|sun)\\b", RISK),
            row(Kind.PROMISE, Guard.BEFORE, "live|longer|years", "\\b(?:live|lives|living) (?:much |far |a lot )?(?:longer|to (?:be )?(?:a hundred|100|ninety))|\\blonger li(?:fe|ves)\\b|\\badds? (?:[a-z]+ )?years\\b|\\bold age (?:is )?guaranteed", NEVER, LIVES),
            row(Kind.PROMISE, Guard.BEFORE, "arter|vein|heart", "\\b(?:clean|cleans|cleanse|cleanses|clear|clears|unblocks?|unclogs?|scrubs?|frees?|flushes) (?:[a-z]+ ){0,2}?(?:arter|veins|heart)|\\b(?:keeps?|makes?) (?:[a-z]+ )?(?:arteries|veins|heart|hearts) (?:clean|clear|open|young|free|strong|healthy|well|safe)", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "diabet|heart patient|allerg|pregnan|kidney patient|heart disease", "\\b(?:safe|good|fine|suitable|right|perfect|ideal|harmless|recommended) for (?:[a-z]+ ){0,3}?(?:diabetics?|diabetes|heart patients?|heart disease|allergic|allergies|pregnant|kidney patients?)", NEVER, MEDICINE),
            row(Kind.PROMISE, Guard.NONE, "tablet|pill|medicine|medication|insulin|doctor", "\\b(?:no (?:more )?need (?:for|of|to take)|(?:do not|don't|won't|will not|never) need|instead of|stop taking|throw away|leave off|forget|replaces?|without|better than|no more) (?:[a-z]+ ){0,2}?(?:tablets?|pills?|medicines?|medication|insulin|doctors?)",
                    "\\bnever (?:stop|leave)|do not (?:stop|leave)|don't (?:stop|leave)", MEDICINE),
            row(Kind.PROMISE, Guard.BEFORE, "tablet|pill|medicine|medication|insulin", "\\b(?:throw|put|give) (?:your |the |all )*(?:tablets?|pills?|medicines?|medication|insulin) (?:away|aside|up)\\b", NEVER, MEDICINE),
            row(Kind.PROMISE, Guard.NONE, "never", "\\bnever (?:gets?|got|has|have|had|suffers?|falls?|dies?) (?:[a-z]+ ){0,2}?(?:heart|strokes?|ill|sick|diseases?|diabetes|cancer|attacks?)\\b", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "guarantee|promise", "\\b(?:guarantees?|guaranteed|i promise|we promise|promises you)\\b[^.]*\\b(?:health|healthy|heart|live|life|well|weight|cholesterol|ill|fit)", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "you", "\\byou(?:'ll| will| shall) (?:never (?:get|have|suffer|need|fall|be)|not (?:get|suffer|fall)|stay|be|feel|get|become) (?:[a-z]+ ){0,3}?(?:heart|ill|sick|stroke|disease|diabetes|doctor|healthy|healthier|well|cured|slim|slimmer|cholesterol)\\b", "\\bwill be well\\b", RISK),
            row(Kind.PROMISE, Guard.BEFORE, "your heart|the heart|our hearts|your hearts|you healthy|us healthy", "\\b(?:good|great|best|better|medicine) for (?:your|the|our) hearts?|\\b(?:makes|keeps) (?:you|us) (?:healthy|well|fit)|\\b(?:your|our) hearts? (?:will|stays?|is safe|becomes?|thanks?)", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "risk|danger", "\\b(?:no|without (?:any )?|zero|removes? (?:the|your|all)|takes? away (?:the|your)|ends? (?:the|your)|halves? (?:the|your)) (?:risk|danger) of (?:a |any )?(?:heart|stroke|disease|diabetes|dying|death)|\\brisk of (?:dying|death)", NEVER, LIVES),
            row(Kind.PROMISE, Guard.BEFORE, "lose|shed|drop|slim|belly", "\\b(?:lose|loses|shed|drop) (?:[a-z0-9]+ )?(?:weight|pounds|kilos)|\\bmakes? you slim|\\bslimming\\b|\\bmelts? (?:away )?(?:your|the) belly", NEVER, RISK),
            row(Kind.PROMISE, Guard.BEFORE, "detox|superfood|miracle|boost", "\\bdetox|\\bsuper ?foods?\\b|\\bmiracle\\b|\\bboosts? (?:[a-z]+ )?(?:immun|heart|health)", NEVER, RISK),
            // Label words that are no label's number.
            row(Kind.CLAIM, Guard.SENTENCE, "cholesterol", "\\bcholesterol\\b[^.]*\\b(?:so|means|therefore|and so|that makes)\\b[^.]*\\b(?:saturated|low|healthy|fat|good|safe)", "\\blower the cholesterol\\b", CHOLESTEROL),
            row(Kind.CLAIM, Guard.BEFORE, "plant|vegetable", "\\b(?:plant|vegetable) (?:fats?|oils?|based)\\b[^.]*\\b(?:so|means|therefore)\\b[^.]*\\b(?:low|light|healthy|unsaturated|little)", NEVER, PLANTS),
            row(Kind.CLAIM, Guard.BEFORE, "coconut", "\\b(?:light|lite) coconut (?:milk|cream)\\b[^.]*\\b(?:is|are) (?:[a-z]+ )?(?:low|fat[- ]free|harmless|lean)", NEVER, new Because("Light coconut milk with 5 % fat still has about 4.4 g of saturated fat per 100 g, about three times what \"low\" allows.",
                    "Codex CXS 240 with USDA SR26 (worked out)", "Light coconut milk holds less than the full kind, and it is still rich in saturated fat.")),
            // Cause and amount.
            row(Kind.BASIS, Guard.SENTENCE, "water", "\\b(?:add(?:ing|ed|s)?|more|some|extra|with|pour(?:ing)? in|just) (?:[a-z]+ ){0,2}?water\\b[^.;]*\\b(?:fat|saturated|richness)\\b[^.;]*\\b(?:down|less|out|falls?|drops?|lower|away|halves|gone|off|smaller)\\b", "\\b(?:thinner than|holds more water|same|still|as much|only spreads|per 100|burning|fire|tuna)\\b", WATER),
            row(Kind.BASIS, Guard.SENTENCE, "water", "\\bwater\\b[^.;]*\\b(?:less|lower|lowers|reduces?|removes?|cuts?|halves|takes?|washes|draws?|pulls?|brings? down|gets? rid of|drives? out) (?:[a-z]+ ){0,2}?(?:fat|saturated)\\b", "\\b(?:thinner than|holds more water|same|still|as much|only spreads|per 100|tuna|burning|fire|whipped|holds more water)\\b", WATER),
            row(Kind.BASIS, Guard.SENTENCE, "water", "\\bwater\\b[^.;]*\\b(?:gets?|becomes?|is|makes? (?:it|the [a-z]+)|turns?) (?:much |far )?(?:leaner|lean|healthier|lighter in fat)\\b", "\\btuna\\b", WATER),
            row(Kind.BASIS, Guard.SENTENCE, "soak|absorb|suck|mop", "\\b(?:beans?|barley|lentils|potato(?:es)?|vegetables|bread|rice) (?:soaks?|absorbs?|sucks?|mops?)(?: up)? (?:the |all the |most of the )?(?:saturated )?fat\\b", NEVER,
                    new Because("Fat that is soaked up is eaten with what soaked it up; none of it leaves the pot.", RECIPES, "The pot holds as much fat as before; each plate holds less because there are more of them.")),
            row(Kind.BASIS, Guard.SENTENCE, "thin|dilut|watered", "\\b(?:thin(?:ner|ned|ning|s)?|dilut(?:e|ed|es|ing)|watered)\\b[^.;]*\\b(?:less|lower|fewer|removes?|reduces?|cuts?|halves) (?:[a-z]+ ){0,2}?(?:fat|saturated|calories|energy)", "\\b(?:thinner than|holds more water|same|still|as much|kept back|keep back|jug|stays in the|far down|poured in)\\b", WATER),
            row(Kind.BASIS, Guard.SENTENCE, "drain|pour|tip|skim|blot|wip", "\\b(?:drain|pour|tip|tipp|skim|skimm|blott?|wip)(?:e|ing|ed|s|es)?\\b[^.]*\\b(?:all|every (?:drop|bit|gram) of|the whole of) (?:of )?(?:the |its )?(?:saturated )?fat\\b", "\\b(?:almost|nearly|melted)\\b", ALL_OUT),
            row(Kind.BASIS, Guard.SENTENCE, "lean", "\\b(?:drain|pour|tipp?|skim|trim|rins|brown|blot)[a-z]*\\b[^.,;]*\\blean(?:er)? (?:meat|mince|beef|pork|lamb|ribs?|bacon)\\b", "\\b(?:buy|bought|use|leave the lean|around the lean|off the lean|from the lean|apart|in place of|instead of|board|thermometer)\\b", LEAN),
            row(Kind.BASIS, Guard.SENTENCE, "lean", "\\b(?:turn|turns|turned|turning|makes?|made|becomes?|became|now have|gives you)\\b[^.,;:]{0,30}\\blean\\b(?! (?:against|over|back|on))", "\\b(?:buy|bought|use)\\b", LEAN),
            row(Kind.BASIS, Guard.SENTENCE, "calori|energy|kilojoule", "\\b(?:oils?|healthy fats?|good fats?|unsaturated fats?|plant fats?)\\b[^.]*\\b(?:fewer|less|no|hardly any|lower in|low in|half the|lighter in) (?:calories|kilocalories|energy|kilojoules)", "\\b(?:fried|frying|drinks|plates?|serves?|pot|measure)\\b", ENERGY),
            row(Kind.BASIS, Guard.NONE, "fatten|make you fat|makes you fat|put on weight|count", "\\b(?:not|n't|never) (?:make you fat|fattening|put on (?:any )?weight|be fattening)\\b|\\bcalories (?:do not|don't) count|\\bhealthy fats? (?:do not|don't|does not|doesn't) (?:count|make)", NEVER, ENERGY),
            row(Kind.BASIS, Guard.SENTENCE, "take|remov|draw|soak|absorb|suck", "\\b(?:beans?|barley|lentils|potato(?:es)?|vegetables|bread|rice|more (?:plates|people))\\b[^.]*\\b(?:take|takes|removes?|draws?|soaks?|absorbs?|sucks?)(?: up| out| in)? (?:the |its |all the |some )?fat (?:out|up|away|from)", NEVER,
                    new Because("What is added shares the fat out over more plates; it takes none out of the pot.", RECIPES, "The pot holds as much fat as before; each plate holds less because there are more of them.")),
            row(Kind.BASIS, Guard.SENTENCE, "shar|people|plates|serves|divid", "\\b(?:pot|dish) (?:itself )?(?:now )?(?:holds?|has|contains?) less\\b[^.;]*\\b(?:because|since|as|now that|when) [^.;]*\\b(?:share|shared|sharing|more people|more plates|more serves|divided?)\\b", NEVER,
                    new Because("Sharing changes what a plate holds, never what the pot holds.", RECIPES, "The pot holds as much as before; each plate holds less because more share it.")),
            row(Kind.BASIS, Guard.SENTENCE, "lean", "\\b(?:mince|meat|beef|ribs?|bacon) (?:is|are|was|were) (?:now|then|afterwards) lean\\b", NEVER, LEAN),
            // Shaming.
            row(Kind.SHAME, Guard.BEFORE, "bad for|unhealthy|killing|kill", "\\bbad for (?:you|us|them|your|people|everybody|the heart|hearts)|\\bunhealthy\\b|\\b(?:is|are) killing (?:you|us|them)|\\bkills? (?:you|us|people)|\\bkillers?\\b|\\bheart attack on a plate", "\\bkills? (?:the )?germs", SHAMING),
            row(Kind.SHAME, Guard.BEFORE, "give", "\\b(?:must|have to|has to|need to|needs to|should|ought to|had better|will have to) (?:all |now |just )?(?:give (?:it |them |this |that |your |these |those )?(?:[a-z]+ )?up|give up|stop eating|stop cooking)", NEVER, SHAMING),
            row(Kind.SHAME, Guard.BEFORE, "stop|throw", "\\b(?:must|have to|should|need to|you'd better|please) (?:stop|quit) (?:eating|cooking|frying|using)|\\bthrow out your (?:old )?(?:butter|dripping|lard|recipes?|pots?)", NEVER, SHAMING),
            row(Kind.SHAME, Guard.NONE, "must n|must never|never eat|never again|never touch|never cook|should n|shouldn't|mustn't|not allowed|banned", "\\b(?:never eat|never touch|never cook|(?:must|should) (?:not|never) (?:eat|cook|use|have)|mustn't (?:eat|cook|use)|shouldn't (?:eat|cook|use|have)|never again (?:eat|cook|use|fry))\\b"
                    + "|\\b(?:is|are) (?:not allowed|banned)\\b", "\\b(?:raw|green|sprouted|cold|allerg|avoid|unwashed|mouldy|runny|honey|left out|stood|label)", SHAMING),
            row(Kind.SHAME, Guard.BEFORE, "disgust|revolt|forbidden|naughty|guilt|sinful|sin |junk|poison|filth|rubbish|garbage|wicked|ashamed|shame|awful|gross|horrible|trash|muck", "\\b(?:disgusting|revolting|forbidden|naughty|guilty|guilt|sinful|a sin|junk|poison|poisonous|filthy?|wicked|ashamed|shameful|a shame|awful|gross|horrible|trash|muck)\\b(?! (?:weight|of time))|\\b(?:is|are|such|that|eat|eating) (?:rubbish|garbage)\\b",
                    "\\b(?:raw|food poisoning|kidney beans|cassava|potatoes that|bin|what a shame)\\b", SHAMING),
            row(Kind.SHAME, Guard.BEFORE, "lazy|stupid|ignorant|greedy|fool|fat people|too fat|you are fat|obese|careless|backward|old-fashioned|primitive|silly", "\\b(?:lazy|stupid|ignorant|greedy|foolish|silly|backward|primitive|careless) (?:[a-z]+ )?(?:people|cooks?|mothers?|folk|families|women|men|persons?|way|habits?|food|cooking)\\b|\\bfools?\\b|\\bfat people\\b|\\btoo fat\\b|\\byou(?:'re| are) (?:all )?(?:fat|obese|lazy|stupid|greedy)", NEVER, SHAMING),
            row(Kind.SHAME, Guard.BEFORE, "bad|wrong|dirty|wicked", "\\b(?:wrong|bad|dirty|evil) (?:foods?|cooking|eating|habits?|mothers?|people|eaters?)\\b|\\bwrong to (?:cook|eat|use|fry|like)\\b|\\b(?:been|cooked|cooking|eating|doing) (?:it )?(?:all )?wrong\\b", "\\b(?:kept rice|smell)", SHAMING));

    private Patterns() {}

    private static Row row(Kind kind, Guard guard, String needs, String words, String unless, Because because) {
        return new Row(kind, guard, List.of(needs.split("\\|")), Pattern.compile(words), Pattern.compile(unless), because);
    }
}
