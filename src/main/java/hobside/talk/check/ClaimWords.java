package hobside.talk.check;

import hobside.guide.ClaimKind;
import java.util.List;
import java.util.regex.Pattern;

/** The words of labels as people say them, each with the claim whose number it needs. A table; compiled when first used. */
final class ClaimWords {

    /** One way to say a claim. */
    record Row(Pattern words, ClaimKind kind) {}

    static final List<Row> ROWS = List.of(
            row("low[- ]fat|(?:very )?low in (?:total )?fat", ClaimKind.LOW_FAT),
            row("fat[- ]free|free (?:of|from) (?:any |all )?fat|non[- ]?fat", ClaimKind.FAT_FREE),
            row("reduced[- ]fat|reduced in fat", ClaimKind.REDUCED_FAT),
            row("low[- ]saturated(?:[- ]fat)?|low[- ]saturates|low in saturat(?:ed fats?|es)", ClaimKind.LOW_SATURATED),
            row("saturated[- ]fat[- ]free|free (?:of|from) (?:any |all )?saturat(?:ed fat|es)", ClaimKind.SATURATED_FREE),
            row("reduced[- ]saturat(?:ed(?:[- ]fat)?|es)|reduced in saturat(?:ed fat|es)", ClaimKind.REDUCED_SATURATED),
            row("light|lite", ClaimKind.LIGHT),
            row("low[- ](?:energy|calories?|kilojoules?)|low in (?:energy|calories|kilojoules)", ClaimKind.LOW_ENERGY),
            row("reduced[- ](?:energy|calories?|kilojoules?)|reduced in (?:energy|calories)", ClaimKind.REDUCED_ENERGY),
            row("very low[- ](?:salt|sodium)|very low in (?:salt|sodium)", ClaimKind.VERY_LOW_SODIUM),
            row("(?<!very )low[- ](?:salt|sodium)|(?<!very )low in (?:salt|sodium)", ClaimKind.LOW_SODIUM),
            row("(?:salt|sodium)[- ]free|free (?:of|from) (?:any |all )?(?:salt|sodium)", ClaimKind.SODIUM_FREE),
            row("reduced[- ](?:salt|sodium)|reduced in (?:salt|sodium)", ClaimKind.REDUCED_SODIUM));

    private ClaimWords() {}

    private static Row row(String words, ClaimKind kind) {
        return new Row(Pattern.compile("\\b(?:" + words + ")\\b"), kind);
    }
}
